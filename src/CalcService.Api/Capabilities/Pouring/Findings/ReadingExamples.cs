using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What the readings of the day raise.</summary>
internal static class ReadingExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("steel-at-dew-point", Severity.Stop, Steel, pour => pour.With(Humidity, Quantity(95, "%"))),
        new("steel-near-dew-point", Severity.Caution, Steel, pour => pour.With(Humidity, Quantity(80, "%"))),
        new("outside-pouring-range", Severity.Stop, "/conditions/compoundTemperature",
        pour => pour.With("/conditions/compoundTemperature", Quantity(34.5, "degC"))),
        new("reading-missing", Severity.Unknown, Steel, pour => pour.Without(Steel)),
        new("readings-old", Severity.Caution, "/conditions/readAt", pour => pour.With("/conditions/readAt", "2026-03-12T07:00:00+01:00")),
        new("read-again-during-pour", Severity.Note, "/conditions/readAt",
            pour => pour.With("/ends/0/quantity", 9).With("/conditions/validFor", Quantity(5, "min"))),
    ];
}
