using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>From the seconds of model and law to the moments that people act on.</summary>
internal static class Milestones
{
    public static CuredEnd Of(CureScope scope, CureEnd end, EndCure cure, ReleaseTimes? release, IReadOnlyList<SeenGel> seen)
    {
        var mixedAt = scope.Input.MixedAt;
        var (gel, governor) = Gel(cure, seen);
        var stillBy = release is { UndisturbedS: { } still, GelS: { } latest } && still > latest ? Governor.MinimumHold : governor;
        var loadBy = release?.GovernedBy;
        return new()
        {
            Id = end.Id,
            Quantity = end.Quantity,
            GelAt = new(At(mixedAt, gel.Earliest), At(mixedAt, gel.Expected), At(mixedAt, gel.Latest)),
            UndisturbedUntil = From(mixedAt, release?.UndisturbedS),
            ProofLoadFrom = From(mixedAt, release?.LoadS),
            ServiceFrom = From(mixedAt, release?.LoadS),
            GovernedBy = new(gel.Latest is null ? null : governor, release?.UndisturbedS is null ? null : stillBy, loadBy, loadBy),
            Release = release is null ? null
            : new(From(mixedAt, release.GelS), From(mixedAt, release.SheetS), From(mixedAt, release.ModelS), From(mixedAt, release.HoldS),
                From(mixedAt, release.CooledS), release.Slower, release.IsByOwnHeat),
            Peak = cure.Peak is { } peak ? new(peak.Kelvins, CureClock.At(mixedAt, peak.Seconds)) : null,
            LeastCured = cure.LeastCured,
            Curve = cure.Curve,
            EnergyBalanceError = cure.EnergyBalanceError,
        };
    }

    /// <summary>Says once for all ends that the sheet gives no hold.</summary>
    public static void AssumeHold(CureScope scope)
    {
        if (scope.Input.Compound.MinimumHoldS is null)
        {
            scope.Assume(CurePointers.MinimumHold, "no hold after gel: the sheet gives none", Measure.Duration(0),
                AssumptionOrigin.Default);
        }
    }

    /// <summary>In the cone a gel that was seen is a fact; at the mouth the depth of the basket can still be behind.</summary>
    private static ((double? Earliest, double? Expected, double? Latest) Gel, string Governor) Gel(EndCure cure,
        IReadOnlyList<SeenGel> seen)
    {
        if (seen.FirstOrDefault(gel => gel.IsOfCone) is not { } gel)
        {
            return ((cure.EarliestGelS, cure.ExpectedGelS, cure.LatestGelS), cure.GelGovernor);
        }

        double? latest = gel.Place == GelPlace.Cone ? gel.Seconds : cure.LatestGelS is { } model ? Math.Max(model, gel.Seconds) : null;
        return ((gel.Seconds, gel.Seconds, latest), latest == gel.Seconds ? Governor.ObservedGel : cure.GelGovernor);
    }

    private static DateTimeOffset? At(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.At(mixedAt, known)
        : null;

    private static DateTimeOffset? From(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.From(mixedAt, known)
        : null;
}
