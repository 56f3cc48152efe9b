using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <summary>Heat and cure of the cone together: the reaction warms, steel, rope and air take, warmth hastens the reaction.</summary>
public static partial class ConeHeat
{
    /// <summary>The whole cone with its socket and the rope below.</summary>
    /// <param name="input">The cone.</param>
    /// <param name="trace">Gets the formulas of the row of nodes next to the curve.</param>
    /// <param name="budget">Pays one for each node of each step.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    /// <returns>Null where the budget ends first.</returns>
    public static ConeHeatResult? Calculate(ConeHeatInput input, Trace trace, Budget budget, CancellationToken cancellationToken)
    {
        var grid = input.Grid ?? ConeGrid.Whole;
        return Run(input, ConeModel.Whole(input, grid, trace), grid, budget, cancellationToken);
    }

    /// <summary>One slice by itself, sized as the cone is at a share of its length, as if nothing flowed along the axis.</summary>
    /// <param name="input">The cone.</param>
    /// <param name="share">0 at the small end, 1 at the mouth.</param>
    /// <param name="trace">Gets the formulas.</param>
    /// <param name="budget">Pays one for each node of each step.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    /// <returns>Null where the budget ends first.</returns>
    public static ConeHeatResult? CalculateSlice(ConeHeatInput input, double share, Trace trace, Budget budget,
        CancellationToken cancellationToken)
    {
        var grid = input.Grid ?? ConeGrid.Slice;
        return Run(input, ConeModel.Slice(input, grid, share, trace), grid, budget, cancellationToken);
    }

    private static ConeHeatResult? Run(ConeHeatInput input, ConeModel model, ConeGrid grid, Budget budget,
        CancellationToken cancellationToken)
    {
        var solver = new ConductionSolver(model.Network, new CureReaction(input.Law), input.Surroundings.AirK, grid.Tolerance);
        var start = model.StartTemperatures();
        var degree = input.Surroundings.StartDegree;
        var peak = new PeakWatch([.. solver.Reacting], start);
        var outer = new PeakWatch([.. Enumerable.Range(0, model.Rows).Select(model.Outside)], start);
        var curve = new CurveWatch(input, model, solver.Reacting);
        var end = new DegreeWatch(input.EndDegree ?? double.PositiveInfinity);
        DegreeWatch[] degrees = [.. input.Degrees.Select(asked => new DegreeWatch(asked)), end];
        Array.ForEach(degrees, watch => watch.Begin(degree, solver.Reacting[0]));
        curve.Begin(start);
        var least = (Node: solver.Reacting[0], Degree: degree);

        var run = solver.Run(start, Enumerable.Repeat(degree, solver.Reacting.Count).ToArray(), 0, end.EverywhereS ?? input.HorizonS,
            step =>
        {
            peak.See(step);
            outer.See(step);
            curve.See(step);
            Array.ForEach(degrees, watch => watch.See(step));
            least = Least(step);
            return end.EverywhereS is null;
        }, budget, cancellationToken);

        ConePlace At(int node) => model.Places[node];
        return run.End == ConductionEnd.OutOfBudget ? null : new()
        {
            EndS = run.TimeS,
            End = run.End,
            Peak = new(peak.TemperatureK, peak.TimeS, At(peak.Node)),
            FrontsMeet = peak.TemperatureK > KeptK(model, solver.Reacting, start, degree),
            OuterPeak = new(outer.TemperatureK, outer.TimeS, At(outer.Node)),
            Degrees = [.. degrees[..^1].Select(watch => new ConeDegreeTimes(watch.Degree,
                watch.FirstS, watch.FirstS is null ? null : At(watch.FirstNode), watch.EverywhereS, watch.EverywhereS is null ? null
                : At(watch.LastNode)))],
            Curve = curve.Moments,
            LeastCured = At(least.Node),
            LeastDegree = least.Degree,
            Balance = run.Balance,
            Steps = run.Steps,
        };
    }

    /// <summary>The hottest that a place could get with its own heat alone.</summary>
    private static double KeptK(ConeModel model, IReadOnlyList<int> reacting, double[] start, double degree) =>
        start.Max() + ((1 - degree) * reacting.Max(node => model.Network.ReactionHeatJ[node] / model.Network.CapacityJPerK[node]));

    private static (int Node, double Degree) Least(ConductionStep step)
    {
        var least = 0;
        var degrees = step.ProgressAfter;
        for (var place = 1; place < degrees.Length; place++)
        {
            least = degrees[place] < degrees[least] ? place : least;
        }

        return (step.Reacting[least], degrees[least]);
    }
}
