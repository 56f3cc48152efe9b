using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>How a rope is seized, in the edition of November 2026.</summary>
public static class SeizingRules2026Dec
{
    private static readonly Source Navy = new("NAVEDTRA 14081", "seizing of wire rope", Basis.Published);
    private static readonly Source Army = new("TM 5-3810-305-10", "seizing of wire rope", Basis.Published);

    public static SeizingRules Rules { get; } = new()
    {
        CountPerInch = Number("seizings for each inch of rope diameter, rounded up", 3, Navy),
        CountLeast = Number("never fewer seizings than this", 2, Source.CommonPractice),
        WidthLeast = Number("width of a seizing in rope diameters, least", 1, Navy),
        WidthMost = Number("width of a seizing in rope diameters, most", 1.5, Navy),
        Spacing = Number("distance between seizings in rope diameters", 2, Navy),
        SpacingWide = Number("distance between seizings in rope diameters, the wider practice", 6, Army),
    };

    private static RuleNumber Number(string text, double value, Source source) => new(text, Measure.Count(value), source);
}
