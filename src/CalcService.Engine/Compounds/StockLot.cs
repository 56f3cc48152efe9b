using CalcService.Engine.Findings;

namespace CalcService.Engine.Compounds;

/// <summary>What the packs of a lot look like.</summary>
public enum LotState
{
    /// <summary>Somebody was asked and doesn't know.</summary>
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
/// <param name="Known">Whether somebody says that it is known, with or without the numbers; null where nobody does.</param>
public sealed record LotStorage(double? LowestK, double? HighestK, Fact? Known);

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

    /// <summary>Null where nobody said.</summary>
    public LotState? State { get; init; }

    /// <summary>Whether it is held in quarantine; null where nobody said.</summary>
    public Fact? Quarantined { get; init; }

    /// <summary>Reference of the job that it is kept for, or null.</summary>
    public string? ReservedFor { get; init; }

    public LotStorage? Storage { get; init; }

    /// <summary>
    /// How the storage stands: where the sheet has a range, only numbers can tell; where it has none, no rule asks but whether it is known.
    /// </summary>
    public Stated StorageStated(TemperatureRange? range) => Storage switch
    {
        { LowestK: not null, HighestK: not null } => Stated.Known,
        { Known: Fact.Yes } when range is null => Stated.Known,
        { Known: Fact.Unknown or Fact.No } when range is not null => Stated.Unknown,
        _ => Stated.Absent,
    };
}
