namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// One accepted step with its continuous solution. Valid while the step is shown; the next one uses the same memory.
/// </summary>
public sealed class ConductionStep
{
    private readonly int _nodes;
    private readonly double[] _second;
    private readonly double[] _third;
    private double[] _before = [];
    private double[] _after = [];

    internal ConductionStep(int nodes, int[] reacting)
    {
        _nodes = nodes;
        Reacting = reacting;
        (_second, _third) = (new double[nodes + reacting.Length + 1], new double[nodes + reacting.Length + 1]);
    }

    public double FromS { get; private set; }

    public double ToS { get; private set; }

    /// <summary>The nodes in which something reacts, in the order of their progress.</summary>
    public IReadOnlyList<int> Reacting { get; }

    public ReadOnlySpan<double> TemperaturesBefore => _before.AsSpan(0, _nodes);

    public ReadOnlySpan<double> TemperaturesAfter => _after.AsSpan(0, _nodes);

    public ReadOnlySpan<double> ProgressBefore => _before.AsSpan(_nodes, Reacting.Count);

    public ReadOnlySpan<double> ProgressAfter => _after.AsSpan(_nodes, Reacting.Count);

    /// <summary>Temperature of a node at a time inside the step.</summary>
    public double Temperature(int node, double timeS) => At(node, timeS);

    /// <summary>Progress of a reacting node, by its place in <see cref="Reacting"/>.</summary>
    public double Progress(int place, double timeS) => At(_nodes + place, timeS);

    internal void Set(double from, double to, ConductionState before, ConductionState after, ConductionState[] stages)
    {
        (FromS, ToS, _before, _after) = (from, to, before.All, after.All);
        Array.Clear(_second);
        Array.Clear(_third);
        var second = Rodas.Dense2();
        var third = Rodas.Dense3();
        for (var j = 0; j < second.Length; j++)
        {
            Vectors.Add(_second, second[j], stages[j].All);
            Vectors.Add(_third, third[j], stages[j].All);
        }
    }

    private double At(int index, double timeS)
    {
        var s = (timeS - FromS) / (ToS - FromS);
        return (_before[index] * (1 - s)) + (s * (_after[index] + ((1 - s) * (_second[index] + (s * _third[index])))));
    }
}
