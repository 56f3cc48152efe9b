using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of a used socket in the edition of November 2026.</summary>
public static class ReuseRules2026Dec
{
    public static ReuseRules Rules { get; } = new()
    {
        RemovalWarm = new("warmer than this while the cone came out, the steel is tested", Measure.Temperature(200 + 273.15),
            Source.CommonPractice),
        RemovalHot = new("warmer than this the steel may have been tempered again and softened for good",
            Measure.Temperature(400 + 273.15),
            new("tempering of carbon and low-alloy steel, lowest usual temperature", "", Basis.FromMemory)),
        InspectionAge = new("a search for cracks is at most this old", Measure.Months(12), Source.CommonPractice),
        DesignFactor = new("strength over stress at the rated load", Measure.Count(3), new("ASME BTH-1, category B", "", Basis.FromMemory)),
        MostAllowed = new("wear that a limit may allow, as a share of the size, at most", Measure.Fraction(.10),
            new("ASME B30.26, hardware that lost a tenth of a dimension is removed", "", Basis.FromMemory)),
        HottestAllowed = new("removal temperature that a limit may allow, at most", Measure.Temperature(600 + 273.15),
            new("tempering of cast and forged socket steel, highest usual temperature", "", Basis.FromMemory)),
        LeastLeft = new("metal left of the drawing's, at least", Measure.Fraction(.5),
            new("/docs/reuse-assessments", "half-gone", Basis.Derived)),
        FarOffDrawing = new("metal beyond the drawing's, at most", Measure.Fraction(.05), Source.CommonPractice),
        GeneralTolerances = [Tolerance(6, .1), Tolerance(30, .2), Tolerance(120, .3), Tolerance(400, .5), Tolerance(1000, .8),
        Tolerance(2000, 1.2)],
        Compound = (
            new("modulus of a filled resin", Measure.Stress(6e9), Source.CommonPractice),
            new("Poisson's ratio of a filled resin", Measure.Count(.25), Source.CommonPractice),
            new("volumetric shrinkage of a filled resin", Measure.Fraction(.02), Source.CommonPractice)),
        WireShare = new("share of the small end that wires take, where the rope isn't known", Measure.Fraction(.44), Source.CommonPractice),
    };

    /// <summary>Linear sizes of class m: up to millimetres, either way millimetres.</summary>
    private static (double UpToM, RuleNumber Tolerance) Tolerance(double upToMm, double mm) => (upToMm * 1e-3,
        new($"size up to {upToMm} mm off a drawing that gives no tolerance, either way", Measure.Length(mm * 1e-3),
            new("ISO 2768-1", "class m", Basis.FromMemory)));
}
