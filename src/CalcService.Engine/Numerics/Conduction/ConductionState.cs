namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// Where a body stands: temperatures of all nodes, progress of the reacting ones and the heat given to the air so far, in one array
/// behind each other, since a step treats them alike.
/// </summary>
internal sealed class ConductionState(int nodes, int reacting)
{
    public double[] All { get; } = new double[nodes + reacting + 1];

    public Span<double> Temperature => All.AsSpan(0, nodes);

    public Span<double> Progress => All.AsSpan(nodes, reacting);

    public ref double LostJ => ref All[^1];
}
