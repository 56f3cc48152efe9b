using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Audits.Findings;
using CalcService.Api.Capabilities.Curing.Findings;
using CalcService.Api.Capabilities.Inspection.Findings;
using CalcService.Api.Capabilities.Matching.Findings;
using CalcService.Api.Capabilities.Pouring.Findings;
using CalcService.Api.Capabilities.Proof.Findings;
using CalcService.Api.Capabilities.Reuse.Findings;
using CalcService.Api.Capabilities.Verifications.Findings;

namespace CalcService.Api.Pages;

/// <summary>The examples of one path. A capability adds its own to <see cref="All"/>.</summary>
/// <param name="Path">Where the requests go.</param>
/// <param name="Good">A request with which nothing is wrong: the decision is to proceed, without a finding.</param>
/// <param name="Examples">At least one for each finding in each severity that no other path has examples of.</param>
public sealed record OperationExamples(string Path, JsonObject Good, IReadOnlyList<FindingExample> Examples)
{
    public static IReadOnlyList<OperationExamples> All { get; } =
    [
        PourExamples.Operation, CureExamples.Operation, MatchExamples.Operation, ReuseExamples.Operation, InspectionExamples.Operation,
            ProofExamples.Operation,
        AuditExamples.Operation, VerificationExamples.Operation,
    ];

    /// <summary>The good request, and what each example makes of it.</summary>
    public IEnumerable<JsonObject> Requests => Examples.Select(example => example.Change(Good)).Prepend(Good);

    /// <summary>The examples of a finding, worst first, with the paths that they are sent to.</summary>
    public static IEnumerable<(OperationExamples Operation, FindingExample Example)> Of(string code) => All
        .SelectMany(operation => operation.Examples.Where(example => example.Code == code).Select(example => (operation, example)))
        .OrderByDescending(pair => pair.example.Severity);
}
