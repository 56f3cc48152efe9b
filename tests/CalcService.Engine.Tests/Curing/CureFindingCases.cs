using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Curing;

/// <summary>A cure with one thing wrong, and the finding that has to say so.</summary>
public sealed record CureFindingCase(
    string Code, Severity Severity, string Pointer, Func<CureScheduleInput, CureScheduleInput> Change, params IReadOnlyList<string> Besides)
    : IFindingCase
{
    public long Steps { get; init; } = Budget.DefaultSteps;

    public Outcome<CureScheduleResult> Schedule() => GoodCure.Schedule(Change(GoodCure.Input), steps: Steps);
}

/// <summary>At least one cure for each finding and severity that a schedule can raise.</summary>
public static class CureFindingCases
{
    private const double Zero = GoodCure.Zero;
    private const string Air = "/conditions/air", Series = "/conditions/air/series", Steel = "/conditions/steelTemperature",
        Compound = "/conditions/compoundTemperature";

    public static IReadOnlyList<CureFindingCase> All { get; } = [.. Sheets, .. Readings, .. Forecast, .. Observed, .. Heat, .. Shops];

    private static IEnumerable<CureFindingCase> Sheets =>
    [
        new("facts-not-stated", Severity.Unknown, "/ends/0/socket/material/kind", OfUnknownMetal),
        new("facts-not-stated", Severity.Caution, "/ends/0/socket/material/kind",
        cure => OfUnknownMetal(cure) with { Purpose = Purpose.Plan }),
        new("compound-demonstration", Severity.Caution, "/compound", Sheet(s => s with { Demonstration = true })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/gelTimes", Sheet(s => s with { GelTimes = [] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/fullStrength", Sheet(s => s with { FullStrength = [] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/pouring", Sheet(s => s with { Pouring = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/lowestCure", Sheet(s => s with { Pouring = null, LowestCureK = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/doses",
        cure => Sheet(s => s with { Doses = [] })(cure) with { Doses = null }),
        new("dose-unknown", Severity.Unknown, Steel,
        cure => Sheet(s => s with { Doses = [new(2 + Zero, 15 + Zero, 0)] })(cure) with { Doses = null }),
        new("gel-time-unknown", Severity.Unknown, "/compound/sheet/gelTimes", Sheet(s => s with { GelTimes = [new(20 + Zero, 1, 780)] })),
        new("gel-time-from-one-point", Severity.Caution, "/compound/sheet/gelTimes",
        Sheet(s => s with { GelTimes = [new(20 + Zero, 0, 1440)] })),
        new("gel-time-extrapolated", Severity.Caution, Air,
        Sheet(s => s with { GelTimes = [new(5 + Zero, 0, 3960), new(19 + Zero, 0, 1380)] })),
        new("gel-time-extrapolated", Severity.Caution, Steel, At(c => c with { SteelK = 36 + Zero }), "outside-pouring-range"),
        new("dose-above-maximum", Severity.Stop, "/compound/sheet/doses",
        cure => At(c => c with { SteelK = 6 + Zero })(Sheet(s => s with { MaximumDoses = 1 })(cure)) with { Doses = null },
            "steel-holds-cure-back"),
        new("dose-contradicts-sheet", Severity.Stop, "/doses", cure => cure with { Doses = 2 }),
        new("dose-after-hardener", Severity.Stop, "/compound/sheet/mixingOrder",
        Sheet(s => s with { MixingOrder = [MixPart.Resin, MixPart.Hardener, MixPart.Dose] })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/potLife", Sheet(s => s with { PotLife = null })),
        new("outside-pouring-range", Severity.Stop, "/ends/0/rope/temperature",
            cure => cure with { Ends = [cure.Ends[0] with { Rope = cure.Ends[0].Rope with { TemperatureK = 40 + Zero } }] }),
        new("outside-pouring-range", Severity.Stop, "/ends/0/socket/temperature/value",
        cure => cure with { Ends = [cure.Ends[0] with { SocketK = 40 + Zero }] }),
    ];

    private static IEnumerable<CureFindingCase> Readings =>
    [
        new("reading-missing", Severity.Unknown, Air, At(c => c with { ConstantAirK = null })),
        new("reading-missing", Severity.Unknown, Steel, At(c => c with { SteelK = null })),
        new("reading-missing", Severity.Unknown, Compound, At(c => c with { CompoundK = null })),
        new("outside-pouring-range", Severity.Stop, Air, At(c => c with { ConstantAirK = 34.5 + Zero })),
        new("outside-pouring-range", Severity.Stop, Steel, At(c => c with { SteelK = 34.5 + Zero })),
        new("outside-pouring-range", Severity.Stop, Compound, At(c => c with { CompoundK = 34.5 + Zero })),
        new("steel-holds-cure-back", Severity.Caution, Steel, At(c => c with { SteelK = 12 + Zero })),
    ];

    private static IEnumerable<CureFindingCase> Forecast =>
    [
        new("forecast-misses-mixing", Severity.Unknown, Series, _ => GoodCure.Through((.1, 20), (9, 20))),
        new("forecast-misses-mixing", Severity.Unknown, Series,
        _ => GoodCure.Coupled with { Conditions = GoodCure.Through((-1, 20), (0, 20)).Conditions }),
        new("forecast-too-short", Severity.Unknown, Series, _ => GoodCure.Through((0, 20), (1, 20))),
        new("gel-not-reached", Severity.Unknown, Series, _ => GoodCure.Through((0, 20), (.2, 20))),
        new("full-strength-not-reached", Severity.Unknown, Air, Sheet(s => s with { FullStrength = [new(20 + Zero, 720 * 3600)] })),
        new("forecast-leaves-pouring-range", Severity.Caution, Series, _ => GoodCure.Through((0, 33.9), (.05, 34.9), (9, 34.9))),
        new("below-lowest-cure", Severity.Unknown, Air, Sheet(s => s with { LowestCureK = 21 + Zero }), "full-strength-not-reached"),
        new("below-lowest-cure", Severity.Unknown, Steel,
        cure => At(c => c with { SteelK = 7 + Zero })(Sheet(s => s with { LowestCureK = 8 + Zero })(cure)),
            "full-strength-not-reached"),
        new("below-lowest-cure", Severity.Caution, Air,
        cure => ColdNight(cure) with { Conditions = ColdNight(cure)
        .Conditions with { SteelSeries = [new(GoodCure.After(1500), 12 + Zero)] } }, "night-delays-cure"),
        new("full-strength-extrapolated", Severity.Caution, Air, _ => GoodCure.Through((0, 20), (.5, 20), (.7, 4), (48, 4)),
        "night-delays-cure"),
        new("full-strength-of-other-dose", Severity.Caution, "/compound/sheet/fullStrength",
        Sheet(s => s with { FullStrength = [s.FullStrength[0] with { Doses = [2] }] })),
        new("release-by-own-heat", Severity.Caution, "/compound/sheet/fullStrength",
        _ => Sheet(s => s with { FullStrength = [s.FullStrength[0] with { IsIsothermal = true }] })(GoodCure.Coupled)),
        new("pour-time-not-stated", Severity.Caution, "/pourTime", cure => cure with { PourTimeS = null }),
        new("hardness-before-load", Severity.Note, "/compound/sheet/hardness", Sheet(s => s with { Hardness = new("indenter", 40) })),
        new("bore-not-clean", Severity.Stop, "/ends/0/socket/bore",
        cure => cure with { Ends = [cure.Ends[0] with { Bore = Engine.Sockets.BoreState.OldResin }] }),
        // Three quarters of 24 min, as the plan and the audit have it.
        new("poured-beyond-pot-life", Severity.Stop, "/pourTime", cure => cure with { PourTimeS = 19 * 60 }),
        // Read beyond the sheet's rows, and the cone was seen to gel when it should.
        new("poured-beyond-pot-life", Severity.Unknown, "/pourTime",
            cure => Seen(24.2,
            GelPlace.Cone)(Sheet(s => s with { GelTimes = [new(5 + Zero, 0, 3960), new(19 + Zero, 0, 1500)] })(cure)) with { PourTimeS =
            19 * 60 },
            "gel-time-extrapolated"),
        new("gel-before-pour-ends", Severity.Stop, "/pourTime", cure => cure with { PourTimeS = 1500 }),
        new("night-delays-cure", Severity.Caution, Series, _ => GoodCure.Through((0, 20), (2, 10), (24, 10))),
    ];

    private static IEnumerable<CureFindingCase> Observed =>
    [
        new("gel-out-of-family", Severity.Caution, "/observations/0/gelAt", Seen(40, GelPlace.Cone, softAt: 38)),
        new("gel-before-pour-ends", Severity.Stop, "/observations/0/gelAt", Seen(4.9, GelPlace.Mouth), "gel-out-of-family"),
        new("gel-out-of-family", Severity.Caution, "/observations/0/gelAt", Seen(15, GelPlace.Mouth)),
        new("gel-seen-in-cup", Severity.Caution, "/observations/0/seenIn", Seen(15, GelPlace.Cup)),
        new("gel-place-unknown", Severity.Caution, "/observations/0/seenIn", Seen(24, GelPlace.Unknown)),
    ];

    private static IEnumerable<CureFindingCase> Heat =>
    [
        new("cone-steel-unknown", Severity.Unknown, "/ends/0/rope/construction",
            _ => OneEnd(end => end with { Rope = end.Rope with { Construction = "locked coil" } })),
        new("wires-do-not-fit", Severity.Stop, "/ends/0/socket/basket",
        _ => OneEnd(end => end with { Rope = end.Rope with { MetallicAreaM2 = 390e-6 } })),
        new("socket-wall-missing", Severity.Unknown, "/ends/0/socket/outerDiameter", _ => OneEnd(end => end with { OuterAtMouthM = null })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/cured/density",
        _ => Sheet(s => s with { DensityKgPerM3 = null })(GoodCure.Coupled)),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/cured/specificHeat",
        _ => Sheet(s => s with { SpecificHeatJPerKgK = null })(GoodCure.Coupled)),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/cured/conductivity",
        _ => Sheet(s => s with { ConductivityWPerMK = null })(GoodCure.Coupled)),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/reaction", _ => Sheet(s => s with { Reaction = null })(GoodCure.Coupled)),
        new("peak-not-judged", Severity.Caution, "/compound/sheet/peakLimit", Sheet(s => s with { PeakLimitK = 80 + Zero })),
        new("peak-above-sheet", Severity.Stop, "/ends/0", _ => Sheet(s => s with { PeakLimitK = 20.1 + Zero })(GoodCure.Coupled)),
        new("peak-upper-estimate", Severity.Note, "/ends/0", _ => GoodCure.Thick, "rope-loose"),
        new("cure-budget-spent", Severity.Unknown, "/ends", _ => GoodCure.Coupled) { Steps = 2000 },
    ];

    private static readonly ShopInput Shop = new()
    {
        Shifts = [new(GoodCure.MixedAt, GoodCure.MixedAt.AddHours(2))],
        TaskTimes = new(600, 600, 600, 600),
    };

    private static IEnumerable<CureFindingCase> Shops =>
    [
        new("shop-does-not-finish", Severity.Unknown, "/shop/shifts", cure => cure with { Shop = Shop }),
        new("mix-and-pour-time-unknown", Severity.Unknown, "/pourTime",
        cure => Sheet(s => s with { MixingTimeS = null })(cure) with { Shop = Shop, PourTimeS = null }),
    ];

    /// <summary>Two hours colder than it cures at, then warm again.</summary>
    private static CureScheduleInput ColdNight(CureScheduleInput _) =>
        GoodCure.Through((0, 20), (.6, 20), (.7, 7), (2.7, 7), (2.8, 20),
        (48, 20)) with { Compound = GoodCure.Sheet with { LowestCureK = 8 + Zero } };

    private static CureScheduleInput OneEnd(Func<CureEnd, CureEnd> change) =>
        GoodCure.Coupled with { Ends = [change(GoodCure.Coupled.Ends[0])] };

    public static Func<CureScheduleInput, CureScheduleInput> Seen(double minutes, GelPlace place, double? softAt = null) =>
        cure => cure with { Observations = [new("A", GoodCure.After(minutes), place, softAt is { } soft ? GoodCure.After(soft) : null)] };

    private static Func<CureScheduleInput, CureScheduleInput> At(Func<CureConditions, CureConditions> change) =>
        cure => cure with { Conditions = change(cure.Conditions) };

    private static CureScheduleInput OfUnknownMetal(CureScheduleInput cure) =>
        cure with { Ends = [.. cure.Ends.Select(end => end with { Metal = SocketMetal.Unknown })] };

    private static Func<CureScheduleInput, CureScheduleInput> Sheet(Func<CompoundSheet, CompoundSheet> change) =>
        cure => cure with { Compound = change(cure.Compound) };
}
