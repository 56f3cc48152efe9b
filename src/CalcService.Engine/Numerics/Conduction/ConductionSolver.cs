namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// Carries a body through time in steps as long as the tolerance allows. Stiff parts, such as thin rings of steel, don't shorten
/// them. Steps end where the air's slope changes.
/// </summary>
public sealed class ConductionSolver
{
    private const double ShortestS = 1e-9;

    private readonly ConductionNetwork _network;
    private readonly PiecewiseLinear _air;
    private readonly ConductionSystem _system;
    private readonly ConductionStepper _stepper;
    private readonly ConductionStep _step;

    /// <param name="network">The body; not to be changed any more.</param>
    /// <param name="reaction">What goes on in the nodes that have reaction heat; null where nothing does.</param>
    /// <param name="air">Temperature of the air over time.</param>
    /// <param name="tolerance">Error allowed in a step.</param>
    public ConductionSolver(ConductionNetwork network, IReaction? reaction, PiecewiseLinear air, ConductionTolerance tolerance)
    {
        (_network, _air) = (network, air);
        _system = new ConductionSystem(network, reaction, air);
        _stepper = new ConductionStepper(_system, air, tolerance);
        _step = new ConductionStep(network.Nodes, _system.Reacting);
    }

    /// <summary>The nodes in which something reacts, in the order of their progress.</summary>
    public IReadOnlyList<int> Reacting => _system.Reacting;

    /// <summary>Runs from one time to another.</summary>
    /// <param name="temperatures">Of each node at the start.</param>
    /// <param name="progress">Of each reacting node at the start.</param>
    /// <param name="fromS">The start.</param>
    /// <param name="untilS">The end.</param>
    /// <param name="watch">Sees each step; false ends the run.</param>
    /// <param name="budget">Pays one for each node of each step tried.</param>
    /// <param name="cancellationToken">Ends the work between two steps.</param>
    public ConductionRun Run(
        ReadOnlySpan<double> temperatures, ReadOnlySpan<double> progress, double fromS, double untilS,
        Func<ConductionStep, bool> watch, Budget budget, CancellationToken cancellationToken)
    {
        temperatures.CopyTo(_stepper.Now.Temperature);
        progress.CopyTo(_stepper.Now.Progress);
        _stepper.Now.LostJ = 0;
        var start = (double[])_stepper.Now.All.Clone();
        var (time, steps, rejected, refused) = (fromS, 0, 0, false);
        _stepper.Look(time);
        var length = _stepper.FirstLength(_network.CapacityJPerK);
        ConductionEnd? end = time < untilS ? null : ConductionEnd.Reached;
        while (end is null)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (!budget.TrySpend(_network.Nodes))
            {
                end = ConductionEnd.OutOfBudget;
                break;
            }

            var to = EndOfStep(time, length, Math.Min(untilS, _air.NextKinkAfter(time)));
            var tried = to - time;
            var error = _stepper.Try(time, tried, _network.CapacityJPerK);
            if (error <= 1)
            {
                _step.Set(time, to, _stepper.Now, _stepper.Next, _stepper.Stages);
                _stepper.Accept();
                time = to;
                steps++;
                end = !watch(_step) ? ConductionEnd.Stopped : time >= untilS ? ConductionEnd.Reached : null;
                _stepper.Look(time);
            }
            else
            {
                rejected++;
                end = tried < ShortestS ? ConductionEnd.RanAway : null;
            }

            // A step that only a kink or the end made short says little about the next.
            var next = tried * Growth(error, refused);
            length = error <= 1 && tried < length ? Math.Max(next, length) : next;
            refused = !(error <= 1);
        }

        return new(end!.Value, time, steps, rejected, Balance(start));
    }

    /// <summary>A rest a little longer than a step is halved, so that no sliver is left over.</summary>
    private static double EndOfStep(double time, double length, double limit) =>
        time + length >= limit ? limit : time + (2 * length) > limit ? time + ((limit - time) / 2) : time + length;

    /// <summary>How much longer the next step is. Right after a refused one it doesn't grow.</summary>
    private static double Growth(double error, bool refused) =>
        double.IsFinite(error) ? Math.Clamp(.9 / Math.Sqrt(Math.Sqrt(error)), .2, refused ? 1 : 5) : .25;

    private EnergyBalance Balance(double[] start)
    {
        var (stored, released) = (0.0, 0.0);
        var now = _stepper.Now;
        for (var i = 0; i < _network.Nodes; i++)
        {
            stored += _network.CapacityJPerK[i] * (now.All[i] - start[i]);
        }

        for (var r = 0; r < Reacting.Count; r++)
        {
            released += _network.ReactionHeatJ[Reacting[r]] * (now.Progress[r] - start[_network.Nodes + r]);
        }

        return new(released, stored, now.LostJ);
    }
}
