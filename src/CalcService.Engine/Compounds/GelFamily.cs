using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Compounds;

/// <summary>
/// How far gels that were seen may stray from the sheet before the lot, its dose or its mixing has to be doubted: lots spread
/// around the sheet and eyes around the gel, both on the logarithm of seen over expected.
/// </summary>
/// <param name="LotSpread">One standard deviation from lot to lot.</param>
/// <param name="ObservationSpread">One standard deviation of an eye.</param>
/// <param name="Deviations">From so many on a gel is out of family.</param>
public sealed record GelFamily(double LotSpread, double ObservationSpread, double Deviations)
{
    public static GelFamily Of(CuringRules rules) => new(rules.LotSpread.Si, rules.ObservationSpread.Si, rules.OutOfFamily.Si);

    /// <summary>Whether the mean of so many logarithms belongs to the family: eyes average out, the lot stays what it is.</summary>
    public bool Contains(double meanLog, long count = 1) =>
        Math.Abs(meanLog) <= Deviations * Math.Sqrt((LotSpread * LotSpread) + (ObservationSpread * ObservationSpread / count));

    /// <summary>
    /// How much longer every gel time of one end is than the sheet's, from the one gel of it that was seen: the posterior, or the gel
    /// itself where it came later still. A cup's gel says nothing about a cone; one seen nobody knows where can only make it later.
    /// </summary>
    public double Slower(double ratio, GelPlace place, Trace trace) => place switch
    {
        GelPlace.Cup => 1,
        GelPlace.Unknown when ratio < 1 => 1,
        _ => Math.Max(ratio, GelPosterior.Factor(Math.Log(ratio), 1, LotSpread, ObservationSpread, trace)),
    };
}
