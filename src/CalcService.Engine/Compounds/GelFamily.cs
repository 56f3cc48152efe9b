using CalcService.Engine.Numerics;
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
    /// Whether one gel belongs to the family. What the readings leave open is no reason to doubt the lot: late is judged along the coldest
    /// temperatures, early against the earliest gel. Without a look at which it was still soft a late one may only have been seen late.
    /// </summary>
    /// <param name="seenS">When it had gelled.</param>
    /// <param name="hasSoftLook">Whether somebody saw it soft before.</param>
    /// <param name="age">Its age in gel times along the coldest temperatures.</param>
    /// <param name="earliestS">The earliest gel of its model; null where that isn't known.</param>
    public bool Holds(double seenS, bool hasSoftLook, double age, double? earliestS) =>
        !(hasSoftLook && age > 1 && !Contains(Elementary.Log(age)))
        && !(seenS < earliestS && !Contains(Elementary.Log(seenS / earliestS.Value)));
}
