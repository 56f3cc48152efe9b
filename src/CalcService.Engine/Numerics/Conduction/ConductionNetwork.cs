namespace CalcService.Engine.Numerics.Conduction;

/// <summary>A path for heat between two nodes, W/K.</summary>
public readonly record struct HeatLink(int From, int To, double ConductanceWPerK);

/// <summary>A body divided into nodes: what each holds, how they are linked, what of them the air sees.</summary>
public sealed class ConductionNetwork
{
    private readonly List<HeatLink> _links = [];
    private readonly double[] _capacityJPerK;
    private readonly double[] _reactionHeatJ;
    private readonly double[] _exposureWPerK;
    private readonly bool[] _reacts;

    public ConductionNetwork(int nodes) =>
        (_capacityJPerK, _reactionHeatJ, _exposureWPerK, _reacts) = (new double[nodes], new double[nodes], new double[nodes],
        new bool[nodes]);

    public int Nodes => _capacityJPerK.Length;

    public IReadOnlyList<HeatLink> Links => _links;

    public ReadOnlySpan<double> CapacityJPerK => _capacityJPerK;

    /// <summary>Heat that the reaction sets free in each node when its progress grows by 1.</summary>
    public ReadOnlySpan<double> ReactionHeatJ => _reactionHeatJ;

    /// <summary>Film coefficient times surface of each node towards the air.</summary>
    public ReadOnlySpan<double> ExposureWPerK => _exposureWPerK;

    /// <summary>Gives a node more material.</summary>
    public void AddMaterial(int node, double capacityJPerK) => _capacityJPerK[node] += capacityJPerK;

    /// <summary>Lets a node react; a reaction may have no heat.</summary>
    public void AddReaction(int node, double heatJ)
    {
        _reacts[node] = true;
        _reactionHeatJ[node] += heatJ;
    }

    public bool Reacts(int node) => _reacts[node];

    public void Link(int from, int to, double conductanceWPerK) =>
        _links.Add(new(Math.Min(from, to), Math.Max(from, to), conductanceWPerK));

    /// <summary>Opens a node to the air.</summary>
    public void Expose(int node, double conductanceWPerK) => _exposureWPerK[node] += conductanceWPerK;

    /// <summary>Merges links between the same two nodes, since each costs at every step.</summary>
    public HeatLink[] MergedLinks() =>
    [
        .. _links.GroupBy(link => (link.From, link.To))
            .Select(same => new HeatLink(same.Key.From, same.Key.To, same.Sum(link => link.ConductanceWPerK)))
            .OrderBy(link => link.From).ThenBy(link => link.To),
    ];
}
