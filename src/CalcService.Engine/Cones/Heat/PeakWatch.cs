using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>Finds when and where a part is hottest, inside the steps as well.</summary>
internal sealed class PeakWatch(int[] nodes, double[] start)
{
    private const int Looks = 4;
    private const double NearK = 5;

    public double TemperatureK { get; private set; } = nodes.Max(node => start[node]);

    public double TimeS { get; private set; }

    public int Node { get; private set; } = nodes.MaxBy(node => start[node]);

    public void See(ConductionStep step)
    {
        var length = step.ToS - step.FromS;
        var best = -1;
        foreach (var node in nodes)
        {
            // No step is so long that a place rises and falls by more in it.
            if (Math.Max(step.TemperaturesBefore[node], step.TemperaturesAfter[node]) < TemperatureK - NearK)
            {
                continue;
            }

            for (var look = 0; look <= Looks; look++)
            {
                var kelvins = step.Temperature(node, step.FromS + (length * look / Looks));
                if (kelvins >= TemperatureK)
                {
                    (TemperatureK, Node, best) = (kelvins, node, look);
                }
            }
        }

        if (best >= 0)
        {
            Refine(step, step.FromS + (length * Math.Max(best - 1, 0) / Looks), step.FromS + (length * Math.Min(best + 1, Looks) / Looks));
        }
    }

    /// <summary>Closes in on the top between two times by thirds.</summary>
    private void Refine(ConductionStep step, double from, double to)
    {
        for (var i = 0; i < 40; i++)
        {
            var (left, right) = (from + ((to - from) / 3), to - ((to - from) / 3));
            (from, to) = step.Temperature(Node, left) < step.Temperature(Node, right) ? (left, to) : (from, right);
        }

        TimeS = (from + to) / 2;
        TemperatureK = Math.Max(TemperatureK, step.Temperature(Node, TimeS));
    }
}
