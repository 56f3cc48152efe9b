using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>Vapour in the room from the open mouths and the mixing vessel until the last cone has gelled.</summary>
internal static class VapourCheck
{
    private const double WorkingDayS = 8 * 3600;

    public static VapourResult? Check(PourScope scope, IReadOnlyList<Mix> mixes, GelPlan? gel)
    {
        var conditions = scope.Conditions;
        CheckIgnition(scope);
        if (conditions.Place == PourPlace.Outdoors)
        {
            scope.Find(PouringFindings.Outdoors, PourPointers.Place);
            return null;
        }

        if (conditions.Place == PourPlace.Confined)
        {
            scope.Find(PouringFindings.ConfinedSpace, PourPointers.Place);
        }

        if (conditions.Room is not { } room)
        {
            scope.Find(PouringFindings.RoomMissing, PourPointers.Room, related: [PourPointers.Place]);
            return null;
        }

        return scope.Input.Compound.Vapour is { } vapour ? Check(scope, vapour, room, mixes, LastGelS(scope, mixes, gel)) : NotComputed(scope, "the sheet names no vapour");
    }

    private static void CheckIgnition(PourScope scope)
    {
        if (scope.Conditions.HasIgnitionSource && scope.Input.Compound.Vapour is { } vapour && LimitsOf(scope, vapour) is { } limits)
        {
            scope.Find(PouringFindings.IgnitionSource, PourPointers.IgnitionSource, limit: limits.FlashPoint.Value, related: [PourPointers.Vapour],
                words: new FindingWord("substance", limits.Substance));
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

    private static VapourResult? Check(PourScope scope, VapourSource vapour, Room room, IReadOnlyList<Mix> mixes, double? lastGelS)
    {
        var limits = LimitsOf(scope, vapour);
        if (limits is null)
        {
            return NotComputed(scope, "limits and vapour pressure of this substance are not known here");
        }

        if (lastGelS is not { } gel || scope.Conditions is not { CompoundK: { } compound, AirK: { } air })
        {
            return NotComputed(scope, "it is not known how much stays open, how warm and how long");
        }

        var (largest, mixed) = (0.0, 0.0);
        for (var i = 0; i < mixes.Count; i++)
        {
            (largest, mixed) = (Math.Max(largest, mixes[i].MixedM3), mixed + mixes[i].MixedM3);
        }

        var source = SourceKgPerS(scope, limits, Math.Max(compound, air), largest);
        var most = scope.Input.Compound.DensityKgPerM3 is { } density && vapour.MassFraction is { } share ? share * density * mixed / room.VolumeM3 : double.PositiveInfinity;
        VapourResult With(double mixingFactor, Trace trace)
        {
            var air = new RoomAir(source, vapour.DecayPerS ?? 0, room.VolumeM3, room.AirChangesPerS / mixingFactor);
            var peak = air.ConcentrationKgPerM3(air.PeakTimeS(gel, trace), trace);
            var mean = air.MeanKgPerM3(gel, WorkingDayS, trace);
            // No more than all of it can be in the air.
            return new(
                RoomAir.AirFraction(Math.Min(peak, most), limits.MolarMassGPerMol, trace),
                RoomAir.AirFraction(Math.Min(mean, most), limits.MolarMassGPerMol, trace));
        }

        if (scope.Conditions.MixingFactor is null)
        {
            scope.Find(PouringFindings.RoomMeanOnly, PourPointers.MixingFactor, related: [PourPointers.Room]);
        }

        var factor = scope.Conditions.MixingFactor ?? Assumed(scope, PourPointers.MixingFactor, scope.Rules.MixingFactor);
        var result = With(factor, scope.Trace);
        Compare(scope, limits, result, surely: scope.Conditions.MixingFactor is null ? With(1, Trace.None) : result);
        return result;
    }

    /// <summary>From the start of the first mix until the last cone has gelled, as if everything were open all that time.</summary>
    private static double? LastGelS(PourScope scope, IReadOnlyList<Mix> mixes, GelPlan? gel) =>
        mixes.Count > 0 && mixes[^1].StartsAt is { } last ? (last - scope.Input.PourAt).TotalSeconds + gel?.InCone.LatestS : null;

    private static double SourceKgPerS(PourScope scope, AirLimits limits, double kelvins, double vesselM3)
    {
        var speed = scope.Conditions.AirSpeedMPerS ?? Assumed(scope, PourPointers.AirSpeed, scope.Rules.AirSpeed);
        scope.Assume(PourPointers.Vapour, "the open surface gives off vapour as if it were the pure substance", Measure.Fraction(1), AssumptionOrigin.RuleSet);

        var pressure = Evaporation.StyreneVapourPressurePa(kelvins, scope.Trace);
        double Rate(double diameter) => Evaporation.RateKgPerS(limits.MolarMassGPerMol, 1, pressure, speed,
            Math.PI / 4 * diameter * diameter, kelvins, diameter, scope.Trace);

        // A vessel as wide as it is filled high.
        var (vessel, mouths) = (Rate(Math.Cbrt(4 * vesselM3 / Math.PI)), 0.0);
        for (var i = 0; i < scope.Input.Ends.Count; i++)
        {
            mouths += scope.Input.Ends[i].Quantity * Rate(scope.Input.Ends[i].Basket.LargeEndDiameterM);
        }

        return vessel + mouths;
    }

    private static double Assumed(PourScope scope, string pointer, RuleLimit rule)
    {
        scope.Assume(pointer, rule.Text, rule.Value, AssumptionOrigin.RuleSet);
        return rule.Si;
    }

    /// <summary>
    /// A stop only where the law's limit is exceeded without the assumed mixing factor, which is a rule of thumb: what
    /// may be exceeded with it is a caution.
    /// </summary>
    private static void Compare(PourScope scope, AirLimits limits, VapourResult result, VapourResult surely)
    {
        Law(result.Peak, surely.Peak, limits.LegalCeiling, "peak");
        Law(result.TimeWeighted, surely.TimeWeighted, limits.LegalTimeWeighted, "eight-hour mean");
        Against(PouringFindings.VapourAboveRecommended, result.Peak, limits.RecommendedShortTerm, "peak");
        Against(PouringFindings.VapourAboveRecommended, result.TimeWeighted, limits.RecommendedTimeWeighted, "eight-hour mean");
        if (scope.Conditions.AirLimits is { } own)
        {
            Own(result.Peak, surely.Peak, own.ShortTerm, "shortTerm", "peak", own.From);
            Own(result.TimeWeighted, surely.TimeWeighted, own.TimeWeighted, "timeWeighted", "eight-hour mean", own.From);
        }

        void Own(double may, double surely, double? limit, string member, string which, string? from)
        {
            if (may > limit)
            {
                scope.Find(PouringFindings.VapourAboveOwnLimit, $"{PourPointers.OwnAirLimits}/{member}", Measure.AirFraction(surely > limit ? surely : may),
                    Measure.AirFraction(limit.Value), [PourPointers.Room], surely > limit ? Severity.Stop : Severity.Caution,
                    words: [new("substance", limits.Substance), new("which", which), new("from", from ?? "the request")]);
            }
        }

        void Law(double may, double surely, RuleLimit limit, string which)
        {
            if (!Against(PouringFindings.VapourAboveLaw, surely, limit, which))
            {
                Against(PouringFindings.VapourMayExceedLaw, may, limit, which);
            }
        }

        bool Against(FindingDefinition definition, double reached, RuleLimit limit, string which)
        {
            if (reached <= limit.Si)
            {
                return false;
            }

            scope.Find(definition, PourPointers.Room, Measure.AirFraction(reached), limit.Value, [PourPointers.Ends], source: limit.Source,
                words: [new("substance", limits.Substance), new("which", which)]);
            return true;
        }
    }

    private static VapourResult? NotComputed(PourScope scope, string why)
    {
        scope.Find(PouringFindings.VapourNotComputed, PourPointers.Vapour, words: new FindingWord("why", why));
        return null;
    }
}
