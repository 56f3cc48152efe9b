using CalcService.Engine.Compounds;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>When a cone that is poured at a time may be moved and proof loaded, s from the earliest mix.</summary>
internal readonly record struct PourRelease(double UndisturbedS, double LoadS);

/// <summary>
/// Releases against the time of the pour. By the air each pour is followed by itself; by the cone's own heat one pour an hour is,
/// and between two of them the longer durations count.
/// </summary>
internal sealed class PourReleases(CureScope scope, TemperatureHistory air, CureReleases releases)
{
    private const double AnchorS = 3600;

    private readonly Dictionary<(int End, double Anchor), PourRelease?> _anchors = [];

    /// <param name="end">Index of the end.</param>
    /// <param name="pourS">Time of the pour.</param>
    /// <returns>Null where it can't be poured then, or its release isn't known.</returns>
    public PourRelease? At(int end, double pourS)
    {
        if (!IsFit(pourS))
        {
            return null;
        }

        if (scope.Input.ThermalModel == ThermalModel.Uniform)
        {
            return Followed(end, pourS);
        }

        var before = Math.Floor(pourS / AnchorS) * AnchorS;
        if (Anchor(end, before) is not { } early || (pourS > before ? Anchor(end, before + AnchorS) : early) is not { } late)
        {
            return null;
        }

        double Longer(double one, double other) => pourS + Math.Max(one - before, other - (pourS > before ? before + AnchorS : before));
        return new(Longer(early.UndisturbedS, late.UndisturbedS), Longer(early.LoadS, late.LoadS));
    }

    /// <summary>Whether the air of that time is known, in the pouring range, and asks for no other dose.</summary>
    private bool IsFit(double pourS)
    {
        if (!IsKnown(pourS))
        {
            return false;
        }

        var (sheet, kelvins) = (scope.Input.Compound, air.At(pourS));
        return sheet.Pouring?.Contains(kelvins) != false
            && (sheet.Doses.Count == 0 || CureReadings.DoseAt(scope, kelvins) == CureReadings.DoseAt(scope, air.At(0)));
    }

    /// <summary>A pour at the very end of what is known has nothing to be followed by.</summary>
    private bool IsKnown(double pourS) => pourS >= air.StartS && pourS < air.EndS;

    private PourRelease? Anchor(int end, double anchorS)
    {
        var key = (end, anchorS);
        if (!_anchors.TryGetValue(key, out var known))
        {
            _anchors[key] = known = IsKnown(anchorS) ? Followed(end, anchorS) : null;
        }

        return known;
    }

    private PourRelease? Followed(int end, double pourS) =>
        releases.Later(end, pourS) is { UndisturbedS: { } still, LoadS: { } load } ? new(pourS + still, pourS + load) : null;
}
