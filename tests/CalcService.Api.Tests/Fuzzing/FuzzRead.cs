namespace CalcService.Api.Tests.Fuzzing;

/// <summary>A GET made from the document.</summary>
/// <param name="Path">Its path in the document, with a place for each parameter.</param>
/// <param name="Address">Where it goes.</param>
/// <param name="Query">What stands behind the path; empty, or with its question mark.</param>
/// <param name="Headers">What is said beside.</param>
public sealed record FuzzRead(string Path, string Address, string Query, IReadOnlyList<(string Name, string Value)> Headers)
{
    public override string ToString() =>
        $"GET {Address}{Query}\n{string.Join('\n', Headers.Select(header => $"{header.Name}: {header.Value}"))}";
}
