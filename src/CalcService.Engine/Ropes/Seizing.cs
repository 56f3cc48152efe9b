using CalcService.Engine.Provenance;

namespace CalcService.Engine.Ropes;

/// <summary>Seizings: wire wound round a rope so that it keeps its lay when it is cut and opened.</summary>
public static class Seizing
{
    private const double MetresPerInch = .0254;

    /// <summary>Beyond this many decimals a count that should be whole isn't, for rounding alone.</summary>
    private const int CountDecimals = 9;

    /// <summary>n = max(n_min, ⌈k·d⌉) with k seizings for each inch of rope diameter d, n_min the fewest; a count.</summary>
    [Formula("seizing-count", "NAVEDTRA 14081", "seizing of wire rope", Basis.Published, Symbol = "n", Name = "number of seizings",
        Expression = "max(n_min, ceil(k·d))", Kind = QuantityKind.Count, Range = "one end; the fewest is common practice, no source")]
    public static int Count(double diameterM, double perInch, double least, Trace trace)
    {
        var inches = diameterM / MetresPerInch;
        var count = Math.Max(least, Math.Ceiling(Math.Round(perInch * inches, CountDecimals)));
        return (int)trace.Step("seizing-count", count,
            new("n_min", Measure.Count(least)), new("k", Measure.Count(perInch)), Substitution.In("d", inches, "in"));
    }

    /// <summary>w = f·d, width of one seizing or distance between two, f in rope diameters d (m); in m.</summary>
    [Formula("seizing-size", "NAVEDTRA 14081; TM 5-3810-305-10 for the wider distance", "seizing of wire rope", Basis.Published,
        Symbol = "w",
        Name = "width of a seizing, or distance between two", Expression = "f·d", Kind = QuantityKind.Length, Range = "f by the rule set")]
    public static double SizeM(double diameterM, double diameters, Trace trace) =>
        trace.Step("seizing-size", diameters * diameterM, new("f", Measure.Count(diameters)), new("d", Measure.Length(diameterM)));

    /// <summary>
    /// l = n·(w/δ)·π·(d + δ): n seizings of width w (m), wound turn beside turn with wire of diameter δ (m) on a rope of
    /// diameter d (m); in m. A turn lies on a circle of diameter d + δ; its pitch of one wire adds less than a thousandth.
    /// </summary>
    [Formula("seizing-wire", "turns side by side on the rope", "/docs/pour-plans", Basis.Derived, Symbol = "l",
        Name = "seizing wire for one end",
        Expression = "n·(w/δ)·π·(d + δ)", Kind = QuantityKind.Length, Range = "one layer; the twisted ends are not counted")]
    public static double WireM(int count, double widthM, double diameterM, double wireM, Trace trace) =>
        trace.Step("seizing-wire", count * (widthM / wireM) * Math.PI * (diameterM + wireM),
            new("n", Measure.Count(count)), new("w", Measure.Length(widthM)), new("δ", Measure.Length(wireM)),
            new("d", Measure.Length(diameterM)));
}
