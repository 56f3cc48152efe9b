using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>Kits of one size and lot on the shelf, all in the same state. The earliest of all dates counts.</summary>
public sealed record StockLot
{
    /// <summary>Lot number.</summary>
    [Id]
    public required string Lot { get; init; }

    /// <summary>Code of the kit, as on the sheet.</summary>
    [Id]
    public required string Kit { get; init; }

    /// <summary>Kits on the shelf.</summary>
    [Within(0, 100000)]
    public required int Count { get; init; }

    /// <summary>
    /// Last good day of the whole kit. If absent, madeOn and the sheet's shelf life give it, or the dates of all parts; else the lot is not
    /// used.
    /// </summary>
    public DateOnly? ExpiresOn { get; init; }

    /// <summary>Date of manufacture.</summary>
    public DateOnly? MadeOn { get; init; }

    /// <summary>Lot number of the resin in the kits, kept with the record.</summary>
    [Kept]
    [Id]
    public string? ResinLot { get; init; }

    /// <summary>Lot number of the hardener in the kits, kept with the record.</summary>
    [Kept]
    [Id]
    public string? HardenerLot { get; init; }

    /// <summary>Lot number of the doses, kept with the record.</summary>
    [Kept]
    [Id]
    public string? DoseLot { get; init; }

    /// <summary>Last good day of the resin.</summary>
    public DateOnly? ResinExpiresOn { get; init; }

    /// <summary>Last good day of the hardener.</summary>
    public DateOnly? HardenerExpiresOn { get; init; }

    /// <summary>Last good day of the doses. Counts unless the plan takes no dose.</summary>
    public DateOnly? DoseExpiresOn { get; init; }

    /// <summary>Doses of accelerator that lie with the lot, if any.</summary>
    [Within(0, 1000000)]
    public int? DoseCount { get; init; }

    /// <summary>What the packs look like. Only sealed ones are used; of a lot that is used somebody has to say.</summary>
    public LotState? State { get; init; }

    /// <summary>yes where the lot is held in quarantine; it is then not used. Of a lot that is used somebody has to say no.</summary>
    public Fact? Quarantined { get; init; }

    /// <summary>Reference of the job that the lot is kept for; other jobs do not use it.</summary>
    [Id]
    public string? ReservedFor { get; init; }

    /// <summary>How it was stored.</summary>
    public LotStorage? Storage { get; init; }
}

/// <summary>How a lot was stored.</summary>
public sealed record LotStorage
{
    /// <summary>Coldest that it was.</summary>
    [Kind(QuantityKind.Temperature, -60, 100, "degC")]
    public Quantity? Lowest { get; init; }

    /// <summary>Warmest that it was.</summary>
    [Kind(QuantityKind.Temperature, -60, 100, "degC")]
    public Quantity? Highest { get; init; }

    /// <summary>
    /// Whether the temperatures are known. With both given it may be absent; alone it is enough where the sheet has no storage range.
    /// </summary>
    public Fact? Known { get; init; }
}
