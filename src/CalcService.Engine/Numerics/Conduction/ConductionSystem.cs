namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// The equations of a body: heat flows along the links, the reaction heats, the air takes. Progress is eliminated node by node,
/// so that the matrix stays the symmetric one of the conduction with another diagonal. What a node gains in the one equation it
/// loses in the other with the same numbers, so energy is kept to rounding.
/// </summary>
internal sealed class ConductionSystem
{
    /// <summary>Differences for the slopes of the rate. Wide enough for the law's root-like start at no progress.</summary>
    private const double ProgressDifference = 1e-4;
    private const double TemperatureDifference = 1e-3;

    private readonly ConductionNetwork _network;
    private readonly IReaction? _reaction;
    private readonly PiecewiseLinear _air;
    private readonly HeatLink[] _links;
    private readonly int[] _linkPlaces;
    private readonly int[] _diagonalPlaces;
    private readonly SkylineMatrix _matrix;
    private readonly double[] _diagonal;
    private readonly double[] _temperature;
    private readonly double[] _shifted;
    private readonly double[] _byProgress;
    private readonly double[] _byTemperature;
    private readonly double[] _inverse;

    public ConductionSystem(ConductionNetwork network, IReaction? reaction, PiecewiseLinear air)
    {
        (_network, _reaction, _air) = (network, reaction, air);
        _links = network.MergedLinks();
        _matrix = new SkylineMatrix(network.Nodes, _links);
        _linkPlaces = [.. _links.Select(link => _matrix.Place(link.To, link.From))];
        _diagonalPlaces = [.. Enumerable.Range(0, network.Nodes).Select(i => _matrix.Place(i, i))];
        _diagonal = network.ExposureWPerK.ToArray();
        foreach (var link in _links)
        {
            _diagonal[link.From] += link.ConductanceWPerK;
            _diagonal[link.To] += link.ConductanceWPerK;
        }

        Reacting = reaction is null ? [] : [.. Enumerable.Range(0, network.Nodes).Where(network.Reacts)];
        (_temperature, _shifted) = (new double[Reacting.Length], new double[Reacting.Length]);
        (_byProgress, _byTemperature, _inverse) = (new double[Reacting.Length], new double[Reacting.Length], new double[Reacting.Length]);
    }

    /// <summary>The nodes in which something reacts.</summary>
    public int[] Reacting { get; }

    public int Nodes => _network.Nodes;

    /// <summary>Heat into each node in W, the rates, and the heat into the air in W.</summary>
    public void Slopes(double time, ConductionState at, ConductionState into)
    {
        var temperature = at.Temperature;
        var flow = into.Temperature;
        var exposure = _network.ExposureWPerK;
        var air = _air.At(time);
        var lost = 0.0;
        for (var i = 0; i < flow.Length; i++)
        {
            var toAir = exposure[i] * (temperature[i] - air);
            flow[i] = -toAir;
            lost += toAir;
        }

        into.LostJ = lost;
        foreach (var link in _links)
        {
            var along = link.ConductanceWPerK * (temperature[link.From] - temperature[link.To]);
            flow[link.From] -= along;
            flow[link.To] += along;
        }

        Rates(at.Progress, temperature, into.Progress);
        var heat = _network.ReactionHeatJ;
        for (var r = 0; r < Reacting.Length; r++)
        {
            flow[Reacting[r]] += heat[Reacting[r]] * into.Progress[r];
        }
    }

    /// <summary>How the rates change with progress and temperature; the rates themselves are known already.</summary>
    public void Linearise(ConductionState at, ReadOnlySpan<double> rates)
    {
        if (Reacting.Length == 0)
        {
            return;
        }

        var progress = at.Progress;
        for (var r = 0; r < Reacting.Length; r++)
        {
            _temperature[r] = at.Temperature[Reacting[r]];
            _shifted[r] = progress[r] + Step(progress[r]);
        }

        _reaction!.Rates(_shifted, _temperature, _byProgress);
        for (var r = 0; r < Reacting.Length; r++)
        {
            _byProgress[r] = (_byProgress[r] - rates[r]) / (_shifted[r] - progress[r]);
            _temperature[r] += TemperatureDifference;
        }

        _reaction.Rates(progress, _temperature, _byTemperature);
        for (var r = 0; r < Reacting.Length; r++)
        {
            _byTemperature[r] = (_byTemperature[r] - rates[r]) / TemperatureDifference;
        }
    }

    /// <summary>Factors the matrix of a step; false where it can't be.</summary>
    /// <param name="shift">1/(γ·h).</param>
    public bool Factor(double shift)
    {
        var capacity = _network.CapacityJPerK;
        var heat = _network.ReactionHeatJ;
        _matrix.Values.Clear();
        for (var k = 0; k < _links.Length; k++)
        {
            _matrix.Values[_linkPlaces[k]] = -_links[k].ConductanceWPerK;
        }

        for (var i = 0; i < _diagonalPlaces.Length; i++)
        {
            _matrix.Values[_diagonalPlaces[i]] = _diagonal[i] + (capacity[i] * shift);
        }

        for (var r = 0; r < Reacting.Length; r++)
        {
            if (!(shift - _byProgress[r] > 0))
            {
                return false;
            }

            _inverse[r] = 1 / (shift - _byProgress[r]);
            _matrix.Values[_diagonalPlaces[Reacting[r]]] -= heat[Reacting[r]] * _byTemperature[r] * shift * _inverse[r];
        }

        return _matrix.Factor();
    }

    /// <summary>Turns the right-hand side of a stage into the stage.</summary>
    public void Solve(double shift, ConductionState stage)
    {
        var temperature = stage.Temperature;
        var progress = stage.Progress;
        var heat = _network.ReactionHeatJ;
        for (var r = 0; r < Reacting.Length; r++)
        {
            temperature[Reacting[r]] += heat[Reacting[r]] * _byProgress[r] * _inverse[r] * progress[r];
        }

        _matrix.Solve(temperature);
        for (var r = 0; r < Reacting.Length; r++)
        {
            progress[r] = (progress[r] + (_byTemperature[r] * temperature[Reacting[r]])) * _inverse[r];
        }

        var lost = stage.LostJ;
        var exposure = _network.ExposureWPerK;
        for (var i = 0; i < temperature.Length; i++)
        {
            lost += exposure[i] * temperature[i];
        }

        stage.LostJ = lost / shift;
    }

    /// <summary>Adds what the air's own change puts into a stage.</summary>
    public void AddDrift(double weightedSlope, ConductionState into)
    {
        if (weightedSlope == 0)
        {
            return;
        }

        var exposure = _network.ExposureWPerK;
        var flow = into.Temperature;
        for (var i = 0; i < flow.Length; i++)
        {
            flow[i] += exposure[i] * weightedSlope;
            into.LostJ -= exposure[i] * weightedSlope;
        }
    }

    private void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> into)
    {
        if (Reacting.Length == 0)
        {
            return;
        }

        for (var r = 0; r < Reacting.Length; r++)
        {
            _temperature[r] = temperature[Reacting[r]];
        }

        _reaction!.Rates(progress, _temperature, into);
    }

    private static double Step(double progress) => progress < .5 ? ProgressDifference : -ProgressDifference;
}
