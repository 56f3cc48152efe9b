using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Facts;

/// <summary>The facts of one path.</summary>
/// <param name="Path">Where requests go.</param>
/// <param name="Heading">The heading of its table in docs/facts.md.</param>
/// <param name="HasPurpose">Whether a request says what the answer is for.</param>
/// <param name="Rows">Its facts.</param>
internal sealed record FactTable(string Path, string Heading, bool HasPurpose, IReadOnlyList<FactRow> Rows)
{
    public static IReadOnlyList<FactTable> All { get; } =
        [PourFacts.Table, CureFacts.Table, MatchFacts.Table, ReuseFacts.Table, InspectionFacts.Table, ProofFacts.Table, AuditFacts.Table];

    public JsonObject Good => OperationExamples.All.Single(operation => operation.Path == Path).Good;
}
