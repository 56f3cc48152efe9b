using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>From the seconds of a model to the moments that people act on.</summary>
internal static class Milestones
{
    public static CuredEnd Of(CureScope scope, CureEnd end, EndCure cure, (double Seconds, GelPlace Place)? seen)
    {
        var mixedAt = scope.Input.MixedAt;
        var (earliest, expected, latest) = (cure.EarliestGelS, cure.ExpectedGelS, cure.LatestGelS);
        var governor = cure.GelGovernor;
        if (seen is { } gel && gel.Place != GelPlace.Unknown)
        {
            // In the cone it is a fact; at the mouth the depth of the basket can still be behind.
            (earliest, expected) = (gel.Seconds, gel.Seconds);
            latest = gel.Place == GelPlace.Cone ? gel.Seconds : latest is { } model ? Math.Max(model, gel.Seconds) : null;
            governor = latest == gel.Seconds ? Governors.ObservedGel : governor;
        }

        var hold = scope.Input.Compound.MinimumHoldS ?? 0;
        var still = latest + hold;
        var stillBy = hold > 0 ? Governors.MinimumHold : governor;
        double? proof = cure.FullS is { } full && still is { } undisturbed ? Math.Max(Math.Max(full, undisturbed), cure.CooledS ?? 0) : null;
        var proofBy = proof > Math.Max(cure.FullS ?? 0, still ?? 0) ? Governors.Cooling : proof > cure.FullS ? stillBy : cure.FullGovernor;
        return new()
        {
            Id = end.Id,
            Quantity = end.Quantity,
            GelAt = new(At(mixedAt, earliest), At(mixedAt, expected), At(mixedAt, latest)),
            UndisturbedUntil = From(mixedAt, still),
            ProofLoadFrom = From(mixedAt, proof),
            ServiceFrom = From(mixedAt, proof),
            GovernedBy = new(
                latest is null ? null : governor, still is null ? null : stillBy, proof is null ? null : proofBy, proof is null ? null : proofBy),
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
            scope.Assume(CurePointers.MinimumHold, "no hold after gel: the sheet gives none", Measure.Duration(0), AssumptionOrigin.Default);
        }
    }

    private static DateTimeOffset? At(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.At(mixedAt, known) : null;

    private static DateTimeOffset? From(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.From(mixedAt, known) : null;
}
