using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Matching.Findings.MatchExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Matching.Findings;

/// <summary>What the load transfer in the cone raises.</summary>
internal static class ConeExamples
{
    private const string Compressive = Sheet + "/cured/compressiveStrength";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("load-transfer-not-computed", Severity.Caution, Sheet + "/cured", match => match.Without(Sheet + "/cured/modulus")),
        new("compound-overstressed", Severity.Caution, Compressive, match => match.With(Compressive, Quantity(60, "MPa"))),
        new("compound-overstressed", Severity.Note, Compressive, match => match.With(Compressive, Quantity(120, "MPa"))),
        new("socket-wall-assumed", Severity.Note, Socket + "/outerAtMouth", match => match.Without(Socket + "/outerAtMouth")),
        new("lower-third", Severity.Note, Basket, match => match.With("/duty/load", Quantity(50, "kN"))),
        new("load-transfer-short-cone", Severity.Note, Basket + "/length", match => match.With(Basket + "/length", Quantity(98, "mm"))),
        new("cone-not-self-locking", Severity.Note, "/cone/friction", match => match.With("/cone/friction", Quantity(.1, "1"))),
    ];
}
