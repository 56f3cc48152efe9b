using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Findings;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>A socket with one thing wrong, the finding that has to say so, and the check that has to show it.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Check">The check.</param>
/// <param name="Change">What is wrong with the socket.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record ReuseCase(
    string Code, Severity Severity, string Pointer, string Check, Func<ReuseInput, ReuseInput> Change, params IReadOnlyList<string> Besides)
    : IFindingCase
{
    public Outcome<ReuseResult> Assess() => GoodSocket.Assess(Change(Input));
}

/// <summary>At least one socket for each finding and severity.</summary>
public static class ReuseCases
{
    private const string Indications = "/inspection/indications";

    public static IReadOnlyList<ReuseCase> All { get; } = [.. Stops, .. Wear, .. Strength, .. ReuseEndCases.All, .. Cautions, .. Notes,
        .. ReuseGaps.All];

    private static IEnumerable<ReuseCase> Stops =>
    [
        new("socket-welded", Severity.Stop, "/socket/history/welded", "welding", Past(past => past with { Welded = true })),
        new("socket-straightened", Severity.Stop, "/socket/history/straightened", "straightening",
        Past(past => past with { Straightened = true })),
        new("socket-arc-struck", Severity.Stop, "/socket/history/arcStruck", "arc-strike", Past(past => past with { ArcStruck = true })),
        new("socket-overloaded", Severity.Stop, "/socket/history/overloaded", "overload", Past(past => past with { Overloaded = true })),
        new("cone-burnt-out", Severity.Stop, "/coneRemoval/method", "cone-removal", Removed(RemovalMethod.BurntOut, 150)),
        new("socket-overheated", Severity.Unknown, "/limits/removalTemperature", "removal-heat", Removed(RemovalMethod.PressedWarm, 401)),
        new("socket-overheated", Severity.Stop, "/coneRemoval/maximumTemperature", "removal-heat",
            input => Removed(RemovalMethod.PressedWarm, 121)(Limits(limits => limits with { RemovalTemperatureK = 120 + Zero })(input))),
        new("socket-cracked", Severity.Stop, "/inspection/visual/cracks", "visible-cracks",
        Seen(seen => seen with { VisibleCracks = true })),
        new("socket-cracked", Severity.Stop, Indications + "/0", "crack-ears",
        Seen(seen => seen with { Indications = [new(SocketPlace.Ears, IndicationKind.Linear, .004)] })),
        new("socket-cracked", Severity.Stop, Indications + "/0", "crack-basket",
        Seen(seen => seen with { Indications = [new(SocketPlace.Basket, IndicationKind.Crack, null)] })),
        new("socket-cracked", Severity.Stop, Indications + "/0", "crack-pin",
        Seen(seen => seen with { Indications = [new(SocketPlace.Pin, IndicationKind.Linear, null)] })),
        new("socket-corroded", Severity.Stop, "/inspection/visual/corrosion", "corrosion",
        Seen(seen => seen with { Corrosion = CorrosionState.Severe })),
    ];

    private static IEnumerable<ReuseCase> Wear =>
    [
        new("bore-worn", Severity.Stop, "/socket/measured/stations", "bore-growth", Station(0, .0234, .0235)),
        new("bore-oval", Severity.Stop, "/socket/measured/stations", "bore-ovality", Station(0, .0228, .0233)),
        new("taper-lost", Severity.Stop, "/socket/measured/stations", "taper", Station(1, .0328, .0328)),
        new("taper-lost", Severity.Stop, "/socket/measured/stations", "taper",
            input => Limits(limits => limits with { BoreGrowth = .5, TaperLoss = null })(Station(0, .0342, .0342)(input)),
            "limit-implausible", "socket-weaker-than-rope"),
        new("pin-hole-worn", Severity.Stop, "/socket/measured/pinHoleDiameters", "pin-hole-growth",
        Found(found => found with { PinHoleDiametersM = [.0384, .0384] })),
        new("pin-hole-oval", Severity.Stop, "/socket/measured/pinHoleDiameters", "pin-hole-ovality",
        Found(found => found with { PinHoleDiametersM = [.0374, .0366] })),
        new("ears-spread", Severity.Stop, "/socket/measured/earGap", "ear-spread", Found(found => found with { EarGapM = .0413 })),
        new("ears-spread", Severity.Stop, "/socket/measured/earGap", "ear-spread", Found(found => found with { EarGapM = .0387 })),
        new("ear-thin", Severity.Stop, "/socket/measured/earThickness", "ear-thickness",
        Found(found => found with { EarThicknessM = .0151 })),
        new("ear-narrow", Severity.Stop, "/socket/measured/earWidth", "ear-width",
            input => Limits(limits => limits with { EarWidthLoss = .02 })(Found(found => found with { EarWidthM = .078 })(input))),
        new("ear-end-worn", Severity.Stop, "/socket/measured/earEndDistance", "ear-end-distance",
            input => Limits(limits =>
            limits with { EarEndDistanceLoss = .02 })(Found(found => found with { EarEndDistanceM = .039 })(input))),
        new("outside-worn", Severity.Stop, "/socket/measured/outerDiameter", "outside",
            input => Limits(limits => limits with { OutsideLoss = .01 })(Found(found => found with { OuterAtMouthM = .069 })(input))),
        new("half-worn-away", Severity.Stop, "/socket/measured/earThickness", "metal-left",
            Found(found => found with { EarThicknessM = .016 / 3 }),
            "ear-thin", "yields-at-proof-load", "stress-above-design", "socket-weaker-than-rope"),
        new("pits-deep", Severity.Stop, "/socket/measured/pitDepth", "pits", Found(found => found with { PitDepthM = .0009 })),
        new("pin-worn", Severity.Caution, "/socket/measured/pinDiameter", "pin-wear", Found(found => found with { PinDiameterM = .0342 })),
    ];

    private static IEnumerable<ReuseCase> Strength =>
    [
        // A pin of 355 N/mm² in bending: 166.5 N/mm² at 76 kN, so 152 kN of proof load use 95 % and 76 kN with factor 3 use 143 %.
        new("stress-above-design", Severity.Caution, "/socket/measured/pinDiameter", "strength-pin-bending",
            input => Socket(socket =>
            socket with { RatedLoadN = 76e3, ProofRatingN = 160e3,
            PinYieldStrengthPa = 355e6 })(For(use => use with { RatedLoadN = 76e3, ProofLoadN = 152e3, Rope = null })(input))),
        // Ears of steel of 80 N/mm² bear 100 N/mm²: 100 kN of proof load on 2·34.9·15.9 mm² are 90.1, and shear takes 73.3 of 46.2.
        new("yields-at-proof-load", Severity.Stop, "/socket/measured/earThickness", "strength-ear-shear-out",
            Socket(socket => socket with { YieldStrengthPa = 120e6 }), "stress-above-design"),
        // A pin of 200 N/mm² in bending: 216.6 N/mm² at 100 kN.
        new("pin-yields-at-proof-load", Severity.Stop, "/socket/measured/pinDiameter", "strength-pin-bending",
            Socket(socket => socket with { PinYieldStrengthPa = 200e6 })),
        // The same pin taken as strong as the socket, 355 N/mm²: 170 kN of proof load ask for 372.
        new("yields-at-proof-load", Severity.Unknown, "/socket/pin/yieldStrength", "strength-pin-bending",
            input => Socket(socket => socket with { RatedLoadN = 76e3, ProofRatingN = 200e3,
                PinYieldStrengthPa = null })(For(use => use with { RatedLoadN = 76e3, ProofLoadN = 170e3, Rope = null })(input)),
            "pin-steel-assumed"),
        // The rope breaks at 252 kN.
        new("proof-above-half-breaking", Severity.Caution, "/intended/proofLoad", "half-of-breaking-force",
            input => Socket(socket => socket with { ProofRatingN = 140e3 })(For(use => use with { ProofLoadN = 127e3 })(input))),
        new("proof-at-breaking-force", Severity.Stop, "/intended/proofLoad", "half-of-breaking-force",
            Roped(rope => rope with { DiameterM = .012, CertifiedBreakingForceN = 90e3 })),
        new("intended-load-above-rating", Severity.Stop, "/intended/ratedLoad", "rated-load", For(use => use with { RatedLoadN = 51e3 })),
        new("proof-above-socket-rating", Severity.Stop, "/socket/proofRating", "proof-load", For(use => use with { ProofLoadN = 121e3 })),
        new("socket-weaker-than-rope", Severity.Stop, "/socket/breakingForce", "rope-strength",
        Socket(socket => socket with { BreakingForceN = 252e3 })),
    ];

    private static IEnumerable<ReuseCase> Cautions =>
    [
        new("facts-taken", Severity.Caution, "/socket/material/kind", "", Socket(socket => socket with { Metal = null })),
        new("facts-taken", Severity.Caution, "/socket/measured/earWidth", "", Found(found => found with { EarWidthM = null })),
        new("facts-taken", Severity.Caution, "/socket/measured/earEndDistance", "", Found(found => found with { EarEndDistanceM = null })),
        new("facts-taken", Severity.Caution, "/socket/proofRating", "", Socket(socket => socket with { ProofRatingN = null })),
        new("facts-taken", Severity.Caution, "/intended/rope/certificate/breakingForce", "",
        Roped(rope => rope with { CertifiedBreakingForceN = null })),
        new("socket-warmed", Severity.Caution, "/coneRemoval/maximumTemperature", "removal-warmth",
        Removed(RemovalMethod.PressedWarm, 201)),
        new("rounded-indication", Severity.Caution, Indications + "/0", "indications",
        Seen(seen => seen with { Indications = [new(SocketPlace.Basket, IndicationKind.Rounded, .001)] })),
        new("crack-search-old", Severity.Caution, "/inspection/inspectedOn", "crack-search-age",
        Seen(seen => seen with { InspectedOn = new(2025, 3, 11) })),
        new("socket-rusty", Severity.Caution, "/inspection/visual/corrosion", "corrosion",
        Seen(seen => seen with { Corrosion = CorrosionState.Light })),
        new("socket-rusty", Severity.Caution, "/inspection/visual/corrosion", "corrosion",
        Seen(seen => seen with { Corrosion = CorrosionState.Pitted })),
    ];

    private static IEnumerable<ReuseCase> Notes =>
    [
        new("socket-medium-changed", Severity.Note, "/socket/history/lastMedium", "record",
            Past(past => past with { LastMedium = SocketMedium.Zinc })),
        new("pin-steel-assumed", Severity.Note, "/socket/pin/yieldStrength", "strength-pin-bending",
        Socket(socket => socket with { PinYieldStrengthPa = null })),
    ];
}
