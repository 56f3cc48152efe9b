using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>Finds when a degree of cure is reached first and when everywhere.</summary>
internal sealed class DegreeWatch(double degree)
{
    private bool _everywhere;

    public double Degree { get; } = degree;

    public double? FirstS { get; private set; }

    public int FirstNode { get; private set; }

    public double? EverywhereS => _everywhere ? LastS : null;

    public int LastNode { get; private set; }

    private double LastS { get; set; }

    /// <summary>What has the degree from the start.</summary>
    public void Begin(double startDegree, int node)
    {
        if (startDegree >= Degree)
        {
            (FirstS, FirstNode, LastS, LastNode, _everywhere) = (0, node, 0, node, true);
        }
    }

    public void See(ConductionStep step)
    {
        if (_everywhere)
        {
            return;
        }

        _everywhere = true;
        var before = step.ProgressBefore;
        var after = step.ProgressAfter;
        for (var place = 0; place < before.Length; place++)
        {
            if (before[place] >= Degree)
            {
                continue;
            }

            if (after[place] < Degree)
            {
                _everywhere = false;
                continue;
            }

            var time = Crossing(step, place);
            if (FirstS is null || time < FirstS)
            {
                (FirstS, FirstNode) = (time, step.Reacting[place]);
            }

            if (time > LastS)
            {
                (LastS, LastNode) = (time, step.Reacting[place]);
            }
        }
    }

    private double Crossing(ConductionStep step, int place)
    {
        var (from, to) = (step.FromS, step.ToS);
        for (var i = 0; i < 50 && to - from > 1e-6; i++)
        {
            var middle = (from + to) / 2;
            (from, to) = step.Progress(place, middle) < Degree ? (middle, to) : (from, middle);
        }

        return to;
    }
}
