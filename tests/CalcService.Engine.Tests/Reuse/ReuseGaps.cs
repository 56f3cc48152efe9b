using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>The sound socket with one fact missing: each of them holds it.</summary>
public static class ReuseGaps
{
    private const string History = "/socket/history/";
    private const string Drawing = "/socket/nominal/";
    private const string Measured = "/socket/measured/";

    public static IReadOnlyList<ReuseCase> All { get; } = [.. Facts, .. Inspection, .. Sizes, .. LimitGaps];

    private static IEnumerable<ReuseCase> Facts =>
    [
        Missing("socket-identity-missing", "/socket/id", "identity", Socket(socket => socket with { Id = null })),
        Missing("socket-identity-missing", "/socket/id", "identity", Socket(socket => socket with { Id = "  " })),
        Missing("socket-identity-missing", "/socket/type", "identity", Socket(socket => socket with { Type = SocketType.Unknown })),
        Missing("socket-steel-unknown", "/socket/material/known", "steel", Socket(socket => socket with { SteelKnown = null })),
        Missing("socket-steel-unknown", "/socket/material/known", "steel", Socket(socket => socket with { SteelKnown = false })),
        Missing("socket-steel-unknown", "/socket/material/yieldStrength", "steel",
        Socket(socket => socket with { YieldStrengthPa = null })),
        Missing("socket-steel-unknown", "/socket/material/yieldStrength", "strength-basket-hoop",
        Socket(socket => socket with { YieldStrengthPa = null })),
        Missing("socket-steel-unknown", "/socket/material/tensileStrength", "strength-ear-block",
        Socket(socket => socket with { TensileStrengthPa = null })),
        Missing("socket-history-missing", History + "welded", "welding", Past(past => past with { Welded = null })),
        Missing("socket-history-missing", History + "straightened", "straightening", Past(past => past with { Straightened = null })),
        Missing("socket-history-missing", History + "arcStruck", "arc-strike", Past(past => past with { ArcStruck = null })),
        Missing("socket-history-missing", History + "overloaded", "overload", Past(past => past with { Overloaded = null })),
        Missing("socket-history-missing", History + "pours", "record", Past(past => past with { Pours = null })),
        Missing("socket-history-missing", History + "lastMedium", "record", Past(past => past with { LastMedium = SocketMedium.Unknown })),
        Missing("cone-removal-unknown", "/coneRemoval/method", "cone-removal", Removed(RemovalMethod.Unknown, 20)),
        Missing("cone-removal-unknown", "/coneRemoval/maximumTemperature", "removal-heat", Removed(RemovalMethod.Drilled, null)),
        Missing("bail-not-computed", "/socket/type", "bail", Socket(socket => socket with { Type = SocketType.Closed })),
        Missing("rated-load-missing", "/socket/ratedLoad", "rated-load", Socket(socket => socket with { RatedLoadN = null })),
        Missing("rated-load-missing", "/socket/ratedLoad", "strength-pin-shear",
        input => For(use => use with { RatedLoadN = null })(Socket(socket => socket with { RatedLoadN = null })(input))),
        Missing("intended-rope-strength-missing", "/intended/rope/certificate/breakingForce", "rope-strength",
        Roped(rope =>
        rope with { CertifiedBreakingForceN = null, MetallicAreaM2 = 199e-6, WireCount = 216, OuterWireDiameterM = .0011,
        Construction = "other" })),
    ];

    private static IEnumerable<ReuseCase> Inspection =>
    [
        .. new[] { SurfaceMethod.Unknown, SurfaceMethod.None,
        SurfaceMethod.VisualOnly }.SelectMany(method => new[] { "crack-basket", "crack-ears", "crack-pin-holes", "crack-pin" }
            .Select(check =>
            Missing("crack-search-missing", "/inspection/surfaceMethod", check, Seen(seen => seen with { Method = method })))),
        Missing("crack-search-missing", "/inspection/indications", "crack-basket", Seen(seen => seen with { Indications = null })),
        Missing("crack-search-missing", "/inspection/indications", "indications", Seen(seen => seen with { Indications = null })),
        Missing("crack-search-missing", "/inspection/places", "crack-pin-holes",
        Seen(seen => seen with { Places = [SocketPlace.Basket, SocketPlace.Ears, SocketPlace.Pin] })),
        Missing("crack-search-missing", "/inspection/places", "crack-basket", Seen(seen => seen with { Places = null })),
        Missing("socket-steel-unknown", "/socket/material/kind", "socket-metal",
        Socket(socket => socket with { Metal = Engine.Sockets.SocketMetal.Unknown })),
        Missing("limit-implausible", "/limits/earSpread", "", Limits(limits => limits with { EarSpread = .5 })),
        Missing("limit-implausible", "/limits/designFactor", "", Limits(limits => limits with { DesignFactor = 1 })),
        Missing("limit-implausible", "/limits/removalTemperature", "", Limits(limits => limits with { RemovalTemperatureK = 1173 })),
        Missing("crack-search-missing", "/inspection/inspectedOn", "crack-search-age", Seen(seen => seen with { InspectedOn = null })),
        Missing("indication-unclear", "/inspection/indications/0", "indications",
        Seen(seen => seen with { Indications = [new(SocketPlace.Ears, IndicationKind.Unknown, null)] })),
        Missing("indication-unclear", "/inspection/indications/0", "indications",
        Seen(seen => seen with { Indications = [new(SocketPlace.Unknown, IndicationKind.Rounded, null)] }), "rounded-indication"),
        Missing("visual-inspection-missing", "/inspection/visual/cracks", "visible-cracks",
        Seen(seen => seen with { VisibleCracks = null })),
        Missing("visual-inspection-missing", "/inspection/visual/corrosion", "corrosion",
        Seen(seen => seen with { Corrosion = CorrosionState.Unknown })),
        Missing("visual-inspection-missing", "/inspection/visual/surface", "surface",
        Seen(seen => seen with { Surface = SurfaceState.Unknown })),
        .. new[] { SurfaceState.OldResin, SurfaceState.OldMetal, SurfaceState.Painted }
            .Select(state =>
            Missing("socket-surface-covered", "/inspection/visual/surface", "surface", Seen(seen => seen with { Surface = state }))),
    ];

    private static IEnumerable<ReuseCase> Sizes =>
    [
        Missing("wear-measurement-missing", Measured + "stations", "bore-growth", Station(0, null)),
        Missing("wear-measurement-missing", Measured + "stations", "bore-ovality", Station(1, null)),
        Missing("wear-measurement-missing", Measured + "stations", "taper", Station(2, null)),
        Missing("wear-measurement-missing", Measured + "stations", "strength-basket-hoop", Found(found => found with { Stations = [] })),
        Missing("wear-measurement-missing", Measured + "stations/1/diameters", "bore-ovality", Station(1, .0341)),
        Missing("wear-measurement-missing", Measured + "outerDiameter", "strength-basket-hoop",
        Found(found => found with { OuterAtMouthM = null })),
        Missing("wear-measurement-missing", Measured + "outerDiameter", "strength-basket-hoop",
        Found(found => found with { OuterAtSmallEndM = null })),
        Missing("wear-measurement-missing", Measured + "pinDiameter", "pin-wear", Found(found => found with { PinDiameterM = null })),
        Missing("wear-measurement-missing", Measured + "pinDiameter", "strength-pin-shear",
        Found(found => found with { PinDiameterM = null })),
        Missing("wear-measurement-missing", Measured + "pinHoleDiameters", "pin-hole-ovality",
        Found(found => found with { PinHoleDiametersM = [.0366] })),
        Missing("wear-measurement-missing", Measured + "pinHoleDiameters", "strength-ear-net-section",
        Found(found => found with { PinHoleDiametersM = [] })),
        Missing("wear-measurement-missing", Measured + "earThickness", "ear-thickness",
        Found(found => found with { EarThicknessM = null })),
        Missing("wear-measurement-missing", Measured + "earThickness", "strength-ear-bearing",
        Found(found => found with { EarThicknessM = null })),
        Missing("wear-measurement-missing", Measured + "earGap", "ear-spread", Found(found => found with { EarGapM = null })),
        Missing("wear-measurement-missing", Measured + "pitDepth", "pits", Found(found => found with { PitDepthM = null })),
        Missing("drawing-size-missing", Drawing + "outerDiameter", "strength-basket-hoop",
        Drawn(drawn => drawn with { OuterAtMouthM = null })),
        Missing("drawing-size-missing", Drawing + "pinDiameter", "pin-wear", Drawn(drawn => drawn with { PinDiameterM = null })),
        Missing("drawing-size-missing", Drawing + "pinHoleDiameter", "pin-hole-growth",
        Drawn(drawn => drawn with { PinHoleDiameterM = null })),
        Missing("drawing-size-missing", Drawing + "earThickness", "strength-ear-bearing",
        Drawn(drawn => drawn with { EarThicknessM = null })),
        Missing("drawing-size-missing", Drawing + "earWidth", "strength-ear-net-section", Drawn(drawn => drawn with { EarWidthM = null })),
        Missing("drawing-size-missing", Drawing + "earEndDistance", "strength-ear-shear-out",
        Drawn(drawn => drawn with { EarEndDistanceM = null })),
        Missing("drawing-size-missing", Drawing + "earGap", "strength-pin-bending", Drawn(drawn => drawn with { EarGapM = null })),
    ];

    private static IEnumerable<ReuseCase> LimitGaps =>
    [
        Missing("worn-without-limit", "/limits/boreGrowth", "bore-growth", Limits(limits => limits with { BoreGrowth = null })),
        Missing("worn-without-limit", "/limits/ovality", "bore-ovality", Limits(limits => limits with { Ovality = null })),
        Missing("worn-without-limit", "/limits/ovality", "pin-hole-ovality", Limits(limits => limits with { Ovality = null })),
        Missing("worn-without-limit", "/limits/pinHoleGrowth", "pin-hole-growth", Limits(limits => limits with { PinHoleGrowth = null })),
        Missing("worn-without-limit", "/limits/earSpread", "ear-spread", Limits(limits => limits with { EarSpread = null })),
        Missing("worn-without-limit", "/limits/pitDepth", "pits",
            input => Limits(limits => limits with { PitDepthM = null })(Found(found => found with { PitDepthM = .0001 })(input))),
        // Faces of 16, 35, 70 and 80 mm: ISO 2768-1, class m, from memory, 0.2 mm up to 30 mm and 0.3 mm up to 120 mm.
        Missing("worn-without-limit", "/limits/earThicknessLoss", "ear-thickness",
            input => Limits(limits =>
            limits with { EarThicknessLoss = null })(Found(found => found with { EarThicknessM = .01579 })(input))),
        Missing("worn-without-limit", "/limits/pinWear", "pin-wear",
            input => Limits(limits => limits with { PinWear = null })(Found(found => found with { PinDiameterM = .03469 })(input))),
        Missing("worn-without-limit", "/limits/earWidthLoss", "ear-width", Found(found => found with { EarWidthM = .07969 })),
        Missing("worn-without-limit", "/limits/earEndDistanceLoss", "ear-end-distance",
            Found(found => found with { EarEndDistanceM = .03969 })),
        Missing("worn-without-limit", "/limits/outsideLoss", "outside", Found(found => found with { OuterAtSmallEndM = .06969 })),
        // 0.75 ± 0.1 mm of 0.8; an ear that lost 4.7 ± 0.6 % of 5.
        Missing("reading-too-coarse", "/socket/measured/pitDepth", "pits",
            Found(found => found with { PitDepthM = .00075, UncertaintyM = .0001 })),
        Missing("reading-too-coarse", "/socket/measured/earThickness", "ear-thickness",
            Found(found => found with { EarThicknessM = .01525, UncertaintyM = .0001 })),
        Missing("pin-thicker-than-hole", "/socket/measured/pinDiameter", "pin-in-hole",
        Found(found => found with { PinDiameterM = .0367 })),
        Missing("size-not-as-drawn", "/socket/measured/earThickness", "as-drawn", Found(found => found with { EarThicknessM = .0169 })),
        Missing("wear-limits-missing", "/limits/source", "taper", Limits(limits => limits with { Source = null })),
        Missing("wear-limits-missing", "/limits/source", "pits", Limits(limits => limits with { Source = " " })),
    ];

    private static ReuseCase Missing(string code, string pointer, string check, Func<ReuseInput, ReuseInput> change,
        params string[] besides) =>
        new(code, Severity.Unknown, pointer, check, change, besides);
}
