namespace CalcService.Engine.Numerics.Conduction;

/// <summary>Takes single steps of a body by the Rosenbrock method and says how far off each is.</summary>
internal sealed class ConductionStepper
{
    private readonly ConductionSystem _system;
    private readonly PiecewiseLinear _air;
    private readonly ConductionTolerance _tolerance;
    private readonly ConductionState[] _stages;
    private readonly ConductionState _slopes;
    private readonly ConductionState _earlier;

    public ConductionStepper(ConductionSystem system, PiecewiseLinear air, ConductionTolerance tolerance)
    {
        (_system, _air, _tolerance) = (system, air, tolerance);
        _stages = [.. Enumerable.Range(0, Rodas.Stages).Select(_ => New())];
        (_slopes, _earlier, Now, Next) = (New(), New(), New(), New());
    }

    public ConductionState Now { get; private set; }

    public ConductionState Next { get; private set; }

    public ConductionState[] Stages => _stages;

    /// <summary>Looks at where the body stands. Once for each place, however many steps are tried from it.</summary>
    public void Look(double time)
    {
        _system.Slopes(time, Now, _slopes);
        _system.Linearise(Now, _slopes.Progress);
    }

    /// <summary>A length in which the first step moves by about its tolerance.</summary>
    public double FirstLength(ReadOnlySpan<double> capacity)
    {
        var pace = 1e-6;
        for (var i = 0; i < capacity.Length; i++)
        {
            pace = Math.Max(pace, Math.Abs(_slopes.Temperature[i]) / (capacity[i] * _tolerance.TemperatureK));
        }

        foreach (var rate in _slopes.Progress)
        {
            pace = Math.Max(pace, rate / _tolerance.Progress);
        }

        return 1 / pace;
    }

    /// <summary>Tries a step and gives its error over the tolerance, infinite where there is no such step.</summary>
    public double Try(double time, double length, ReadOnlySpan<double> capacity)
    {
        var shift = 1 / (Rodas.Gamma * length);
        if (!_system.Factor(shift))
        {
            return double.PositiveInfinity;
        }

        var drift = length * _air.SlopeAfter(time);
        for (var i = 0; i < Rodas.Stages; i++)
        {
            var stage = _stages[i];
            if (i == 0)
            {
                _slopes.All.CopyTo(stage.All.AsSpan());
            }
            else
            {
                SetNext(Rodas.A(i));
                _system.Slopes(time + (Rodas.Time(i) * length), Next, stage);
                AddEarlier(Rodas.C(i), length, stage, capacity);
            }

            _system.AddDrift(drift * Rodas.Drift(i), stage);
            _system.Solve(shift, stage);
        }

        Vectors.Add(Next.All, 1, _stages[^1].All);
        return Error(_stages[^1]);
    }

    /// <summary>Goes where the last step tried ends.</summary>
    public void Accept() => (Now, Next) = (Next, Now);

    private void SetNext(ReadOnlySpan<double> a)
    {
        Now.All.CopyTo(Next.All.AsSpan());
        for (var j = 0; j < a.Length; j++)
        {
            Vectors.Add(Next.All, a[j], _stages[j].All);
        }
    }

    private void AddEarlier(ReadOnlySpan<double> c, double length, ConductionState stage, ReadOnlySpan<double> capacity)
    {
        Array.Clear(_earlier.All);
        for (var j = 0; j < c.Length; j++)
        {
            Vectors.Add(_earlier.All, c[j] / length, _stages[j].All);
        }

        // Slopes of temperature are in watts.
        var earlier = _earlier.Temperature;
        for (var i = 0; i < earlier.Length; i++)
        {
            earlier[i] *= capacity[i];
        }

        Vectors.Add(stage.All, 1, _earlier.All);
    }

    private double Error(ConductionState error)
    {
        var worst = 0.0;
        foreach (var one in error.Temperature)
        {
            worst = Worse(worst, one / _tolerance.TemperatureK);
        }

        foreach (var one in error.Progress)
        {
            worst = Worse(worst, one / _tolerance.Progress);
        }

        return worst;
    }

    private static double Worse(double worst, double one) => Math.Abs(one) <= worst ? worst : Math.Abs(one);

    private ConductionState New() => new(_system.Nodes, _system.Reacting.Length);
}
