using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>Answers of every path, computed once for all forgeries.</summary>
public sealed class KeptAnswers(Service service) : IAsyncLifetime
{
    /// <summary>To the examples of the documentation, in both systems of units.</summary>
    internal IReadOnlyList<KeptAnswer> OfExamples { get; private set; } = [];

    /// <summary>To the requests that raise each finding in each severity.</summary>
    internal IReadOnlyList<KeptAnswer> OfFindings { get; private set; } = [];

    public async ValueTask InitializeAsync()
    {
        var examples = (await ServedContract.ReadAsync(service)).Answering
            .SelectMany(route => route.Examples.Select(example => (route.Path, Request: example.Body))).ToArray();
        OfExamples = Of(examples.Concat(examples.Select(example => (example.Path, example.Request.With("/units", "inch")))));
        OfFindings = Of(OperationExamples.All.SelectMany(operation => operation.Requests.Select(request => (operation.Path, request))));
    }

    public ValueTask DisposeAsync() => default;

    private KeptAnswer[] Of(IEnumerable<(string Path, JsonObject Request)> requests)
    {
        var calculations = service.Services.GetServices<ICapability>().Where(one => one.Operation != "record-verifications")
            .ToDictionary(calculation => "/v1/" + calculation.Operation);
        return [.. requests.Where(request => calculations.ContainsKey(request.Path))
            .SelectMany(request => KeptAnswer.Of(calculations[request.Path], request.Request))];
    }
}
