using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>Lots that may not be used for another reason than their one date, each alone and beside a good one.</summary>
internal static class LotCases
{
    private const double Zero = GoodPour.Zero;

    public static IEnumerable<FindingCase> All =>
    [
        .. Both("lot-expired", "resinExpiresOn", lot => lot with { ResinExpiresOn = new(2026, 3, 11) }),
        .. Both("lot-expired", "hardenerExpiresOn", lot => lot with { HardenerExpiresOn = new(2026, 3, 11) }),
        .. Both("lot-not-sealed", "state", lot => lot with { State = LotState.Opened }),
        .. Both("lot-not-sealed", "state", lot => lot with { State = LotState.Damaged }),
        .. Both("lot-quarantined", "quarantined", lot => lot with { Quarantined = Fact.Yes }),
        .. Both("storage-outside-range", "storage/lowest", lot => lot with { Storage = new(4.9 + Zero, 20 + Zero, Fact.Yes) }),
        .. Both("storage-outside-range", "storage/highest", lot => lot with { Storage = new(null, 25.1 + Zero, null) }),
        .. Both("storage-outside-range", "storage/lowest", lot => lot with { Storage = new(26 + Zero, null, null) }),
        .. Both("storage-outside-range", "storage/highest", lot => lot with { Storage = new(null, 4 + Zero, null) }),
        new("lot-expiry-missing", Severity.Unknown, "/stock/0/hardenerExpiresOn",
            On(GoodPour.Lot("A", "small", 4, null) with { ResinExpiresOn = new(2026, 12, 31) })),
        new("lot-reserved", Severity.Note, "/stock/0/reservedFor", On(Good with { ReservedFor = "JOB-2" }), "stock-short"),
        new("lot-reserved", Severity.Note, "/stock/0/reservedFor", On(Good with { ReservedFor = "JOB-2" }, Good)),
        new("facts-not-stated", Severity.Caution, "/stock/0/storage", On(Good with { Storage = null })),
        new("facts-not-stated", Severity.Unknown, "/stock/0/storage", On(Good with { Storage = new(null, null, Fact.Unknown) })),
        new("facts-not-stated", Severity.Unknown, "/stock/0/state", On(Good with { State = null, Quarantined = null, Storage = null })),
        new("facts-not-stated", Severity.Unknown, "/stock/0/state", On(Good with { State = LotState.Unknown })),
        new("facts-not-stated", Severity.Unknown, "/stock/0/quarantined", On(Good with { Quarantined = Fact.Unknown })),
    ];

    private static StockLot Good => GoodPour.Lot("A", "small", 4, "2026-12-31");

    private static IEnumerable<FindingCase> Both(string code, string member, Func<StockLot, StockLot> change) =>
    [
        new(code, Severity.Stop, "/stock/0/" + member, On(change(Good))),
        new(code, Severity.Note, "/stock/0/" + member, On(change(Good), Good)),
    ];

    private static Func<PourPlanInput, PourPlanInput> On(params StockLot[] lots) => pour => pour with
    {
        Reference = "JOB-1", Stock = lots, Compound = pour.Compound with { Storage = new(5 + Zero, 25 + Zero) },
    };
}
