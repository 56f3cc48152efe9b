using CalcService.Engine.Compounds;

namespace CalcService.Engine.Curing;

/// <summary>When a cone that is poured at a time may be moved and proof loaded, s from the earliest mix. Null where that isn't known.</summary>
internal readonly record struct Release(double UndisturbedS, double ProofS);

/// <summary>
/// Releases against the time of the pour. By the air each pour is followed by itself; by the cone's own heat one pour an hour is,
/// and between two of them the longer durations count.
/// </summary>
internal sealed class PourReleases(CureScope scope, TemperatureHistory air, Func<int, double, double, EndCure?> follow)
{
    private const double AnchorS = 3600;

    private readonly Dictionary<(int End, long Anchor, double Slower), Release?> _anchors = [];

    /// <param name="end">Index of the end.</param>
    /// <param name="pourS">Time of the pour.</param>
    /// <param name="slower">How much longer every gel time is.</param>
    public Release? At(int end, double pourS, double slower)
    {
        if (!IsFit(pourS))
        {
            return null;
        }

        if (scope.Input.ThermalModel == ThermalModel.Uniform)
        {
            return Followed(end, pourS, slower);
        }

        var before = (long)Math.Floor(pourS / AnchorS);
        if (Anchor(end, before, slower) is not { } early || (pourS > before * AnchorS ? Anchor(end, before + 1, slower) : early) is not { } late)
        {
            return null;
        }

        return new(
            pourS + Math.Max(early.UndisturbedS - (before * AnchorS), late.UndisturbedS - ((before + 1) * AnchorS)),
            pourS + Math.Max(early.ProofS - (before * AnchorS), late.ProofS - ((before + 1) * AnchorS)));
    }

    /// <summary>Whether the air of that time is in the pouring range and asks for no other dose.</summary>
    private bool IsFit(double pourS)
    {
        if (!air.Covers(pourS) || scope.Input.Conditions.SteelK is null)
        {
            return false;
        }

        var (sheet, kelvins) = (scope.Input.Compound, air.At(pourS));
        return sheet.Pouring?.Contains(kelvins) != false
            && (sheet.Doses.Count == 0 || DosesAt(kelvins) == DosesAt(air.At(0)));
    }

    private int? DosesAt(double airK) => CureReadings.Decides(scope, airK) is var (_, decides) ? scope.Input.Compound.DosesPerKitAt(decides) : null;

    private Release? Anchor(int end, long anchor, double slower)
    {
        var key = (end, anchor, slower);
        if (!_anchors.TryGetValue(key, out var known))
        {
            _anchors[key] = known = air.Covers(anchor * AnchorS) ? Followed(end, anchor * AnchorS, slower) : null;
        }

        return known;
    }

    private Release? Followed(int end, double pourS, double slower)
    {
        if (follow(end, pourS, slower) is not { LatestGelS: { } latest, FullS: { } full } cure)
        {
            return null;
        }

        var still = latest + (scope.Input.Compound.MinimumHoldS ?? 0);
        return new(pourS + still, pourS + Math.Max(Math.Max(full, still), cure.CooledS ?? 0));
    }
}
