using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of a used socket in the edition of November 2026.</summary>
public static class ReuseRules2026Dec
{
    public static ReuseRules Rules { get; } = new()
    {
        RemovalWarm = Limit("warmer than this while the cone came out, the steel is tested", Measure.Temperature(200 + 273.15), Source.CommonPractice),
        RemovalHot = Limit("warmer than this the steel may have been tempered again and softened for good",
            Measure.Temperature(400 + 273.15), new("docs/reuse-assessments.md", "heat", Basis.Derived)),
        InspectionAge = Limit("a search for cracks is at most this old", Measure.Months(12), Source.CommonPractice),
        DesignFactor = Limit("strength over stress at the rated load", Measure.Count(3), new("ASME BTH-1, category B", "", Basis.FromMemory)),
    };

    private static RuleLimit Limit(string text, Measure value, Source source) => new(PouringRules.General, text, value, source);
}
