using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>Vapour in the room from the open mouths and the mixing vessel until the last cone has gelled.</summary>
internal static class VapourCheck
{
    private const double WorkingDayS = 8 * 3600;

    public static VapourResult? Check(PourScope scope, IReadOnlyList<Mix> mixes, GelPlan? gel)
    {
        var (conditions, vapour) = (scope.Conditions, scope.Input.Compound.Vapour);
        var limits = vapour is null ? null : LimitsOf(scope, vapour);
        CheckIgnition(scope, vapour, limits);
        if (conditions.Place == PourPlace.Outdoors)
        {
            scope.Assume(PourPointers.Place, "no vapour is computed outdoors: stand upwind, keep sun and rain off steel and compound", null,
                AssumptionOrigin.RuleSet);
            return null;
        }

        if (conditions.Place == PourPlace.Confined)
        {
            scope.Find(PouringFindings.ConfinedSpace, PourPointers.Place);
        }

        if (scope.IsQuote && (conditions.Room is null || limits is null))
        {
            return null;
        }

        if (conditions.Room is not { } room)
        {
            scope.Find(PouringFindings.RoomMissing, PourPointers.Room, related: [PourPointers.Place]);
            return null;
        }

        if (limits is null)
        {
            scope.Find(PouringFindings.VapourNotComputed, PourPointers.Vapour,
                words: new FindingWord("why", vapour is null ? "the sheet names no vapour"
                : "limits and vapour pressure of this substance are not known here"));
            return null;
        }

        // Where it isn't known how much stays open, how warm and how long, the finding that says why has been made.
        return LastGelS(scope, mixes, gel) is { } last && conditions is { CompoundK: { } compound, AirK: { } air }
            ? Compute(scope, vapour!, limits, room, mixes, last, Math.Max(compound, air))
            : null;
    }

    private static void CheckIgnition(PourScope scope, VapourSource? vapour, AirLimits? limits)
    {
        if (scope.Conditions.IgnitionSource == Fact.Yes)
        {
            scope.Find(PouringFindings.IgnitionSource, PourPointers.IgnitionSource, limits?.FlashPoint.Judge(null) ?? default,
                related: [PourPointers.Vapour],
                severity: limits is null ? Severity.Unknown : Severity.Stop,
                    words: new FindingWord("substance", vapour?.Substance ?? "the compound's vapour"));
        }
    }

    private static AirLimits? LimitsOf(PourScope scope, VapourSource vapour)
    {
        foreach (var air in scope.Rules.Air)
        {
            if (string.Equals(air.Substance, vapour.Substance, StringComparison.OrdinalIgnoreCase))
            {
                return air;
            }
        }

        return null;
    }

    private static VapourResult Compute(PourScope scope, VapourSource vapour, AirLimits limits, Room room, IReadOnlyList<Mix> mixes,
        double gelS, double kelvins)
    {
        var (largest, mixed) = (0.0, 0.0);
        for (var i = 0; i < mixes.Count; i++)
        {
            (largest, mixed) = (Math.Max(largest, mixes[i].MixedM3), mixed + mixes[i].MixedM3);
        }

        var source = SourceKgPerS(scope, limits, kelvins, largest);
        var most = scope.Input.Compound.DensityKgPerM3 is { } density && vapour.MassFraction is { } share
            ? share * density * mixed / room.VolumeM3 : double.PositiveInfinity;
        VapourResult With(double mixingFactor, Trace trace)
        {
            var air = new RoomAir(source, vapour.DecayPerS ?? 0, room.VolumeM3, room.AirChangesPerS / mixingFactor);
            var peak = air.ConcentrationKgPerM3(air.PeakTimeS(gelS, trace), trace);
            var mean = air.MeanKgPerM3(gelS, WorkingDayS, trace);
            // No more than all of it can be in the air.
            return new(
                RoomAir.AirFraction(Math.Min(peak, most), limits.MolarMassGPerMol, trace),
                RoomAir.AirFraction(Math.Min(mean, most), limits.MolarMassGPerMol, trace));
        }

        var factor = scope.Conditions.MixingFactor ?? Assumed(scope, PourPointers.MixingFactor, scope.Rules.MixingFactor);
        var result = With(factor, scope.Trace);
        new VapourLimits(scope, limits, result, scope.Conditions.MixingFactor is null ? With(1, Trace.None) : result).Check();
        return result;
    }

    /// <summary>From the start of the first mix until the last cone has gelled, as if everything were open all that time.</summary>
    private static double? LastGelS(PourScope scope, IReadOnlyList<Mix> mixes, GelPlan? gel) =>
        mixes.Count > 0 && mixes[^1].StartsAt is { } last ? (last - scope.Input.PourAt).TotalSeconds + gel?.InCone.LatestS : null;

    private static double SourceKgPerS(PourScope scope, AirLimits limits, double kelvins, double vesselM3)
    {
        var speed = scope.Conditions.AirSpeedMPerS ?? Assumed(scope, PourPointers.AirSpeed, scope.Rules.AirSpeed);
        scope.Assume(PourPointers.Vapour, "the open surface gives off vapour as if it were the pure substance", Measure.Fraction(1),
            AssumptionOrigin.RuleSet);

        var pressure = Evaporation.StyreneVapourPressurePa(kelvins, scope.Trace);
        double Rate(double diameter) => Evaporation.RateKgPerS(limits.MolarMassGPerMol, 1, pressure, speed,
            Math.PI / 4 * diameter * diameter, kelvins, diameter, scope.Trace);

        // A vessel as wide as it is filled high.
        var (vessel, mouths) = (Rate(Elementary.Pow(4 * vesselM3 / Math.PI, 1.0 / 3)), 0.0);
        for (var i = 0; i < scope.Input.Ends.Count; i++)
        {
            mouths += scope.Input.Ends[i].Quantity * Rate(scope.Input.Ends[i].Basket.LargeEndDiameterM);
        }

        return vessel + mouths;
    }

    private static double Assumed(PourScope scope, string pointer, RuleNumber rule)
    {
        scope.Assume(pointer, rule);
        return rule.Si;
    }
}
