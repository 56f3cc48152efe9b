using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Releases;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Curing;
using CalcService.Engine.Tests.Findings;
using static CalcService.Engine.Tests.Audits.GoodRecord;

namespace CalcService.Engine.Tests.Audits;

/// <summary>A record with one thing wrong, the finding that has to say so, and the check that has to show it.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Check">The check.</param>
/// <param name="Change">What is wrong with the record.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record AuditCase(
    string Code, Severity Severity, string Pointer, string Check, Func<AuditInput, AuditInput> Change, params IReadOnlyList<string> Besides)
    : IFindingCase
{
    public long Steps { get; init; } = Budget.DefaultSteps;

    public Outcome<AuditResult> Audit() => GoodRecord.Audit(Change(Input), steps: Steps);
}

/// <summary>At least one record for each finding and severity.</summary>
public static class AuditCases
{
    public static IReadOnlyList<AuditCase> All { get; } = [.. Materials, .. Day, .. Cure, .. Load, .. Sheets, .. AuditGaps.All];

    /// <summary>Loaded so late that no release comes into question.</summary>
    private static AuditInput Late(AuditInput input) =>
        input with { Times = input.Times with { ReleasedAt = After(2000), ProofAt = After(2010), InServiceAt = After(2020) } };

    /// <summary>Two hours colder than it cures at, then warm again.</summary>
    private static AuditInput ColdNight(AuditInput input) =>
        Late(Sheeted(sheet => sheet with { LowestCureK = 8 + Zero })(input)) with { Readings = Air((0, 20), (.6, 20), (.7, 7), (2.7, 7),
        (2.8, 20), (48, 20)) };

    private static AuditInput Coupled(AuditInput input) => input with
    {
        ThermalModel = ThermalModel.Coupled,
        Compound = input.Compound with
        {
            GelTimes = GoodCure.Coupled.Compound.GelTimes, Reaction = GoodCure.Coupled.Compound.Reaction, SpecificHeatJPerKgK = 1250,
                ConductivityWPerMK = .6, DensityKgPerM3 = 1750,
        },
    };

    private static IEnumerable<AuditCase> Materials =>
    [
        new("lot-expired-when-mixed", Severity.Stop, "/mix/kits/0/expiresOn", "lot-dates",
            Kit(lot => lot with { ExpiresOn = new(2026, 3, 11) })),
        new("lot-expired-when-mixed", Severity.Stop, "/mix/kits/0/hardenerExpiresOn", "lot-dates",
        Kit(lot => lot with { HardenerExpiresOn = new(2026, 3, 11) })),
        // Made 15 months before, with a shelf life of 14 months.
        new("lot-expired-when-mixed", Severity.Stop, "/mix/kits/0/madeOn", "lot-dates",
            Kit(lot => lot with { ExpiresOn = null, MadeOn = new(2024, 12, 12) })),
        new("lot-unfit-when-mixed", Severity.Stop, "/mix/kits/0/state", "lot-state", Kit(lot => lot with { State = LotState.Opened })),
        new("lot-unfit-when-mixed", Severity.Stop, "/mix/kits/0/state", "lot-state", Kit(lot => lot with { State = LotState.Damaged })),
        new("lot-unfit-when-mixed", Severity.Stop, "/mix/kits/0/quarantined", "lot-state", Kit(lot => lot with { Quarantined = Fact.Yes })),
        new("lot-unfit-when-mixed", Severity.Stop, "/mix/kits/0/storage/highest", "lot-state",
            input => Kit(lot =>
            lot with { Storage = new(280, 320, Fact.Yes) })(Sheeted(sheet => sheet with { Storage = new(275, 300) })(input))),
        new("recorded-volume-off", Severity.Caution, "/mix/volume", "volume", Mixed(mix => mix with { VolumeM3 = 50e-6 })),
        new("recorded-volume-off", Severity.Caution, "/mix/volume", "volume", Mixed(mix => mix with { VolumeM3 = 100e-6 })),
        // Four baskets of up to 79 cm³ and a tenth more need 347 cm³, five of at least 70 cm³ can't be full with 300.
        new("kits-short", Severity.Caution, "/mix/kits", "kits", Mixed(mix => mix with { Baskets = 4 })),
        new("kits-short", Severity.Stop, "/mix/kits", "kits", Mixed(mix => mix with { Baskets = 5 })),
        new("recorded-volume-off", Severity.Unknown, "/mix/volume", "volume", Mixed(mix => mix with { VolumeM3 = 0 })),
        new("recorded-volume-off", Severity.Unknown, "/mix/volume", "volume", Mixed(mix => mix with { VolumeM3 = 150e-6 })),
        // Made the day after it was mixed.
        new("record-times-contradict", Severity.Unknown, "/mix/kits/0/madeOn", "lot-dates",
            Kit(lot => lot with { MadeOn = new(2026, 3, 13) })),
        new("readings-old", Severity.Caution, "/times/readAt", "",
        At(times => times with { ReadAt = After(-600), PreparedAt = After(-610) })),
        new("broom-dried-long-ago", Severity.Caution, "/times/preparedAt", "", At(times => times with { PreparedAt = After(-60 * 72) })),
        new("peak-not-judged", Severity.Caution, "/compound/sheet/peakLimit", "", Sheeted(sheet => sheet with { PeakLimitK = 80 + Zero })),
        new("sheet-old", Severity.Caution, "/compound/sheet/issuedOn", "", Sheeted(sheet => sheet with { IssuedOn = new(2021, 1, 1) })),
        new("stainless-rope", Severity.Caution, "/rope/finish", "",
        input => input with { Rope = input.Rope! with { Finish = WireFinish.Stainless } }),
        new("grade-above-ordinary", Severity.Caution, "/rope/grade", "",
        input => input with { Rope = input.Rope! with { Grade = 2160, CertifiedBreakingForceN = 300e3 } }),
        new("used-rope", Severity.Caution, "/rope/used", "", input => input with { Rope = input.Rope! with { IsUsed = true } }),
        new("geometry-from-memory", Severity.Caution, "/socket/basket/sizesFrom", "",
        Socketed(socket => socket with { SizesFrom = SizesFrom.Memory })),
        new("dose-after-hardener", Severity.Stop, "/compound/sheet/mixingOrder", "",
            Sheeted(sheet => sheet with { MixingOrder = [MixPart.Resin, MixPart.Hardener, MixPart.Dose] })),
        new("outside-pouring-range", Severity.Stop, "/rope/temperature", "pouring-range",
        input => input with { Rope = input.Rope! with { TemperatureK = 40 + Zero } }),
        new("dose-after-hardener", Severity.Stop, "/mix/doseAdded", "dose-moment",
        Mixed(mix => mix with { DoseAdded = DoseMoment.AfterHardener })),
        new("poured-near-ignition", Severity.Caution, "/conditions/ignitionSource", "ignition-source",
        Read(read => read with { IgnitionSource = Fact.Yes })),
        new("ignition-source-not-recorded", Severity.Note, "/conditions/ignitionSource", "",
        Read(read => read with { IgnitionSource = Fact.Unknown })),
        new("socket-metal-unfit", Severity.Stop, "/socket/material/kind", "socket-metal",
        Socketed(socket => socket with { Metal = SocketMetal.GreyIron })),
        // Whatever else of the end isn't known.
        new("socket-metal-unfit", Severity.Stop, "/socket/material/kind", "socket-metal",
            Socketed(socket => socket with { Metal = SocketMetal.GreyIron, Basket = null }),
            "record-fact-missing"),
        new("socket-metal-unfit", Severity.Unknown, "/socket/material/kind", "socket-metal",
        Socketed(socket => socket with { Metal = SocketMetal.DuctileIron })),
        new("rope-does-not-enter", Severity.Stop, "/socket/basket/smallEndDiameter", "fit",
        input => input with { Rope = input.Rope! with { MeasuredDiameterM = .023 } }, "rope-thick"),
        new("fit-depends-on-tolerance", Severity.Caution, "/socket/basket/tolerance", "",
        input => input with { Rope = input.Rope! with { MeasuredDiameterM = .0226 } }, "rope-thick"),
        new("socket-weaker-than-rope", Severity.Stop, "/socket/breakingForce", "fit",
        Socketed(socket => socket with { BreakingForceN = 252e3 })),
        new("wires-do-not-fit", Severity.Stop, "/socket/basket", "fit",
        input => input with { Rope = input.Rope! with { MetallicAreaM2 = 390e-6 } },
            "recorded-volume-off"),
        new("rope-loose", Severity.Note, "/socket/basket/smallEndDiameter", "",
            Socketed(socket => socket with { Basket = socket.Basket! with { SmallEndDiameterM = .0405 }, OuterAtSmallEndM = .065 }),
            "recorded-volume-off", "kits-short", "seating-little"),
        new("wire-fit-unknown", Severity.Unknown, "/rope/wireCount", "fit",
        input => input with { Rope = input.Rope! with { Construction = "locked", MetallicAreaM2 = 184e-6 } }),
    ];

    private static IEnumerable<AuditCase> Day =>
    [
        new("outside-pouring-range", Severity.Stop, "/conditions/steelTemperature", "pouring-range",
            Read(read => read with { SteelK = 35 + Zero })),
        // Air of 20 °C and 95 % has its dew point at 19.2 °C.
        new("steel-near-dew-point", Severity.Caution, "/conditions/steelTemperature", "dew-point",
            Read(read => read with { RelativeHumidity = .95 })),
        new("steel-at-dew-point", Severity.Stop, "/conditions/steelTemperature", "dew-point",
        Read(read => read with { RelativeHumidity = 1 })),
        new("dose-contradicts-sheet", Severity.Stop, "/mix/dosesPerKit", "dose",
        Mixed(mix => mix with { DosesPerKit = 2, DoseAdded = DoseMoment.BeforeHardener }), "loaded-before-cured", "poured-beyond-pot-life"),
        new("record-times-contradict", Severity.Unknown, "/times/mixedAt", "time-order", At(times => times with { PreparedAt = After(5) })),
        new("record-times-contradict", Severity.Unknown, "/times/mixedAt", "time-order", At(times => times with { ReadAt = After(5) })),
        new("record-times-contradict", Severity.Unknown, "/times/proofAt", "time-order",
        At(times => times with { ReleasedAt = After(160) })),
        new("record-time-after-audit", Severity.Unknown, "/times/inServiceAt", "time-of-audit",
        At(times => times with { InServiceAt = After(60 * 24 * 9) })),
        new("look-failed", Severity.Stop, "/looks/seal", "look-seal", Looked(looks => looks with { Seal = LookResult.Fail })),
        new("qualification-expired", Severity.Caution, "/people/1/qualifiedUntil", "qualifications",
        Person(1, person => person with { QualifiedUntil = new(2026, 3, 11) })),
    ];

    private static IEnumerable<AuditCase> Cure =>
    [
        // The record itself says so, with no air at all, with air that ends too soon, and with a gel after that.
        new("before-seen-gel", Severity.Stop, "/times/movedAt", "moved",
            input => At(times => times with { MovedAt = After(20) })(Read(read => read with { AirSeries = [] })(input)),
            "record-fact-missing"),
        new("before-seen-gel", Severity.Stop, "/times/movedAt", "released-cured",
            input => At(times => times with { GelAt = After(1600) })(input with { Readings = Air((-.5, 20), (24, 20)) }),
            "cure-not-followed"),

        new("poured-beyond-pot-life", Severity.Stop, "/times/pouredAt", "pot-life", At(times => times with { PouredAt = After(19) })),
        // Measured at 5 and 19 °C; poured at 20 °C.
        new("poured-beyond-pot-life", Severity.Unknown, "/times/pouredAt", "pot-life",
            input => At(times => times with { PouredAt = After(19) })(
            Sheeted(sheet => sheet with { GelTimes = [new(5 + Zero, 0, 66 * 60), new(19 + Zero, 0, 24.9 * 60)] })(input))),
        // Seen gelled in its vessel after 20 min: three quarters of that were good.
        new("poured-beyond-pot-life", Severity.Stop, "/times/pouredAt", "pot-life",
            input => At(times => times with { PouredAt = After(16), GelAt = After(20) })(input) with { GelSeenIn = GelPlace.Vessel },
            "gel-seen-in-cup"),
        new("dose-above-maximum", Severity.Stop, "/mix/dosesPerKit", "dose",
        input => Mixed(mix =>
        mix with { DosesPerKit = 2, DoseAdded = DoseMoment.BeforeHardener })(Sheeted(sheet => sheet with { MaximumDoses = 1 })(input)),
            "dose-contradicts-sheet", "loaded-before-cured", "poured-beyond-pot-life"),
        // 24 min were expected; out of family beyond a factor of exp(3·√(.10² + .05²)) = 1.4.
        new("gel-out-of-family", Severity.Caution, "/times/gelAt", "gel",
            At(times =>
            times with { GelAt = After(35), StillSoftAt = After(33), MovedAt = After(60), ReleasedAt = After(200), ProofAt = After(210) })),
        new("gel-out-of-family", Severity.Caution, "/times/gelAt", "gel", At(times => times with { GelAt = After(16) })),
        new("gel-seen-in-cup", Severity.Caution, "/gelSeenIn", "", input => input with { GelSeenIn = GelPlace.Cup }),
        new("gel-place-unknown", Severity.Caution, "/gelSeenIn", "", input => input with { GelSeenIn = GelPlace.Unknown }),
        new("moved-before-gel", Severity.Stop, "/times/movedAt", "moved", At(times => times with { MovedAt = After(23) })),
        new("moved-before-gel", Severity.Stop, "/times/movedAt", "moved",
            input => Sheeted(sheet => sheet with { MinimumHoldS = 20 * 60 })(input)),
        new("loaded-before-cured", Severity.Stop, "/times/releasedAt", "released-cured",
        At(times => times with { ReleasedAt = After(113) })),
        new("loaded-before-cured", Severity.Stop, "/times/releasedAt", "proof-cured",
        At(times => times with { ReleasedAt = After(100), ProofAt = After(110) })),
        // Released when the sheet's own shortest time had passed; the cold night was read beyond its rows.
        new("loaded-before-cured", Severity.Unknown, "/times/releasedAt", "released-cured",
            input => input with { Readings = Air((0, 20), (.5, 20), (1, 5), (60, 5)) }),
        new("below-lowest-cure", Severity.Unknown, "/conditions/air", "", ColdNight, "loaded-before-cured"),
        new("below-lowest-cure", Severity.Caution, "/conditions/air", "",
        input => Read(read => read with { SteelSeries = [new(After(1500), 12 + Zero)] })(ColdNight(input))),
        new("full-strength-extrapolated", Severity.Caution, "/conditions/air", "",
        input => Late(input) with { Readings = Air((0, 20), (.5, 20), (.7, 4), (60, 4)) }),
        new("full-strength-of-other-dose", Severity.Caution, "/compound/sheet/fullStrength", "",
        Sheeted(sheet => sheet with { FullStrength = [sheet.FullStrength[0] with { Doses = [2] }] })),
        new("gel-before-pour-ends", Severity.Stop, "/times/gelAt", "gel-after-pour", At(times => times with { GelAt = After(11) }),
        "gel-out-of-family"),
        new("release-by-own-heat", Severity.Caution, "/compound/sheet/fullStrength", "", input =>
            Sheeted(sheet => sheet with { FullStrength = [sheet.FullStrength[0] with { IsIsothermal = true }] })(Coupled(input))),
        new("socket-wall-missing", Severity.Unknown, "/socket/outerDiameter", "",
        input => Socketed(socket => socket with { OuterAtMouthM = null })(Coupled(input))),
        new("cure-budget-spent", Severity.Unknown, "/socket/basket", "", Coupled, "seating-not-computed") { Steps = 2000 },
        new("record-fact-missing", Severity.Caution, "/times/gelAt", "",
        input => At(times => times with { GelAt = null })(input) with { Purpose = Purpose.Plan }),
        new("cone-steel-unknown", Severity.Unknown, "/rope/construction", "",
        input => Coupled(input) with { Rope = input.Rope! with { Construction = "locked", MetallicAreaM2 = null } },
            "seating-not-computed", "wire-fit-unknown"),
        new("cure-not-followed", Severity.Unknown, "/conditions/air/series", "released-cured",
        input => input with { Readings = Air((0, 20), (1, 20)) }),
        new("cure-not-followed", Severity.Unknown, "/conditions/air/series", "moved",
        input => input with { Readings = Air((0, 20), (.2, 20)), GelSeenIn = GelPlace.Mouth }),
        new("air-during-cure-assumed", Severity.Caution, "/conditions/air", "",
        Read(read => read with { AirSeries = [], ConstantAirK = 20 + Zero })),
        new("hardness-low", Severity.Stop, "/hardness/value", "hardness",
        input => input with { Hardness = input.Hardness with { Value = 39 } }),
        new("hardness-not-at-lip", Severity.Caution, "/hardness/readAt", "hardness-place",
        input => input with { Hardness = input.Hardness with { ReadAt = HardnessPlace.Mouth } }),
    ];

    private static IEnumerable<AuditCase> Load =>
    [
        // DOE-STD-1090-96: -5 %, +0 %.
        new("test-load-short", Severity.Stop, "/proof/load", "proof-load", Loaded(proof => proof with { LoadN = 94.9e3 })),
        new("test-load-over", Severity.Caution, "/proof/load", "proof-load", Loaded(proof => proof with { LoadN = 100.1e3 })),
        new("wire-slipped", Severity.Stop, "/proof/wireSlip", "wire-slip", Loaded(proof => proof with { WireSlip = true })),
        new("creep-under-hold", Severity.Stop, "/proof/creepUnderHold", "creep", Loaded(proof => proof with { Creep = true })),
        new("cracked-under-proof", Severity.Stop, "/proof/cracks", "cracks", Loaded(proof => proof with { Cracks = true })),
        new("seated-askew", Severity.Stop, "/proof/asymmetry", "asymmetry", Loaded(proof => proof with { Asymmetry = true })),
        // Nobody asked for a proof load, and yet one was put on.
        new("cracked-under-proof", Severity.Stop, "/proof/cracks", "cracks",
            Loaded(proof => proof with { IsAsked = false, AskedN = null, Cracks = true })),
        new("look-failed", Severity.Stop, "/looks/afterLoad", "look-after-load",
            input => Looked(looks =>
            looks with { AfterLoad = LookResult.Fail })(Loaded(proof => proof with { IsAsked = false, AskedN = null })(input))),
        new("proof-below-rated-load", Severity.Unknown, "/proof/askedLoad", "proof-load", Loaded(proof => proof with { RatedN = 101e3 })),
        new("seating-not-read", Severity.Caution, "/proof/seating", "", Loaded(proof => proof with { SeatingM = null })),
        new("proof-above-socket-rating", Severity.Stop, "/socket/proofRating", "proof-rating",
        Socketed(socket => socket with { ProofRatingN = 97e3 })),
        // Half of 252 kN are 126 kN.
        new("proof-above-half-breaking", Severity.Caution, "/proof/load", "half-of-breaking-force",
            Loaded(proof => proof with { AskedN = 127e3, LoadN = 127e3 })),
        new("proof-above-half-breaking", Severity.Caution, "/proof/askedLoad", "half-of-breaking-force",
        Loaded(proof => proof with { AskedN = 127e3, LoadN = 125e3 })),
        new("proof-at-breaking-force", Severity.Stop, "/proof/load", "half-of-breaking-force",
            input => Loaded(proof =>
            proof with { AskedN = 300e3, LoadN = 300e3,
            SeatingM = .0024 })(Socketed(socket => socket with { ProofRatingN = 400e3 })(input))),
        new("seating-contradicts", Severity.Unknown, "/proof/seating", "seating", Loaded(proof => proof with { SeatingM = -.0001 })),
        // Thicker than the rope of 20 mm.
        new("seated-through", Severity.Stop, "/proof/seating", "seating",
            Loaded(proof => proof with { SeatingM = .0201, SeatingReadAt = SeatingPlace.Unknown })),
        new("basket-no-cone", Severity.Stop, "/socket/basket", "fit",
        Socketed(socket => socket with { Basket = socket.Basket! with { LargeEndDiameterM = .026 } }), "recorded-volume-off"),
        // Common band at 40 % of the breaking force: 0.9 to 1.7 mm.
        new("seating-little", Severity.Caution, "/proof/seating", "seating", Loaded(proof => proof with { SeatingM = .0003 })),
        new("seating-much", Severity.Caution, "/proof/seating", "seating", Loaded(proof => proof with { SeatingM = .003 })),
        new("seating-not-computed", Severity.Caution, "/compound/sheet/cured", "", Sheeted(sheet => sheet with { Cured = new() })),
        new("seating-not-comparable", Severity.Caution, "/proof/seatingReadAt", "",
        Loaded(proof => proof with { SeatingReadAt = SeatingPlace.Unknown })),
        new("seating-not-comparable", Severity.Caution, "/proof/readUnderLoad", "", Loaded(proof => proof with { ReadUnderLoad = false })),
    ];

    private static IEnumerable<AuditCase> Sheets =>
    [
        new("compound-demonstration", Severity.Caution, "/compound", "", Sheeted(sheet => sheet with { Demonstration = true })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/pouring", "pouring-range", Sheeted(sheet => sheet with { Pouring = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/potLife", "pot-life", Sheeted(sheet => sheet with { PotLife = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/doses", "dose", Sheeted(sheet => sheet with { Doses = [] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/gelTimes", "gel", Sheeted(sheet => sheet with { GelTimes = [] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/fullStrength", "gel", Sheeted(sheet => sheet with { FullStrength = [] })),
        new("dose-unknown", Severity.Unknown, "/conditions/steelTemperature", "dose",
        Sheeted(sheet => sheet with { Doses = [new(2 + Zero, 7 + Zero, 2)] })),
        new("gel-time-unknown", Severity.Unknown, "/compound/sheet/gelTimes", "gel",
        Sheeted(sheet => sheet with { GelTimes = [.. sheet.GelTimes.Where(row => row.Doses != 0)] })),
        new("gel-time-from-one-point", Severity.Caution, "/compound/sheet/gelTimes", "",
            Sheeted(sheet => sheet with { GelTimes = [.. sheet.GelTimes.Where(row => row.TemperatureK == 20 + Zero)] })),
    ];
}
