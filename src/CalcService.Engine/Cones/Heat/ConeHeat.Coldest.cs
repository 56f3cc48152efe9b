using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <content>The cone that makes no heat.</content>
public static partial class ConeHeat
{
    /// <summary>Looks inside a step, which may be long and bent.</summary>
    private const int LooksInStep = 4;

    /// <summary>The coldest place of the whole cone over time, as if nothing reacted; null where the budget ends first.</summary>
    /// <param name="input">The cone.</param>
    /// <param name="untilS">How long it is followed at least: no step is cut there, so that whoever asks for more sees the same until
    /// then.</param>
    /// <param name="budget">Pays one for each node of each step.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    public static TemperatureHistory? Coldest(ConeHeatInput input, double untilS, Budget budget, CancellationToken cancellationToken)
    {
        var grid = input.Grid ?? ConeGrid.Whole;
        var model = ConeModel.Whole(input, grid, Trace.None);
        var start = model.StartTemperatures();
        int[] cone = [.. Enumerable.Range(0, model.Network.Nodes).Where(node => model.Network.ReactionHeatJ[node] > 0)];
        var (seconds, kelvins) = (new List<double> { 0 }, new List<double> { cone.Min(node => start[node]) });
        var run = new ConductionSolver(model.Network, null, input.Surroundings.AirK, grid.Tolerance)
            .Run(start, [], 0, Math.Max(untilS, input.HorizonS), step =>
        {
            for (var look = 1; look <= LooksInStep; look++)
            {
                var at = step.FromS + ((step.ToS - step.FromS) * look / LooksInStep);
                seconds.Add(at);
                kelvins.Add(cone.Min(node => step.Temperature(node, at)));
            }

            return step.ToS < untilS;
        }, budget, cancellationToken);
        return run.End == ConductionEnd.OutOfBudget ? null : new(seconds, kelvins);
    }
}
