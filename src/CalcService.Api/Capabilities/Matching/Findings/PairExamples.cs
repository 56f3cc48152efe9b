using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Matching.Findings.MatchExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Matching.Findings;

/// <summary>What rope and socket raise as a pair.</summary>
internal static class PairExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("rope-strength-missing", Severity.Unknown, Strength,
            match => match.Without(Strength).With(Rope + "/construction", "locked coil")),
        new("rope-strength-estimated", Severity.Caution, Strength, match => match.Without(Strength)),
        new("socket-strength-unknown", Severity.Unknown, Socket + "/breakingForce", match => match.Without(Socket + "/breakingForce")),
        new("rope-outside-socket-range", Severity.Caution, Socket + "/ropeRange",
        match => match.With(Socket + "/ropeRange/maximum", Quantity(19, "mm"))),
        new("socket-standard-missing", Severity.Caution, Socket + "/standard", match => match.Without(Socket + "/standard")),
        new("wires-crowded", Severity.Caution, Basket, match => match.With(Rope + "/outerWireDiameter", Quantity(1.8, "mm"))),
        new("coarse-rope", Severity.Caution, Rope + "/construction", match => match.With(Rope + "/construction", "6x7")),
        new("basket-short-for-spiral", Severity.Note, Basket + "/length", match => match.With(Rope + "/construction", "1x37")
            .With(Rope + "/metallicArea", Quantity(184, "mm2")).With(Rope + "/wireCount", 37)
            .With(Rope + "/outerWireDiameter", Quantity(2.6, "mm"))),
    ];
}
