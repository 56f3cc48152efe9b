using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>
/// The bounds of an end in the edition of December 2026. They are our own: far outside of what is made, so that a slip or a wrong part
/// shows.
/// </summary>
public static class FitRules2026Dec
{
    private const double Degree = Math.PI / 180;

    private static readonly Source Bound = new("far outside of what is made: a slip of the pen or the wrong part", "/docs/pour-plans",
        Basis.Derived);

    public static FitRules Rules { get; } = new()
    {
        LeastCone = Limit("included angle of a basket at least, else it is no cone", Measure.Angle(2 * Degree)),
        ShortestBasket = Limit("basket at least this many rope diameters long, else it can't hold", Measure.Count(2)),
        ShortBasket = Limit("basket at least this many rope diameters long, else only a type test can tell", Measure.Count(4)),
        WidestSmallEnd = Limit("small end less than this many rope diameters wide", Measure.Count(3)),
        LooseSmallEnd = Limit("small end at most this many rope diameters wide, else it is loose", Measure.Count(2)),
        StrengthSpread = Limit("certified breaking force at most this share off the estimate of the rope class", Measure.Fraction(.40)),
        ReadTilt = new("lean of a rope that can be read as one, at least", Measure.Angle(1 * Degree), Source.CommonPractice),
        MostTilt = Limit("rope and basket at most this far off the plumb line", Measure.Angle(5 * Degree)),
        Thinning = Limit("rope at most this share thinner than its nominal diameter, where no rule set says", Measure.Fraction(.05)),
        Thickening = Limit("rope at most this share thicker than its nominal diameter", Measure.Fraction(.08)),
        StraightRope = Limit("straight rope below the socket at least this many rope diameters long", Measure.Count(2)),
        DriedFor = Limit("broom dried at most this long before the pour", Measure.Duration(12 * 3600)),
        NarrowBroom = Limit("broom opened at least this far, included", Measure.Angle(20 * Degree)),
        LeastLay = Limit("length of lay at least this many rope diameters, else a slip of units", Measure.Count(3),
        "/docs/service-inspections"),
        MostLay = Limit("length of lay at most this many rope diameters, else a slip of units", Measure.Count(15),
        "/docs/service-inspections"),
    };

    private static RuleLimit Limit(string text, Measure value, string? page = null) =>
        new(text, value, page is null ? Bound : Bound with { Clause = page });
}
