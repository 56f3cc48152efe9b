using System.Text.Json.Nodes;
using CalcService.Api.Tests.Findings.Curing;
using CalcService.Api.Tests.Findings.Matching;
using CalcService.Api.Tests.Findings.Pouring;
using CalcService.Api.Tests.Findings.Reuse;
using CalcService.Engine.Inspection;
using CalcService.Engine.Proof;

namespace CalcService.Api.Tests.Findings;

/// <summary>The examples of one path. A capability adds its own to <see cref="All"/>.</summary>
/// <param name="Path">Where the requests go.</param>
/// <param name="Good">A request with which nothing is wrong: the decision is to proceed, without a finding.</param>
/// <param name="Examples">At least one for each finding in each severity that no other path has examples of.</param>
public sealed record OperationExamples(string Path, JsonObject Good, IReadOnlyList<FindingExample> Examples)
{
    public static IReadOnlyList<OperationExamples> All { get; } = [PourExamples.Operation, CureExamples.Operation, MatchExamples.Operation, ReuseExamples.Operation];

    /// <summary>Paths whose examples are still to be written: each of their findings is raised by a test of the engine.</summary>
    public static IReadOnlyList<string> Unwritten { get; } = ["/v1/proof-load-evaluations", "/v1/service-inspections"];

    /// <summary>Findings whose page shows no request, with what it says instead.</summary>
    public static IReadOnlyDictionary<string, string> WithoutRequest { get; } = new Dictionary<string, string>(
        InspectionFindings.All.Union(ProofFindings.All).Select(definition => definition.Code).Except(All.SelectMany(operation => operation.Examples).Select(example => example.Code))
            .Select(code => KeyValuePair.Create(code, "No request stands here yet. A test of the engine raises it."))
            .Append(KeyValuePair.Create("cure-budget-spent",
                "No request that is short enough for a page is known to raise it. A test of the engine raises it with fewer steps than a request may take.")),
        StringComparer.Ordinal);

    /// <summary>The examples of a finding, worst first, with the paths that they are sent to.</summary>
    public static IEnumerable<(OperationExamples Operation, FindingExample Example)> Of(string code) => All
        .SelectMany(operation => operation.Examples.Where(example => example.Code == code).Select(example => (operation, example)))
        .OrderByDescending(pair => pair.example.Severity);
}
