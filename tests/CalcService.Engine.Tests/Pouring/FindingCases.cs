using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Sockets;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>At least one pour for each finding and severity that a plan can raise.</summary>
public static class FindingCases
{
    private const double Zero = GoodPour.Zero;
    private const string Air = "/conditions/airTemperature", Steel = "/conditions/steelTemperature",
        Compound = "/conditions/compoundTemperature";
    private const string Room = "/conditions/room", Rope = "/ends/0/rope", Basket = "/ends/0/socket/basket";

    public static IReadOnlyList<FindingCase> All { get; } = [.. Readings, .. Sheets, .. DoseAndGel, .. Time, .. Kits, .. LotCases.All,
        .. RopeAndSocket, .. BroomCases.All, .. StatedCases.All, .. Bounds, .. Vapour];

    private static IEnumerable<FindingCase> Readings =>
    [
        new("steel-at-dew-point", Severity.Stop, Steel, At(c => c with { RelativeHumidity = .95 })),
        new("steel-near-dew-point", Severity.Caution, Steel, At(c => c with { RelativeHumidity = .80 })),
        new("outside-pouring-range", Severity.Stop, Air, At(c => c with { AirK = 34.5 + Zero, RelativeHumidity = .2 })),
        new("outside-pouring-range", Severity.Stop, Steel, At(c => c with { SteelK = 34.5 + Zero })),
        new("outside-pouring-range", Severity.Stop, Steel, At(c => c with { SteelK = 1.5 + Zero, RelativeHumidity = .2 })),
        new("outside-pouring-range", Severity.Stop, Compound, At(c => c with { CompoundK = 34.5 + Zero })),
        new("reading-missing", Severity.Unknown, Air, At(c => c with { AirK = null })),
        new("reading-missing", Severity.Unknown, Steel, At(c => c with { SteelK = null })),
        new("reading-missing", Severity.Unknown, Compound, At(c => c with { CompoundK = null })),
        new("reading-missing", Severity.Unknown, "/conditions/relativeHumidity", At(c => c with { RelativeHumidity = null })),
        new("readings-old", Severity.Caution, "/conditions/readAt", At(c => c with { ReadAt = GoodPour.Input.PourAt.AddMinutes(-61) })),
        new("readings-old", Severity.Caution, "/ends/0/socket/temperature/readAt",
            pour => pour with { Ends =
            [pour.Ends[0] with { SocketTemperatureK = 20 + Zero, SocketReadAt = pour.PourAt.AddMinutes(-61) }] }),
        new("read-again-during-pour", Severity.Note, "/conditions/readAt",
            pour => pour with { Ends = [GoodPour.End("A", 9)], Conditions = pour.Conditions with { ValidForS = 60 } }),
    ];

    private static IEnumerable<FindingCase> Sheets =>
    [
        new("sheet-silent", Severity.Unknown, "/compound/sheet/pouring", Sheet(s => s with { Pouring = null })),
        new("sheet-old", Severity.Caution, "/compound/sheet/issuedOn", Sheet(s => s with { IssuedOn = new(2024, 3, 11) })),
        new("dose-contradicts-sheet", Severity.Stop, "/dose/perKit",
        pour => pour with { IntendedDose = new(2, DoseMoment.BeforeHardener) }),
        new("dose-above-maximum", Severity.Stop, "/dose/perKit", pour => pour with
        {
            IntendedDose = new(5, DoseMoment.BeforeHardener), Compound = pour.Compound with { MaximumDoses = 2 },
        }, "dose-contradicts-sheet"),
        new("dose-above-maximum", Severity.Stop, "/compound/sheet/doses",
        Sheet(s => s with { MaximumDoses = 0, Doses = [new(2 + Zero, 34 + Zero, 2)] }), "gel-time-extrapolated"),
        new("dose-after-hardener", Severity.Stop, "/dose/added", pour => pour with { IntendedDose = new(null, DoseMoment.AfterHardener) }),
        new("dose-after-hardener", Severity.Stop, "/compound/sheet/mixingOrder",
        Sheet(s => s with { MixingOrder = [MixPart.Resin, MixPart.Hardener, MixPart.Dose] })),
    ];

    private static IEnumerable<FindingCase> DoseAndGel =>
    [
        new("sheet-silent", Severity.Unknown, "/compound/sheet/doses", Sheet(s => s with { Doses = [] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/gelTimes", Sheet(s => s with { GelTimes = [] })),
        new("dose-unknown", Severity.Unknown, Steel, Sheet(s => s with { Doses = [new(2 + Zero, 15 + Zero, 0)] })),
        new("dose-uncertain", Severity.Caution, Steel, At(c => c with { AirK = 8 + Zero, SteelK = 7.5 + Zero, UncertaintyK = 1 })),
        new("dose-edge", Severity.Caution, Steel, At(c => c with { AirK = 8 + Zero, SteelK = 6 + Zero })),
        new("gel-time-unknown", Severity.Unknown, "/compound/sheet/gelTimes", Sheet(s => s with { GelTimes = [new(20 + Zero, 1, 780)] })),
        new("gel-time-extrapolated", Severity.Caution, Air,
        Sheet(s => s with { GelTimes = [new(5 + Zero, 0, 3960), new(21 + Zero, 0, 1380)] })),
        new("gel-time-extrapolated", Severity.Caution, Compound,
        Sheet(s => s with { GelTimes = [new(21 + Zero, 0, 1380), new(35 + Zero, 0, 600)] })),
        new("gel-time-from-one-point", Severity.Caution, "/compound/sheet/gelTimes",
        Sheet(s => s with { GelTimes = [new(20 + Zero, 0, 1440)] })),
    ];

    private static IEnumerable<FindingCase> Time =>
    [
        new("sheet-silent", Severity.Unknown, "/compound/sheet/potLife", Sheet(s => s with { PotLife = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/mixing", Sheet(s => s with { MixingTimeS = null })),
        new("pour-time-missing", Severity.Unknown, "/crew/pourTime", pour => pour with { PourTimeS = null }),
        new("mix-larger-than-measured", Severity.Caution, "/compound/sheet/potLifeVolume", Sheet(s => s with { PotLifeVolumeM3 = 250e-6 })),
        new("pot-life-too-short", Severity.Stop, "/crew/pourTime", pour => pour with { PourTimeS = 1200 }),
        new("stock-does-not-divide", Severity.Caution, "/stock", pour => pour with
        {
            // One small kit would fill three baskets, but a basket at a time is all that the pot life allows.
            Ends = [GoodPour.End("A", 3)], PourTimeS = 500, Stock = [GoodPour.Lot("A", "small", 1, "2026-12-31")],
        }),
    ];

    private static IEnumerable<FindingCase> Kits =>
    [
        new("lot-expired", Severity.Stop, "/stock/0/expiresOn", Stock(GoodPour.Lot("A", "small", 4, "2026-03-11"))),
        new("lot-expired", Severity.Note, "/stock/0/expiresOn",
            Stock(GoodPour.Lot("A", "small", 4, "2026-03-11"), GoodPour.Lot("B", "small", 4, "2026-03-12"))),
        new("lot-expired", Severity.Note, "/stock/0/madeOn",
            Stock(new StockLot("A", "small", 4, null, new(2025, 1, 11)), GoodPour.Lot("B", "small", 4, "2026-12-31"))),
        new("lot-expiry-missing", Severity.Unknown, "/stock/0/expiresOn", Stock(GoodPour.Lot("A", "small", 4, null))),
        new("lot-expiry-missing", Severity.Note, "/stock/0/expiresOn",
            Stock(GoodPour.Lot("A", "small", 4, null), GoodPour.Lot("B", "small", 4, "2026-12-31"))),
        new("expiry-beyond-shelf-life", Severity.Caution, "/stock/0/expiresOn",
            Stock(GoodPour.Lot("A", "small", 4, "2027-03-02") with { MadeOn = new(2026, 1, 1) })),
        new("stock-short", Severity.Caution, "/stock",
        pour => Stock(GoodPour.Lot("A", "small", 1, "2026-12-31"))(pour with { Ends = [GoodPour.End("A", 9)] })),
        new("budget-spent", Severity.Unknown, "/ends", pour => pour) { Steps = 10 },
        new("compound-demonstration", Severity.Caution, "/compound", Sheet(s => s with { Demonstration = true })),
    ];

    private static IEnumerable<FindingCase> RopeAndSocket =>
    [
        new("rope-area-unknown", Severity.Unknown, Rope + "/construction",
            End(r => r with { Construction = "locked coil", WireCount = 100, OuterWireDiameterM = .001 }), "facts-not-stated"),
        new("wire-fit-unknown", Severity.Unknown, Rope + "/wireCount",
        End(r => r with { Construction = "locked coil", MetallicAreaM2 = 184e-6 }), "facts-not-stated"),
        new("wires-do-not-fit", Severity.Stop, Basket, End(r => r with { MetallicAreaM2 = 380e-6 })),
        new("fit-depends-on-tolerance", Severity.Caution, Basket + "/tolerance", End(r => r with { MetallicAreaM2 = 370e-6 })),
        new("fit-depends-on-tolerance", Severity.Caution, Basket + "/tolerance",
        End(r => r with { DiameterM = .0226, MetallicAreaM2 = 184e-6, CertifiedBreakingForceN = 252e3 }), "basket-short"),
        new("rope-loose", Severity.Note, Basket + "/smallEndDiameter", End(r => r with { DiameterM = .011 }), "vent-small-basket"),
        new("rope-identity-missing", Severity.Unknown, Rope + "/construction",
            End(r => r with { Construction = null, MetallicAreaM2 = 184e-6, WireCount = 265, OuterWireDiameterM = .001 })),
        new("rope-identity-missing", Severity.Unknown, Rope + "/core",
            End(r => r with { Core = RopeCore.Unknown, MetallicAreaM2 = 184e-6, WireCount = 265, CertifiedBreakingForceN = 252e3 })),
        // One fact, one finding: area, wires and strength follow from what the rope is.
        new("rope-identity-missing", Severity.Unknown, Rope + "/core", End(r => r with { Core = RopeCore.Unknown })),
        new("rope-identity-missing", Severity.Unknown, Rope + "/construction", End(r => r with { Construction = null })),
        new("socket-weaker-than-rope", Severity.Stop, "/ends/0/socket/breakingForce",
        pour => pour with { Ends = [pour.Ends[0] with { SocketBreakingForceN = 252e3 }] }),
        new("rope-does-not-enter", Severity.Stop, Basket + "/smallEndDiameter", Socket(b => b with { SmallEndDiameterM = .020 })),
        new("grade-above-ordinary", Severity.Caution, Rope + "/grade", End(r => r with { Grade = 2160 })),
        new("rope-fact-missing", Severity.Caution, Rope + "/grade", End(r => r with { Grade = null }), "facts-not-stated"),
        new("rope-fact-missing", Severity.Caution, Rope + "/finish", End(r => r with { Finish = WireFinish.Unknown })),
        new("stainless-rope", Severity.Caution, Rope + "/finish", End(r => r with { Finish = WireFinish.Stainless })),
        new("basket-short", Severity.Note, Basket + "/length", Socket(b => b with { LengthM = .099 })),
        new("cone-angle-unusual", Severity.Note, Basket, Socket(b => b with { LengthM = .300 })),
        new("cone-angle-unusual", Severity.Note, Basket, Socket(b => b with { LargeEndDiameterM = .060 })),
    ];

    private static IEnumerable<FindingCase> Bounds =>
    [
        .. FitCases.All.Select(one =>
        new FindingCase(one.Code, one.Severity, "/ends/0" + one.Pointer, one.In, [.. one.Besides, .. one.BesidesInAPlan])),
    ];

    private static IEnumerable<FindingCase> Vapour =>
    [
        new("vapour-above-own-limit", Severity.Stop, "/conditions/airLimits/shortTerm",
            At(c => c with { AirLimits = new(.01e-6, null, "rule 4 of the yard") })),
        new("vapour-above-own-limit", Severity.Caution, "/conditions/airLimits/timeWeighted",
            At(c => c with { MixingFactor = null, Room = new(40, 20.0 / 3600), AirLimits = new(null, .5e-6, null) })),
        new("vapour-above-law", Severity.Stop, Room, At(c => c with { Room = new(5, 0) })),
        new("vapour-above-recommended", Severity.Caution, Room, At(c => c with { Room = new(8, 0) })),
        new("room-missing", Severity.Unknown, Room, At(c => c with { Room = null })),
        new("vapour-not-computed", Severity.Unknown, "/compound/sheet/vapour", Sheet(s => s with { Vapour = null })),
        new("vapour-not-computed", Severity.Unknown, "/compound/sheet/vapour", Sheet(s => s with { Vapour = new("acetone", .1) })),
        new("vapour-may-exceed-law", Severity.Caution, Room, At(c => c with { MixingFactor = null, Room = new(1, 60.0 / 3600) })),
        new("vapour-above-stricter-law", Severity.Caution, Room, At(c => c with { Room = new(8, 0), Jurisdiction = null })),
        new("ignition-source", Severity.Stop, "/conditions/ignitionSource", At(c => c with { IgnitionSource = Fact.Yes })),
        new("ignition-source", Severity.Unknown, "/conditions/ignitionSource",
            pour => At(c => c with { IgnitionSource = Fact.Yes })(Sheet(s => s with { Vapour = null })(pour)), "vapour-not-computed"),
        new("confined-space", Severity.Caution, "/conditions/place", At(c => c with { Place = PourPlace.Confined })),
    ];

    private static Func<PourPlanInput, PourPlanInput> At(Func<PourConditions, PourConditions> change) =>
        pour => pour with { Conditions = change(pour.Conditions) };

    private static Func<PourPlanInput, PourPlanInput> Sheet(Func<CompoundSheet, CompoundSheet> change) =>
        pour => pour with { Compound = change(pour.Compound) };

    private static Func<PourPlanInput, PourPlanInput> Stock(params StockLot[] lots) => pour => pour with { Stock = lots };

    private static Func<PourPlanInput, PourPlanInput> End(Func<Rope, Rope> change) =>
        pour => pour with { Ends = [pour.Ends[0] with { Rope = change(pour.Ends[0].Rope) }] };

    private static Func<PourPlanInput, PourPlanInput> Socket(Func<Basket, Basket> change) =>
        pour => pour with { Ends = [pour.Ends[0] with { Basket = change(pour.Ends[0].Basket) }] };
}
