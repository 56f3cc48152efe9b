namespace CalcService.Engine.Compounds;

/// <summary>What the packs of a lot look like.</summary>
public enum LotState
{
    /// <summary>Nobody said.</summary>
    Unknown,

    /// <summary>As the maker closed them.</summary>
    Sealed,

    /// <summary>Opened or part-used.</summary>
    Opened,

    /// <summary>Damaged or leaking.</summary>
    Damaged,
}

/// <summary>Coldest and warmest that a lot was stored. Null where nobody gave it.</summary>
/// <param name="LowestK">Coldest.</param>
/// <param name="HighestK">Warmest.</param>
/// <param name="IsKnown">Whether somebody says that it is known, with or without the numbers.</param>
public sealed record LotStorage(double? LowestK, double? HighestK, bool IsKnown);

/// <summary>Kits of one size and lot on the shelf.</summary>
/// <param name="Lot">Lot number.</param>
/// <param name="Kit">Code of the kit.</param>
/// <param name="Count">Kits on the shelf.</param>
/// <param name="ExpiresOn">Last good day of the whole kit.</param>
/// <param name="MadeOn">Date of manufacture.</param>
public sealed record StockLot(string Lot, string Kit, int Count, DateOnly? ExpiresOn, DateOnly? MadeOn)
{
    public DateOnly? ResinExpiresOn { get; init; }

    public DateOnly? HardenerExpiresOn { get; init; }

    public DateOnly? DoseExpiresOn { get; init; }

    /// <summary>Doses of accelerator that lie with the lot.</summary>
    public int? DoseCount { get; init; }

    public LotState State { get; init; }

    public bool IsQuarantined { get; init; }

    /// <summary>Reference of the job that it is kept for, or null.</summary>
    public string? ReservedFor { get; init; }

    public LotStorage? Storage { get; init; }
}
