namespace CalcService.Engine.Curing;

/// <summary>What a model says of one end, in seconds from mixing. Null where it can't say.</summary>
internal sealed record EndCure
{
    public double? EarliestGelS { get; init; }

    public double? ExpectedGelS { get; init; }

    public double? LatestGelS { get; init; }

    /// <summary>What makes the latest gel late.</summary>
    public string GelGovernor { get; init; } = Governors.Air;

    /// <summary>Full strength in the least cured place, by the latest times.</summary>
    public double? FullS { get; init; }

    /// <summary>What makes it late.</summary>
    public string FullGovernor { get; init; } = Governors.Air;

    /// <summary>Cooled again to what the sheet allows in service; null where nothing has to cool.</summary>
    public double? CooledS { get; init; }

    public (double Kelvins, double Seconds)? Peak { get; init; }

    /// <summary>Whether the true peak may be lower.</summary>
    public bool PeakIsUpper { get; init; }

    public LeastCuredPlace? LeastCured { get; init; }

    public IReadOnlyList<CurvePoint> Curve { get; init; } = [];

    public double? EnergyBalanceError { get; init; }
}
