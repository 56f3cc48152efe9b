using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
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
    public static Outcome<CureScheduleResult> Calculate(CureScheduleInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        var scope = new CureScope(input, rules, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, CurePointers.Sheet);
        }

        CheckFit(scope);
        var air = CureReadings.Air(scope);
        CureReadings.Check(scope, air);
        var dose = CureReadings.Dose(scope, air);
        var kinetics = scope.Kinetics(input.Compound, dose, rules);
        var (ends, shop) = air is null || kinetics is null ? ([.. input.Ends.Select(Unknown)], null) : Ends(scope, kinetics, air);
        return new(new() { Doses = dose, Ends = ends, Shop = shop }, scope.Findings.Sorted(), CuringNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    private static (CuredEnd[] Ends, ShopSchedule? Shop) Ends(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        Explain(scope, kinetics, air);
        Milestones.AssumeHold(scope);
        var uniform = new UniformCure(scope, kinetics, air);
        return scope.Input.ThermalModel == ThermalModel.Uniform ? ByAir(scope, kinetics, air, uniform) : ByHeat(scope, kinetics, air, uniform);
    }

    private static (CuredEnd[] Ends, ShopSchedule? Shop) ByAir(CureScope scope, CureKinetics kinetics, TemperatureHistory air, UniformCure uniform)
    {
        var bySheet = uniform.At(slower: 1);
        ForecastChecks.Check(scope, kinetics, air, uniform, bySheet);
        var observed = ObservedGel.Read(scope, (_, seconds) => GelAge.Along(kinetics.Expected, air).At(seconds), _ => bySheet.ExpectedGelS);
        CuredEnd[] ends = [.. scope.Input.Ends.Select(end =>
        {
            var slower = observed.SlowerFor(end.Id);
            return Milestones.Of(scope, end, slower == 1 ? bySheet : uniform.At(slower), observed.Of(end.Id));
        })];
        return (ends, Shop(scope, air, observed, (_, pourS, slower) => uniform.ReleaseAt(pourS, slower)));
    }

    private static (CuredEnd[] Ends, ShopSchedule? Shop) ByHeat(CureScope scope, CureKinetics kinetics, TemperatureHistory air, UniformCure uniform)
    {
        var cones = new CoupledCones(scope, kinetics, air);
        ForecastChecks.Check(scope, kinetics, air, uniform, cones.Slowest);
        var observed = ObservedGel.Read(scope, cones.AgeAt, end => cones.BySheet(end)?.ExpectedGelS);
        CuredEnd[] ends = [.. scope.Input.Ends.Select((end, index) =>
            cones.At(index, observed.SlowerFor(end.Id)) is { } cure ? Milestones.Of(scope, end, cure, observed.Of(end.Id)) : Unknown(end))];
        return (ends, Shop(scope, air, observed, cones.ReleaseAt));
    }

    /// <summary>The tasks of the shop, where there is one and the readings are there that release a cone.</summary>
    private static ShopSchedule? Shop(CureScope scope, TemperatureHistory air, ObservedGel observed, Func<int, double, double, EndCure?> follow) =>
        scope.Input is { Shop: { } shop, Conditions: { SteelK: not null, CompoundK: not null } }
            ? ShopPlanner.Plan(scope, shop, new(scope, air, follow), observed.SlowerFor)
            : null;

    /// <summary>The gel time at mixing and what full strength means, for the trace.</summary>
    private static void Explain(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        kinetics.Model.At(air.At(0), scope.Trace);
        CureShape.ReactionTime(kinetics.Shape.FullDegree, kinetics.Shape.Acceleration, kinetics.Shape.Order, scope.Trace);
    }

    /// <summary>Whether each rope goes with its socket, as the pour plan has it.</summary>
    private static void CheckFit(CureScope scope)
    {
        for (var i = 0; i < scope.Input.Ends.Count; i++)
        {
            var (end, pointer) = (scope.Input.Ends[i], $"{CurePointers.Ends}/{i}");
            new EndFit(end.Rope, RopeFacts.Of(end.Rope, pointer + "/rope", [], Trace.None), end.Basket, pointer, scope.Book.Pouring, scope.Findings.Add)
            {
                SocketBreakingForceN = end.SocketBreakingForceN, Metal = end.Metal, RopeRange = end.RopeRange,
            }.Check();
        }
    }

    private static CuredEnd Unknown(CureEnd end) =>
        new() { Id = end.Id, Quantity = end.Quantity, GelAt = new(null, null, null), GovernedBy = new(null, null, null, null) };
}
