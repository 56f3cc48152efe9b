using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Matching.Findings.MatchExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Matching.Findings;

/// <summary>What the service and the preparation raise.</summary>
internal static class ServiceExamples
{
    private const string Chemicals = "/service/chemicals";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("service-temperature-missing", Severity.Unknown, "/service/lowest", match => match.Without("/service/lowest")),
        new("service-outside-sheet", Severity.Stop, "/service/highest", match => match.With("/service/highest", Quantity(65, "degC"))),
        new("service-beyond-older-standard", Severity.Note, "/service/highest",
            match => match.With("/service/highest", Quantity(80, "degC")).With(Sheet + "/service/maximum", Quantity(115, "degC"))),
        new("surroundings-not-given", Severity.Caution, Chemicals, match => match.Without(Chemicals)),
        new("chemical-not-on-sheet", Severity.Unknown, Chemicals + "/0", match => match.With(Chemicals, new JsonArray("brine"))),
        new("chemical-limited", Severity.Caution, Chemicals + "/0", match => match.With(Chemicals, new JsonArray("diesel"))),
        new("chemical-attacks", Severity.Stop, Chemicals + "/0", match => match.With(Chemicals, new JsonArray("acetone"))),
        new("plastic-filled-rope", Severity.Caution, Rope + "/plasticFilled",
        match => match.With(Rope + "/plasticFilled", "yes").Without("/preparation/plasticLeftIn")),
        new("left-in-broom", Severity.Stop, "/preparation/core",
        match => match.With(Rope + "/core", "fibre").With("/preparation/core", "leftIn")),
        new("left-in-broom", Severity.Stop, "/preparation/plasticLeftIn", match => match.With("/preparation/plasticLeftIn", "yes")),
        new("cleaner-forbidden", Severity.Stop, "/preparation/cleaner", match => match.With("/preparation/cleaner", "acid")),
    ];
}
