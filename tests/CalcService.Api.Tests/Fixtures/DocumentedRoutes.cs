namespace CalcService.Api.Tests.Fixtures;

/// <summary>The routes of the served document, read once for the many tests of a class.</summary>
public sealed class DocumentedRoutes(Service service) : IAsyncLifetime
{
    public IReadOnlyList<CalculationRoute> Calculations { get; private set; } = [];

    public IReadOnlyList<CalculationRoute> Batches { get; private set; } = [];

    /// <summary>Every address that is only read, with a code where the document has a place for one.</summary>
    public IReadOnlyList<string> Reads { get; private set; } = [];

    public async ValueTask InitializeAsync()
    {
        var contract = await ServedContract.ReadAsync(service);
        Calculations = contract.Calculations;
        Batches = contract.BatchRoutes;
        // The documents themselves are not among what they describe.
        Reads = [.. contract.Reads.Select(path => path.Replace("{code}", "lot-expired", StringComparison.Ordinal)), "/openapi/v1.json",
            "/docs/problems", "/docs/findings", "/docs/findings/lot-expired", "/docs/pages", "/docs/release"];
        Assert.NotEmpty(Calculations);
        Assert.NotEmpty(Batches);
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
