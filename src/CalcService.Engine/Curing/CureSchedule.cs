using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>Says when poured ends gel, may be moved, proof loaded and put to service.</summary>
public static class CureSchedule
{
    /// <summary>Computes a schedule.</summary>
    /// <param name="input">What was poured, or will be, when, and under which temperatures.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<CureScheduleResult> Calculate(CureScheduleInput input, RuleBook rules, Budget budget,
        CancellationToken cancellationToken)
    {
        var scope = new CureScope(input, rules, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, CurePointers.Sheet);
        }

        // A shop can't be scheduled without it, which is a finding of its own.
        if (input is { PourTimeS: null, Shop: null, Purpose: not Purpose.Quote })
        {
            scope.Find(CuringFindings.PourTimeNotStated, CurePointers.PourTime);
        }

        CheckFit(scope);
        CheckStated(scope);
        scope.CheckMixingOrder(input.Compound);
        if (input.ThermalModel == ThermalModel.Uniform)
        {
            scope.LeavePeakOpen(input.Compound);
        }

        if (input.Compound.Hardness is { } hardness)
        {
            scope.Find(ReleaseFindings.HardnessAsked, CurePointers.Hardness, new(null, Limit.Of(Measure.Count(hardness.Minimum))),
                words: new FindingWord("method", hardness.Method));
        }

        var air = CureReadings.Air(scope);
        CureReadings.Check(scope, air);
        var dose = CureReadings.Dose(scope, air);
        var kinetics = scope.Kinetics(input.Compound, dose, rules);
        var (ends, shop) = air is null || kinetics is null ? ([.. input.Ends.Select(Unknown)], null) : Ends(scope, kinetics, air);
        return new(new() { Doses = dose, Ends = ends, Shop = shop }, scope.Findings.Sorted(), CuringNotes.All, scope.Assumptions,
            scope.Trace.Steps);
    }

    private static (CuredEnd[] Ends, ShopSchedule? Shop) Ends(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        kinetics.Model.At(air.At(0), scope.Trace);
        kinetics.AfterGel.TimeS(air.At(0), scope.Trace);
        Milestones.AssumeHold(scope);
        var steel = CureReadings.Steel(scope, air);
        var times = new UniformTimes(kinetics, air, steel, scope.Input.Conditions.CompoundK);
        if (times.Path is not { } path || steel is null)
        {
            ForecastChecks.CheckOpen(scope, kinetics, times);
            return ([.. scope.Input.Ends.Select(end =>
                Milestones.Of(scope, end, UniformCure.Of(scope, kinetics, times, 1, null), null, []))], null);
        }

        var cones = scope.Input.ThermalModel == ThermalModel.Coupled
            ? new CoupledCones(scope, kinetics, air, steel.Kelvins.At(0), scope.Input.Conditions.CompoundK!.Value)
            : null;
        var releases = new CureReleases(scope, kinetics, air, path, cones);
        var cured = scope.Input.Ends.Select((_, index) => Followed(scope, kinetics, times, cones, releases, index)).ToArray();
        ForecastChecks.Check(scope, kinetics, times, steel, [.. cured.OfType<(EndCure, ReleaseTimes)>()]);
        ObservedGels.Check(scope, index => cured[index]?.Cure.EarliestGelS, releases.AgeSeen, index => cured[index]?.Cure.ExpectedGelS);
        CuredEnd[] ends =
            [.. scope.Input.Ends.Select((end, index) => cured[index] is var (cure, release)
            ? Milestones.Of(scope, end, cure, release, releases.SeenOf(index)) : Unknown(end))];
        return (ends, scope.Input.Shop is { } shop ? ShopPlanner.Plan(scope, shop, new(scope, air, releases)) : null);
    }

    private static (EndCure Cure, ReleaseTimes Release)? Followed(CureScope scope, CureKinetics kinetics, UniformTimes times,
        CoupledCones? cones, CureReleases releases, int index)
    {
        if (releases.Of(index) is not { } release)
        {
            return null;
        }

        if (cones is null)
        {
            return (UniformCure.Of(scope, kinetics, times, releases.Lot, release), release);
        }

        // The picture reaches to the load, which the sheet may let wait longer than the model.
        return cones.At(index, release.Slower) is { } cone && cones.Of(index) is { } model
            && cones.Curve(index, release.Slower, Math.Max(cone.FullS ?? times.Air.EndS, release.LoadS ?? times.Air.EndS)) is { } curve
            ? (CoupledEnd.Of(scope, cone, release, curve, model.GelOf(curve)), release)
            : null;
    }

    /// <summary>Whether each rope goes with its socket, as the pour plan has it.</summary>
    private static void CheckFit(CureScope scope)
    {
        for (var i = 0; i < scope.Input.Ends.Count; i++)
        {
            var (end, pointer) = (scope.Input.Ends[i], $"{CurePointers.Ends}/{i}");
            new EndFit(end.Rope, RopeFacts.Of(end.Rope, pointer + "/rope", [], Trace.None), end.Basket, pointer, scope.Book.Pouring,
                scope.Add)
            {
                SocketBreakingForceN = end.SocketBreakingForceN, Metal = end.Metal, RopeRange = end.RopeRange,
            }.Check();
            if (end.Bore is { } bore)
            {
                scope.CheckBore(bore, pointer);
            }
        }
    }

    /// <summary>A pour plan asks for what nobody said of an end; what somebody said to be unknown doesn't pass here either.</summary>
    private static void CheckStated(CureScope scope) => scope.CheckStated(scope.Input.Purpose, scope.Input.Ends
        .SelectMany((end, i) => SaidUnknown(end, $"{CurePointers.Ends}/{i}/socket")));

    private static IEnumerable<StatedFact> SaidUnknown(CureEnd end, string at)
    {
        if (end.Bore == BoreState.Unknown)
        {
            yield return StatedFact.Of(at + "/bore", "the state of the bore", end.Bore, isNeeded: true);
        }

        if (end.Metal == SocketMetal.Unknown)
        {
            yield return StatedFact.Of(at + "/material/kind", "what the socket is made of", end.Metal, isNeeded: false);
        }
    }

    private static CuredEnd Unknown(CureEnd end) =>
        new() { Id = end.Id, Quantity = end.Quantity, GelAt = new(null, null, null), GovernedBy = new(null, null, null, null) };
}
