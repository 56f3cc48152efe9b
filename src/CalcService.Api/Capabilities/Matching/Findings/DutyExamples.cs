using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Matching.Findings.MatchExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Matching.Findings;

/// <summary>What the duty and its law raise.</summary>
internal static class DutyExamples
{
    private const string Use = "/duty/use", Load = "/duty/load", Factor = "/duty/designFactor", Tested = "/duty/typeTested",
        ByDesign = "/duty/resinByDesign";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("duty-missing", Severity.Unknown, Use, match => match.Without(Use)),
        new("design-factor-missing", Severity.Unknown, Factor, match => match.With(Use, "other").Without(Factor)),
        new("design-factor-from-memory", Severity.Caution, Factor, match => match.Without(Factor)),
        new("design-factor-below-rule", Severity.Unknown, Factor, match => match.With(Factor, Quantity(4.5, "1"))),
        new("design-factor-below-law", Severity.Stop, Factor,
        match => match.With(Factor, Quantity(4.5, "1")).With("/duty/liftsPersons", "yes")),
        new("design-factor-below-law", Severity.Unknown, "/duty/makersApproval",
            match => match.With(Use, "hoistRope").With(Rope + "/function", "rotationResistant").With("/duty/rotationResistance", "typeI")
            .With(Factor, Quantity(3.5, "1"))),
        new("load-above-working-limit", Severity.Stop, Load, match => match.With(Load, Quantity(51, "kN"))),
        new("load-above-working-limit", Severity.Unknown, Load, match => match.With(Load, Quantity(51, "kN")).Without(Factor)),
        new("load-above-socket-rating", Severity.Stop, Load, match => match.With(Socket + "/ratedLoad", Quantity(24, "kN"))),
        new("facts-taken", Severity.Caution, Socket + "/ratedLoad", match => match.Without(Socket + "/ratedLoad")),
        new("proof-below-rule", Severity.Stop, "/duty/proofLoad", match => match.With("/duty/proofLoad", Quantity(10, "kN"))),
        new("rated-load-missing", Severity.Unknown, Load, match => match.With("/duty/proofLoad", Quantity(10, "kN")).Without(Load)),
        new("proof-above-socket-rating", Severity.Stop, "/duty/proofLoad",
        match => match.With(Socket + "/proofRating", Quantity(45, "kN"))),
        new("proof-above-half-breaking", Severity.Caution, "/duty/proofLoad",
            match => match.With("/duty/proofLoad", Quantity(130, "kN")).With(Socket + "/proofRating", Quantity(200, "kN"))),
        new("proof-at-breaking-force", Severity.Stop, "/duty/proofLoad",
            match => match.With("/duty/proofLoad", Quantity(300, "kN")).With(Socket + "/proofRating", Quantity(400, "kN"))),
        new("efficiency-not-tested", Severity.Note, Tested, match => match.Without(Tested)),
        new("mine-evidence-missing", Severity.Unknown, ByDesign, Mine),
        new("mine-medium-not-by-design", Severity.Stop, ByDesign, match => Mine(match).With(ByDesign, "no")),
        new("mine-attachment-weak", Severity.Stop, "/duty/efficiency",
            match => Mine(match).With(ByDesign, "yes").With("/duty/efficiency", Quantity(75, "%"))),
        new("lift-proportions", Severity.Caution, Basket + "/smallEndDiameter",
            match => match.With(Use, "lift").With(Factor, Quantity(12, "1")).With(Load, Quantity(15, "kN"))),
    ];

    private static JsonObject Mine(JsonObject match) => match.With(Use, "mineHoist").With(Factor, Quantity(7, "1"));
}
