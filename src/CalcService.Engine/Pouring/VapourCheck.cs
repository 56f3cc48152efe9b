using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>Vapour in the room from the open mouths and the mixing vessel until the last cone has gelled.</summary>
internal static class VapourCheck
{
    private const double WorkingDayS = 8 * 3600;

    public static VapourResult? Check(PourScope scope, double mixedM3, double? lastGelS)
    {
        var sheet = scope.Input.Compound;
        if (sheet.Vapour is not { } vapour)
        {
            NotComputed(scope, "the sheet names no vapour");
            return null;
        }

        if (scope.Rules.Air.FirstOrDefault(air => air.Substance == vapour.Substance) is not { } limits)
        {
            NotComputed(scope, "limits and vapour pressure of this substance are not known here");
            return null;
        }

        if (scope.Input.Conditions.Room is not { } room)
        {
            scope.Find(PouringFindings.RoomMissing, PourPointers.Room);
            return null;
        }

        if (lastGelS is not { } gel || scope.Input.Conditions.CompoundK is not { } compound)
        {
            NotComputed(scope, "it is not known how long the compound stays open");
            return null;
        }

        var airChanges = room.AirChangesPerS / scope.Rules.MixingFactor.Value!.Value.Si;
        var source = SourceKgPerS(scope, limits, compound, mixedM3);
        var peak = RoomAir.ConcentrationKgPerM3(source, room.VolumeM3, airChanges, gel, scope.Trace);
        var mean = RoomAir.MeanKgPerM3(source, room.VolumeM3, airChanges, gel, WorkingDayS, scope.Trace);
        if (vapour.MassFraction is { } share && sheet.DensityKgPerM3 is { } density)
        {
            // No more than all of it can be in the air.
            var everything = share * density * mixedM3 / room.VolumeM3;
            (peak, mean) = (Math.Min(peak, everything), Math.Min(mean, everything));
        }

        var result = new VapourResult(
            RoomAir.AirFraction(peak, limits.MolarMassGPerMol, scope.Trace),
            RoomAir.AirFraction(mean, limits.MolarMassGPerMol, scope.Trace));
        Compare(scope, limits, result);
        return result;
    }

    private static double SourceKgPerS(PourScope scope, AirLimits limits, double compoundK, double mixedM3)
    {
        var speed = scope.Rules.AirSpeed.Value!.Value;
        scope.Assume(PourPointers.Room, "air speed over the open compound", speed, AssumptionOrigin.RuleSet);
        scope.Assume(PourPointers.Room, "air exchange near the work this many times less than in the room as a whole",
            scope.Rules.MixingFactor.Value, AssumptionOrigin.RuleSet);
        scope.Assume(PourPointers.Room, "the open surface gives off vapour as if it were the pure substance", Measure.Fraction(1), AssumptionOrigin.RuleSet);

        var pressure = Evaporation.StyreneVapourPressurePa(compoundK, scope.Trace);
        double Rate(double diameter) => Evaporation.RateKgPerS(limits.MolarMassGPerMol, 1, pressure, speed.Si,
            Math.PI / 4 * diameter * diameter, compoundK, diameter, scope.Trace);

        // A vessel as wide as it is filled high; none where nothing is mixed.
        var vessel = mixedM3 > 0 ? Rate(Math.Cbrt(4 * mixedM3 / Math.PI)) : 0;
        return vessel + scope.Input.Ends.Sum(end => end.Quantity * Rate(end.Basket.LargeEndDiameterM));
    }

    private static void Compare(PourScope scope, AirLimits limits, VapourResult result)
    {
        Against(scope, PouringFindings.VapourAboveLaw, result.Peak, limits.LegalCeiling, limits.Substance, "peak");
        Against(scope, PouringFindings.VapourAboveLaw, result.TimeWeighted, limits.LegalTimeWeighted, limits.Substance, "eight-hour mean");
        Against(scope, PouringFindings.VapourAboveRecommended, result.Peak, limits.RecommendedShortTerm, limits.Substance, "peak");
        Against(scope, PouringFindings.VapourAboveRecommended, result.TimeWeighted, limits.RecommendedTimeWeighted, limits.Substance, "eight-hour mean");
    }

    private static void Against(PourScope scope, FindingDefinition definition, double reached, RuleLimit limit, string substance, string which)
    {
        if (reached > limit.Value!.Value.Si)
        {
            scope.Find(definition, PourPointers.Room, Measure.AirFraction(reached), limit.Value, [PourPointers.Ends], source: limit.Source,
                words: [new("substance", substance), new("which", which)]);
        }
    }

    private static void NotComputed(PourScope scope, string why) =>
        scope.Find(PouringFindings.VapourNotComputed, PourPointers.Sheet, words: new FindingWord("why", why));
}
