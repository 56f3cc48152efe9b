using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>What the temperatures ahead mean for gel and release.</summary>
internal static class ForecastChecks
{
    /// <param name="scope">The schedule.</param>
    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="times">Gel along the air.</param>
    /// <param name="steel">The steel as it was read.</param>
    /// <param name="ends">The ends that could be followed.</param>
    public static void Check(CureScope scope, CureKinetics kinetics, UniformTimes times, SteelHistory steel,
        IReadOnlyList<(EndCure Cure, ReleaseTimes Release)> ends)
    {
        if (ends.Count == 0)
        {
            return;
        }

        var (cure, release) = ends.MaxBy(end => end.Release.LoadS ?? double.PositiveInfinity);
        CheckReached(scope, times.Air, ends.All(end => end is { Cure.ExpectedGelS: not null, Release.GelS: not null }),
            release.LoadS is not null);
        CheckPouringRange(scope, times.Air, release.GelS ?? cure.ExpectedGelS ?? times.Air.EndS);
        scope.CheckRelease(scope.Input.Compound, kinetics, release, steel.LastReadS, times.Air, CurePointers.Air, CurePointers.Steel);
        CheckMeasured(scope, kinetics, times, release);
        CheckDelays(scope, kinetics, times, release);
        if (scope.Input.PourTimeS is { } pour && ends.Min(end => end.Cure.EarliestGelS) is { } gel
            && Judged.Duration(gel, pour) is { IsBelow: true } sooner && !WasSeenLater(scope, pour))
        {
            scope.Find(CompoundFindings.GelBeforePourEnds, CurePointers.PourTime, sooner, [CurePointers.Compound, CurePointers.Air]);
        }
        else
        {
            CheckPotLife(scope, kinetics.Doses, times.Air);
        }
    }

    /// <summary>Whether somebody saw it gel in a cone after the pour: then it hadn't before, whatever was computed.</summary>
    private static bool WasSeenLater(CureScope scope, double pourS) => scope.Input.Observations.Any(seen =>
        seen.SeenIn is GelPlace.Cone or GelPlace.Mouth && !Judged.Duration((seen.GelAt - scope.Input.MixedAt).TotalSeconds, pourS).IsBelow);

    /// <summary>As plan and audit have it. A gel that was seen in cone or mouth makes a stop on a guess an open question.</summary>
    private static void CheckPotLife(CureScope scope, int doses, TemperatureHistory air)
    {
        if (scope.Input is { PourTimeS: not null, Compound.PotLife: null })
        {
            scope.SheetSilent("/compound/sheet/potLife", "pot life");
            return;
        }

        var (airRead, _, compound) = CureReadings.Read(scope, air.At(0));
        var vessel = scope.Input.Observations.FirstOrDefault(seen => seen.SeenIn == GelPlace.Vessel) is { } gel
            ? (gel.GelAt - scope.Input.MixedAt).TotalSeconds : (double?)null;
        if (scope.Input.PourTimeS is { } pour
            && PotLife.OfMix(scope.Input.Compound, doses, scope.Book.Pouring, airRead, compound, vessel, scope.Trace) is var (life, isGuess)
            && Judged.Duration(pour, life) is { IsAbove: true } late)
        {
            var isOpen = isGuess && scope.Input.Observations.Any(seen => seen.SeenIn is GelPlace.Cone or GelPlace.Mouth);
            scope.Find(CompoundFindings.PouredLate, CurePointers.PourTime, late, [CurePointers.Compound, CurePointers.Air],
                isOpen ? Severity.Unknown : Severity.Stop);
        }
    }

    /// <summary>Without all readings there is no release; whether the forecast would reach, the air alone tells.</summary>
    public static void CheckOpen(CureScope scope, CureKinetics kinetics, UniformTimes times)
    {
        var along = Along(scope, kinetics, times.Air);
        CheckReached(scope, times.Air, times.Expected().TimeOf(1) is not null, along.LoadS is not null);
    }

    private static void CheckReached(CureScope scope, TemperatureHistory air, bool gels, bool isReleased)
    {
        var isSeries = scope.Input.Conditions.ConstantAirK is null;
        var pointer = isSeries ? CurePointers.AirSeries : CurePointers.Air;
        var followed = new Judged(null, Limit.Of(Measure.Duration(air.EndS)));
        if (!gels)
        {
            scope.Find(CuringFindings.GelNotReached, pointer, followed, related: [CurePointers.GelTimes]);
        }

        else if (!isReleased)
        {
            scope.Find(isSeries ? CuringFindings.ForecastTooShort : CuringFindings.FullStrengthNotReached, pointer, followed,
                related: [CurePointers.FullStrength]);
        }
    }

    /// <summary>At mixing a reading outside the range is a stop of its own; here it is about what comes until gel.</summary>
    private static void CheckPouringRange(CureScope scope, TemperatureHistory air, double gelS)
    {
        if (scope.Input.Compound.Pouring is not { } range || !range.Contains(air.At(0)))
        {
            return;
        }

        var (lowest, highest) = air.Extremes(0, gelS);
        var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
        if ((Judged.Outside(Measure.Temperature(lowest), minimum, maximum) ?? Judged.Outside(Measure.Temperature(highest), minimum,
            maximum)) is { } outside)
        {
            scope.Find(CuringFindings.ForecastLeavesPouringRange, CurePointers.AirSeries, outside,
                [CurePointers.PouringRange], words: [new("minimum", minimum), new("maximum", maximum)]);
        }
    }

    /// <summary>
    /// Gel times outside the temperatures of the sheet; from a single row the assumed band of the activation energy says the same.
    /// </summary>
    private static void CheckMeasured(CureScope scope, CureKinetics kinetics, UniformTimes times, ReleaseTimes release)
    {
        var measured = kinetics.Model.Measured;
        if (!(measured.MinimumK < measured.MaximumK))
        {
            return;
        }

        var until = release.GelS ?? times.Air.EndS;
        var (lowest, highest) = (release.Path.BeforeGel.Extremes(0, until).LowestK, times.WarmestK(until));
        var (conditions, outside) = (scope.Input.Conditions, measured.Contains(lowest) ? highest : lowest);
        if (!measured.Contains(outside))
        {
            var (coldAir, warmAir) = times.Air.Extremes(0, until);
            var pointer = outside == coldAir || outside == warmAir ? CurePointers.Air : outside == conditions.SteelK ? CurePointers.Steel
                : outside == conditions.CompoundK ? CurePointers.Compound : CurePointers.Air;
            scope.Find(CompoundFindings.GelTimeExtrapolated, pointer, Measure.Temperature(outside), related: [CurePointers.GelTimes],
                words: [new("minimum", Measure.Temperature(measured.MinimumK)), new("maximum", Measure.Temperature(measured.MaximumK))]);
        }
    }

    /// <summary>
    /// Against air and steel that stay as they were read: what a longer forecast adds after the release changes nothing here.
    /// </summary>
    private static void CheckDelays(CureScope scope, CureKinetics kinetics, UniformTimes times, ReleaseTimes release)
    {
        var (steel, compound) = (scope.Input.Conditions.SteelK!.Value, scope.Input.Conditions.CompoundK!.Value);
        Judged? Delay(double? laterS, double? soonerS) => laterS - soonerS is { } delayS
            && scope.Rules.DelayWorthSaying.Judge(Measure.Duration(delayS)) is { IsAbove: true } worth ? worth : null;
        var staying = TemperatureHistory.Constant(times.Air.At(0), 0, scope.Rules.Horizon.Si);
        var byAir = Along(scope, kinetics, staying, release.Slower).LoadS;
        var byReadings = Of(scope, kinetics, CurePath.Uniform(staying, SteelHistory.Of(steel, [], staying.EndS), compound), release.Slower)
            .LoadS;
        if (Delay(release.LoadS, byReadings) is { Measured: var night })
        {
            scope.Find(CuringFindings.NightDelaysCure, CurePointers.AirSeries, new(night, null),
                words: new FindingWord("temperature", Measure.Temperature(times.Air.At(0))));
        }

        // A cone that is followed by its heat is warm from within: how much the steel takes of that its curve shows.
        if (scope.Input.ThermalModel == ThermalModel.Uniform && steel < times.Air.At(0)
            && Delay(byReadings, byAir) is { Measured: var cold })
        {
            scope.Find(CuringFindings.SteelHoldsCureBack, CurePointers.Steel, new(cold, null), related: [CurePointers.Air],
                words: new FindingWord("steel", Measure.Temperature(steel)));
        }
    }

    /// <summary>Release of an end that is nowhere colder than given temperatures.</summary>
    private static ReleaseTimes Along(CureScope scope, CureKinetics kinetics, TemperatureHistory history, double slower = 1) =>
        Of(scope, kinetics, CurePath.Of(history, history.At(history.StartS)), slower);

    private static ReleaseTimes Of(CureScope scope, CureKinetics kinetics, CurePath path, double slower) =>
        Release.Of(kinetics, scope.Input.Compound, path, [], slower, null, Trace.None);
}
