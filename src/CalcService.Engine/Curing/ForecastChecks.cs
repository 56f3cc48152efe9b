using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>What the temperatures ahead mean for gel and cure.</summary>
internal static class ForecastChecks
{
    /// <summary>A delay shorter than the grain of the answer is none.</summary>
    private const double GrainS = 60;

    /// <param name="scope">The schedule.</param>
    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="air">The air from mixing on.</param>
    /// <param name="uniform">The temperatures that bound the compound's.</param>
    /// <param name="cure">The slowest end, without any gel seen; null where no end could be computed.</param>
    public static void Check(CureScope scope, CureKinetics kinetics, TemperatureHistory air, UniformCure uniform, EndCure? cure)
    {
        if (cure is null)
        {
            return;
        }

        CheckReached(scope, uniform, air, cure);
        CheckPouringRange(scope, air, cure);
        if (cure.EarliestGelS is null && cure.LatestGelS is null && scope.Input.Conditions is not { SteelK: not null, CompoundK: not null })
        {
            return;
        }

        CheckCold(scope, kinetics, air, uniform, cure);
        CheckMeasured(scope, kinetics, air, uniform, cure);
        CheckDelays(scope, uniform, air, cure);
        if (scope.Input.PourTimeS is { } pour && cure.EarliestGelS is { } gel && gel < pour)
        {
            scope.Find(CuringFindings.GelBeforePourEnds, CurePointers.PourTime, Measure.Duration(gel), Measure.Duration(pour), [CurePointers.Compound, CurePointers.Air]);
        }
    }

    private static void CheckReached(CureScope scope, UniformCure uniform, TemperatureHistory air, EndCure cure)
    {
        var isSeries = scope.Input.Conditions.ConstantAirK is null;
        var isBounded = scope.Input.Conditions is { SteelK: not null, CompoundK: not null };
        var pointer = isSeries ? CurePointers.AirSeries : CurePointers.Air;
        if (cure.ExpectedGelS is null || (isBounded && cure.LatestGelS is null))
        {
            scope.Find(CuringFindings.GelNotReached, pointer, limit: Measure.Duration(air.EndS), related: [CurePointers.GelTimes]);
        }

        // Without all readings there is no release; whether the forecast would reach, the air alone tells.
        if ((isBounded ? cure.FullS : uniform.FullAlong(air)) is null)
        {
            scope.Find(isSeries ? CuringFindings.ForecastTooShort : CuringFindings.FullStrengthNotReached, pointer, limit: Measure.Duration(air.EndS),
                related: [CurePointers.FullStrength]);
        }
    }

    /// <summary>At mixing a reading outside the range is a stop of its own; here it is about what comes until gel.</summary>
    private static void CheckPouringRange(CureScope scope, TemperatureHistory air, EndCure cure)
    {
        if (scope.Input.Compound.Pouring is not { } range || !range.Contains(air.At(0)))
        {
            return;
        }

        var (lowest, highest) = Extremes(air, cure.LatestGelS ?? cure.ExpectedGelS ?? air.EndS);
        var outside = lowest < range.MinimumK ? lowest : highest;
        if (!range.Contains(outside))
        {
            var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
            scope.Find(CuringFindings.ForecastLeavesPouringRange, CurePointers.AirSeries, Measure.Temperature(outside), outside < range.MinimumK ? minimum : maximum,
                [CurePointers.PouringRange], words: [new("minimum", minimum), new("maximum", maximum)]);
        }
    }

    /// <summary>Once cured, cold does no harm: only the time until full strength counts.</summary>
    private static void CheckCold(CureScope scope, CureKinetics kinetics, TemperatureHistory air, UniformCure uniform, EndCure cure)
    {
        var (lowest, _) = Extremes(uniform.ColderAfterGel, cure.FullS ?? uniform.ColderAfterGel.EndS);
        if (lowest < kinetics.Ceiling.LowestCureK)
        {
            var bySteel = Extremes(air, cure.FullS ?? air.EndS).LowestK > lowest;
            scope.Find(CuringFindings.BelowLowestCure, bySteel ? CurePointers.Steel : CurePointers.Air, Measure.Temperature(lowest),
                Measure.Temperature(kinetics.Ceiling.LowestCureK), [scope.Input.Compound.LowestCureK is null ? CurePointers.PouringRange : CurePointers.LowestCure]);
        }
    }

    private static void CheckMeasured(CureScope scope, CureKinetics kinetics, TemperatureHistory air, UniformCure uniform, EndCure cure)
    {
        var measured = kinetics.Model.Measured;
        var (lowest, _) = Extremes(uniform.Colder, cure.FullS ?? uniform.Colder.EndS);
        var (_, highest) = Extremes(uniform.Warmer, cure.FullS ?? uniform.Warmer.EndS);
        var (coldAir, warmAir) = Extremes(air, cure.FullS ?? air.EndS);
        highest = Math.Max(highest, cure.Peak?.Kelvins ?? highest);
        foreach (var kelvins in new[] { lowest, highest }.Distinct().Where(kelvins => !measured.Contains(kelvins)))
        {
            var conditions = scope.Input.Conditions;
            var pointer = kelvins == cure.Peak?.Kelvins ? CurePointers.GelTimes : kelvins == coldAir || kelvins == warmAir ? CurePointers.Air : kelvins == conditions.SteelK ? CurePointers.Steel : kelvins == conditions.CompoundK ? CurePointers.Compound : CurePointers.Air;
            // From a single row the assumed band of the activation energy says the same.
            if (measured.MinimumK < measured.MaximumK)
            {
                scope.Find(CompoundFindings.GelTimeExtrapolated, pointer, Measure.Temperature(kelvins), related: [CurePointers.GelTimes],
                    words: [new("minimum", Measure.Temperature(measured.MinimumK)), new("maximum", Measure.Temperature(measured.MaximumK))]);
            }
        }
    }

    private static void CheckDelays(CureScope scope, UniformCure uniform, TemperatureHistory air, EndCure cure)
    {
        if (cure.FullS is not { } full || uniform.FullAlong(air) is not { } byAir)
        {
            return;
        }

        var staying = TemperatureHistory.Constant(air.At(0), 0, scope.Rules.Horizon.Si);
        if (uniform.FullAlong(staying) is { } byNow && byAir - byNow > GrainS && full > byNow)
        {
            scope.Find(CuringFindings.NightDelaysCure, CurePointers.AirSeries, Measure.Duration(full - byNow), words: new FindingWord("temperature", Measure.Temperature(air.At(0))));
        }

        if (full - byAir > GrainS)
        {
            scope.Find(CuringFindings.SteelHoldsCureBack, CurePointers.Steel, Measure.Duration(full - byAir), related: [CurePointers.Air],
                words: new FindingWord("steel", Measure.Temperature(scope.Input.Conditions.SteelK!.Value)));
        }
    }

    /// <summary>Lowest and highest temperature up to a time: at points of the history, or at its end.</summary>
    private static (double LowestK, double HighestK) Extremes(TemperatureHistory history, double untilS)
    {
        var last = history.At(Math.Min(untilS, history.EndS));
        var (lowest, highest) = (last, last);
        for (var i = 0; i < history.Seconds.Length && history.Seconds[i] <= untilS; i++)
        {
            lowest = Math.Min(lowest, history.Kelvins[i]);
            highest = Math.Max(highest, history.Kelvins[i]);
        }

        return (lowest, highest);
    }
}
