using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Matching;

/// <summary>A match with one thing wrong, and the finding that has to say so.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Change">What is wrong with the match.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record MatchCase(
    string Code, Severity Severity, string Pointer, Func<MatchInput, MatchInput> Change, params IReadOnlyList<string> Besides)
    : IFindingCase
{
    public long Steps { get; init; } = Budget.DefaultSteps;

    public Outcome<MatchResult> Match() => GoodMatch.Match(Change(GoodMatch.Input), Steps);
}

/// <summary>At least one match for each finding and severity.</summary>
public static class MatchCases
{
    private const double Zero = GoodMatch.Zero;
    private const string Basket = "/socket/basket";

    public static IReadOnlyList<MatchCase> All { get; } = [.. Pair, .. Rope, .. Duties, .. Laws, .. Services, .. Cones];

    private static IEnumerable<MatchCase> Pair =>
    [
        new("socket-weaker-than-rope", Severity.Stop, "/socket/breakingForce", Socket(s => s with { BreakingForceN = 252e3 })),
        new("socket-strength-unknown", Severity.Unknown, "/socket/breakingForce", Socket(s => s with { BreakingForceN = null })),
        new("socket-standard-missing", Severity.Caution, "/socket/standard", Socket(s => s with { Standard = null })),
        new("rope-outside-socket-range", Severity.Caution, "/socket/ropeRange", Socket(s => s with { RopeRange = new(.021, .023) })),
        new("rope-outside-socket-range", Severity.Caution, "/socket/ropeRange", Socket(s => s with { RopeRange = new(.016, .018) })),
        new("rope-does-not-enter", Severity.Stop, Basket + "/smallEndDiameter", BasketOf(b => b with { SmallEndDiameterM = .020 })),
        new("rope-loose", Severity.Note, Basket + "/smallEndDiameter",
            input => Socket(s =>
            s with { OuterAtSmallEndM = .060,
            OuterAtMouthM = .090 })(BasketOf(b => b with { SmallEndDiameterM = .0405, LargeEndDiameterM = .060 })(input))),
        new("wires-do-not-fit", Severity.Stop, Basket, RopeOf(r => r with { MetallicAreaM2 = 380e-6 })),
        new("fit-depends-on-tolerance", Severity.Caution, Basket + "/tolerance", BasketOf(b => b with { ToleranceM = .003 })),
        new("wires-crowded", Severity.Caution, Basket, RopeOf(r => r with { OuterWireDiameterM = .0018 })),
        new("basket-short", Severity.Note, Basket + "/length", BasketOf(b => b with { LengthM = .098 })),
        new("cone-angle-unusual", Severity.Note, Basket, BasketOf(b => b with { LengthM = .300 })),
    ];

    private static IEnumerable<MatchCase> Rope =>
    [
        new("used-rope", Severity.Caution, "/rope/used", RopeOf(r => r with { IsUsed = true })),
        new("plastic-filled-rope", Severity.Caution, "/rope/plasticFilled",
            input => RopeOf(r => r with { PlasticFilled = Fact.Yes })(input with { Preparation = null })),
        new("geometry-from-memory", Severity.Caution, Basket + "/sizesFrom", Socket(s => s with { SizesFrom = SizesFrom.Memory })),
        new("rope-does-not-enter", Severity.Stop, Basket + "/smallEndDiameter", RopeOf(r => r with { MeasuredDiameterM = .0235 }),
        "rope-thick"),
        new("rope-strength-missing", Severity.Unknown, "/rope/certificate/breakingForce",
            RopeOf(r =>
            r with { CertifiedBreakingForceN = null, Construction = "locked coil", MetallicAreaM2 = 184e-6, WireCount = 265,
            OuterWireDiameterM = .00094 }), "load-transfer-not-computed"),
        new("rope-strength-estimated", Severity.Caution, "/rope/certificate/breakingForce",
        RopeOf(r => r with { CertifiedBreakingForceN = null })),
        new("wire-fit-unknown", Severity.Unknown, "/rope/wireCount",
        RopeOf(r => r with { Construction = "locked coil", MetallicAreaM2 = 184e-6 })),
        new("wire-fit-unknown", Severity.Unknown, "/rope/wireCount",
            RopeOf(r => r with { Construction = "locked coil", WireCount = 100, OuterWireDiameterM = .001 }), "load-transfer-not-computed"),
        new("rope-identity-missing", Severity.Unknown, "/rope/construction",
            RopeOf(r => r with { Construction = null, MetallicAreaM2 = 184e-6, WireCount = 265, OuterWireDiameterM = .00094 })),
        new("rope-fact-missing", Severity.Caution, "/rope/grade", RopeOf(r => r with { Grade = null })),
        new("rope-fact-missing", Severity.Caution, "/rope/finish", RopeOf(r => r with { Finish = WireFinish.Unknown })),
        new("grade-above-ordinary", Severity.Caution, "/rope/grade", RopeOf(r => r with { Grade = 2160 })),
        new("stainless-rope", Severity.Caution, "/rope/finish", RopeOf(r => r with { Finish = WireFinish.Stainless })),
        new("coarse-rope", Severity.Caution, "/rope/construction", RopeOf(r => r with { Construction = "6x7" })),
        new("basket-short-for-spiral", Severity.Note, Basket + "/length",
            RopeOf(r => r with { Construction = "1x37", MetallicAreaM2 = 184e-6, WireCount = 37, OuterWireDiameterM = .0026 })),
    ];

    private static IEnumerable<MatchCase> Duties =>
    [
        new("duty-missing", Severity.Unknown, "/duty/use", Duty(d => d with { Use = DutyUse.Unknown })),
        new("design-factor-missing", Severity.Unknown, "/duty/designFactor",
        Duty(d => d with { Use = DutyUse.Other, DesignFactor = null })),
        new("design-factor-from-memory", Severity.Caution, "/duty/designFactor", Duty(d => d with { DesignFactor = null })),
        new("design-factor-below-rule", Severity.Unknown, "/duty/designFactor", Duty(d => d with { DesignFactor = 4.9 })),
        new("design-factor-below-law", Severity.Stop, "/duty/designFactor",
        Duty(d => d with { DesignFactor = 4.9, LiftsPersons = Fact.Yes })),
        new("design-factor-below-law", Severity.Unknown, "/rope/function", Hoist(RopeFunction.Unknown, d => d with { DesignFactor = 4.9 })),
        new("load-above-working-limit", Severity.Stop, "/duty/load", Duty(d => d with { LoadN = 51e3 })),
        new("load-above-working-limit", Severity.Unknown, "/duty/load", Duty(d => d with { LoadN = 51e3, DesignFactor = null }),
        "design-factor-from-memory"),
        new("load-above-socket-rating", Severity.Stop, "/duty/load", Socket(s => s with { RatedLoadN = 24e3 })),
        new("facts-taken", Severity.Caution, "/socket/ratedLoad", Socket(s => s with { RatedLoadN = null })),
        new("facts-taken", Severity.Caution, "/socket/proofRating",
            input => Socket(s => s with { ProofRatingN = null })(Duty(d => d with { ProofLoadN = 50e3 })(input))),
        new("proof-below-rule", Severity.Stop, "/duty/proofLoad", Duty(d => d with { ProofLoadN = 10e3 })),
        // Nothing is remembered for other uses, and a proof load of twice this would reach the breaking force.
        new("design-factor-below-rule", Severity.Unknown, "/duty/designFactor",
            Duty(d => d with { Use = DutyUse.Other, DesignFactor = 1.9 })),
        // As high as the rope's breaking force, by a factor that allows it.
        new("load-above-working-limit", Severity.Stop, "/duty/load", input => Socket(s => s with { RatedLoadN = 305e3 })(
            Duty(d => d with { Use = DutyUse.Other, DesignFactor = 1, LoadN = 252e3 })(input)), "design-factor-below-rule",
            "compound-overstressed"),
        new("proof-below-rated-load", Severity.Unknown, "/duty/proofLoad",
        Duty(d => d with { Use = DutyUse.Other, ProofLoadN = d.LoadN * .9 })),
        new("rated-load-missing", Severity.Unknown, "/duty/load", Duty(d => d with { ProofLoadN = 10e3, LoadN = null })),
        new("proof-above-socket-rating", Severity.Stop, "/duty/proofLoad", Socket(s => s with { ProofRatingN = 49e3 })),
        new("proof-above-half-breaking", Severity.Caution, "/duty/proofLoad",
            input => Socket(s => s with { ProofRatingN = 200e3 })(Duty(d => d with { ProofLoadN = 127e3 })(input)),
            "compound-overstressed"),
        new("proof-at-breaking-force", Severity.Stop, "/duty/proofLoad",
            input => Socket(s => s with { ProofRatingN = 300e3 })(Duty(d => d with { ProofLoadN = 252e3 })(input)),
            "compound-overstressed"),
        new("efficiency-not-tested", Severity.Note, "/duty/typeTested", Duty(d => d with { TypeTested = null })),
        new("efficiency-not-tested", Severity.Note, "/duty/typeTested", Duty(d => d with { TypeTested = false })),
    ];

    private static IEnumerable<MatchCase> Laws =>
    [
        new("mine-evidence-missing", Severity.Unknown, "/duty/resinByDesign", Mine(d => d)),
        new("mine-evidence-missing", Severity.Unknown, "/duty/typeTested", Mine(d => d with { ResinByDesign = true, TypeTested = null })),
        new("mine-medium-not-by-design", Severity.Unknown, "/duty/resinByDesign", Duty(d => d with { ResinByDesign = false })),
        new("mine-medium-not-by-design", Severity.Stop, "/duty/resinByDesign", Mine(d => d with { ResinByDesign = false })),
        new("mine-attachment-weak", Severity.Stop, "/duty/efficiency", Mine(d => d with { ResinByDesign = true, Efficiency = .79 })),
        new("lift-proportions", Severity.Caution, Basket + "/smallEndDiameter", Lift(.023, .045, .100)),
        new("lift-proportions", Severity.Caution, Basket + "/length", Lift(.022, .0451, .0949), "basket-short"),
        new("lift-proportions", Severity.Caution, Basket + "/largeEndDiameter", Lift(.022, .0449, .100)),
        new("lift-proportions", Severity.Caution, Basket + "/largeEndDiameter", Lift(.022, .0601, .150)),
    ];

    private static IEnumerable<MatchCase> Services =>
    [
        new("compound-demonstration", Severity.Caution, "/compound", Sheet(s => s with { Demonstration = true })),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/service", Sheet(s => s with { Service = null })),
        new("service-temperature-missing", Severity.Unknown, "/service/lowest", Service(s => s with { LowestK = null })),
        new("service-temperature-missing", Severity.Unknown, "/service/highest", Service(s => s with { HighestK = null })),
        new("service-outside-sheet", Severity.Stop, "/service/lowest", Service(s => s with { LowestK = -15.1 + Zero })),
        new("service-outside-sheet", Severity.Stop, "/service/highest", Service(s => s with { HighestK = 60.1 + Zero })),
        new("service-beyond-older-standard", Severity.Note, "/service/lowest",
            input => Service(s => s with { LowestK = -21 + Zero })(Sheet(s => s with { Service = new(-54 + Zero, 115 + Zero) })(input))),
        new("service-beyond-older-standard", Severity.Note, "/service/highest",
            input => Service(s => s with { HighestK = 71 + Zero })(Sheet(s => s with { Service = new(-54 + Zero, 115 + Zero) })(input))),
        new("surroundings-not-given", Severity.Caution, "/service/chemicals", Service(s => s with { Chemicals = null })),
        new("chemical-not-on-sheet", Severity.Unknown, "/service/chemicals/1", Service(s => s with { Chemicals = ["sea water", "brine"] })),
        new("chemical-limited", Severity.Caution, "/service/chemicals/0", Service(s => s with { Chemicals = ["Diesel"] })),
        new("chemical-attacks", Severity.Stop, "/service/chemicals/0", Service(s => s with { Chemicals = ["acetone"] })),
        new("left-in-broom", Severity.Stop, "/preparation/core", Fibre(CoreTreatment.LeftIn)),
        new("left-in-broom", Severity.Stop, "/preparation/core", Fibre(CoreTreatment.Unlaid)),
        new("left-in-broom", Severity.Stop, "/preparation/plasticLeftIn",
        input => input with { Preparation = new(CoreTreatment.Unlaid, BroomCleaner.Solvent, PlasticLeftIn: true) }),
        new("cleaner-forbidden", Severity.Stop, "/preparation/cleaner",
        input => input with { Preparation = new(CoreTreatment.Unlaid, BroomCleaner.Acid, PlasticLeftIn: false) }),
        new("cleaner-forbidden", Severity.Stop, "/preparation/cleaner",
        input => input with { Preparation = new(CoreTreatment.Unlaid, BroomCleaner.Flux, PlasticLeftIn: false) }),
    ];

    private static IEnumerable<MatchCase> Cones =>
    [
        new("load-transfer-not-computed", Severity.Caution, "/compound/sheet/cured",
            Sheet(s => s with { Cured = s.Cured with { ModulusPa = null } })),
        new("load-transfer-not-computed", Severity.Caution, "/socket/basket", input => input) { Steps = 100 },
        new("compound-overstressed", Severity.Caution, "/compound/sheet/cured/compressiveStrength",
        Sheet(s => s with { Cured = s.Cured with { CompressiveStrengthPa = 60e6 } })),
        new("socket-wall-assumed", Severity.Note, "/socket/outerAtSmallEnd", Socket(s => s with { OuterAtSmallEndM = null })),
        new("socket-wall-assumed", Severity.Note, "/socket/outerAtMouth", Socket(s => s with { OuterAtMouthM = null })),
        new("cone-not-self-locking", Severity.Note, "/cone/friction", input => input with { Friction = .1 }),
    ];

    private static Func<MatchInput, MatchInput> RopeOf(Func<Rope, Rope> change) => input => input with { Rope = change(input.Rope) };

    private static Func<MatchInput, MatchInput> Socket(Func<MatchSocket, MatchSocket> change) => input =>
        input with { Socket = change(input.Socket) };

    private static Func<MatchInput, MatchInput> BasketOf(Func<Basket, Basket> change) => Socket(s => s with { Basket = change(s.Basket) });

    private static Func<MatchInput, MatchInput> Duty(Func<MatchDuty, MatchDuty> change) => input =>
        input with { Duty = change(input.Duty) };

    private static Func<MatchInput, MatchInput> Hoist(RopeFunction function, Func<MatchDuty, MatchDuty> change) => input =>
        RopeOf(r => r with { Function = function })(Duty(d => change(d with { Use = DutyUse.HoistRope }))(input));

    private static Func<MatchInput, MatchInput> Mine(Func<MatchDuty, MatchDuty> change) =>
        Duty(d => change(d with { Use = DutyUse.MineHoist, DesignFactor = 7 }));

    private static Func<MatchInput, MatchInput> Lift(double smallEnd, double mouth, double length) => input =>
        Duty(d => d with { Use = DutyUse.Lift, DesignFactor = 12, LoadN = 15e3 })(
            BasketOf(b => b with { SmallEndDiameterM = smallEnd, LargeEndDiameterM = mouth, LengthM = length })(input));

    private static Func<MatchInput, MatchInput> Service(Func<MatchService, MatchService> change) => input =>
        input with { Service = change(input.Service) };

    private static Func<MatchInput, MatchInput> Sheet(Func<CompoundSheet, CompoundSheet> change) => input =>
        input with { Compound = change(input.Compound) };

    private static Func<MatchInput, MatchInput> Fibre(CoreTreatment treatment) => input => input with
    {
        Rope = input.Rope with { Core = RopeCore.Fibre },
        Preparation = new(treatment, BroomCleaner.Solvent, PlasticLeftIn: false),
    };
}
