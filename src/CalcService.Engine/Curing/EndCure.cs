using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>What a model says of one end, in seconds from mixing. Null where it can't say.</summary>
internal sealed record EndCure
{
    public double? EarliestGelS { get; init; }

    public double? ExpectedGelS { get; init; }

    public double? LatestGelS { get; init; }

    /// <summary>What makes the latest gel late.</summary>
    public string GelGovernor { get; init; } = Governor.Air;

    public (double Kelvins, double Seconds)? Peak { get; init; }

    public LeastCuredPlace? LeastCured { get; init; }

    public IReadOnlyList<CurvePoint> Curve { get; init; } = [];

    public double? EnergyBalanceError { get; init; }
}
