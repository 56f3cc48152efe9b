using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Rules.Edition202611;

namespace CalcService.Engine.Pouring;

/// <summary>Every finding that a pour plan can raise.</summary>
public static class PouringFindings
{
    private static readonly PouringRules Rules = PouringRules2026Nov.Rules;
    private static readonly Source Prudence = new("a safety rule needs this fact and nobody gave it", "docs/pour-plans.md", Basis.Derived);
    private static readonly Source Geometry = new("geometry of the broom in the basket", "docs/pour-plans.md", Basis.Derived);

    public static FindingDefinition SteelAtDewPoint { get; } = Stop("steel-at-dew-point",
        "The steel is at or below the temperature at which water or frost settles on it.",
        "Steel at {measured} is not above the {point} of {limit}: the wires and the basket are wet or frosted.",
        "Warm the steel and dry wires and basket; do not pour on wet steel.",
        new("WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B", Basis.Published));

    public static FindingDefinition SteelNearDewPoint { get; } = Define("steel-near-dew-point", [Severity.Caution],
        "The steel is so little above the dew point that a small change wets it.",
        "Steel is {measured} above the {point}; at least {limit} is asked for.",
        "Warm the steel or dry the air; read both again right before the pour.",
        Rules.DewMargin.Source, Rules.DewMargin);

    public static FindingDefinition OutsidePouringRange { get; } = Stop("outside-pouring-range",
        "A temperature lies outside the pouring range of the sheet, which holds for air, steel and compound each.",
        "{reading} at {measured} is outside the sheet's pouring range of {minimum} to {maximum}.",
        "Warm or cool what is outside the range, or wait.",
        Source.DataSheet("pouring"));

    public static FindingDefinition PotLifeTooShort { get; } = Stop("pot-life-too-short",
        "Mixing the kits for one basket and filling it takes longer than the compound can be used.",
        "Mixing {kits} kit(s) and filling one basket of {end} takes {measured}; the pot life is {limit}.",
        "Use cooler compound, larger kits or more mixers side by side, or shorten the fill. Do not pour compound that thickens.",
        Source.DataSheet("potLife"));

    public static FindingDefinition LotExpired { get; } = Define("lot-expired", [Severity.Stop, Severity.Note],
        "A lot is past its last good day. It is never used; a stop where only this lot would make the stock enough.",
        "Lot {lot} was good until {expiresOn}, {days} days before the pour.",
        "Take the lot off the shelf; do not mix it.",
        new("the date on the pack, or the sheet's shelf life", "", Basis.DataSheet));

    public static FindingDefinition WiresDoNotFit { get; } = Stop("wires-do-not-fit",
        "The wires take more of the small end than equal circles can fill, π/(2√3).",
        "At the small end the wires fill {measured} of the section; no more than {limit} can be filled.",
        "Check rope and socket against each other; this basket is too small for this rope.",
        Geometry);

    public static FindingDefinition RopeDoesNotEnter { get; } = Stop("rope-does-not-enter",
        "The rope is not thinner than the small end of the basket.",
        "Rope of {measured} does not enter a small end of {limit}.",
        "Check rope and socket against each other.",
        Geometry);

    public static FindingDefinition VapourAboveLaw { get; } = Stop("vapour-above-law",
        "The vapour in the room exceeds a legal limit even if the air mixes perfectly.",
        "{substance} in the room reaches {measured} ({which}); the law allows {limit}.",
        "Ventilate more, or pour less at a time.",
        Rules.Air[0].LegalCeiling.Source, [.. Rules.Air.SelectMany(air => new[] { air.LegalCeiling, air.LegalTimeWeighted })]);

    public static FindingDefinition VapourMayExceedLaw { get; } = Define("vapour-may-exceed-law", [Severity.Caution],
        "The vapour near the work may exceed a legal limit where the air mixes badly.",
        "{substance} near the work may reach {measured} ({which}); the law allows {limit}.",
        "Ventilate more and measure the air where people breathe.",
        Rules.Air[0].LegalCeiling.Source, [Rules.MixingFactor, .. Rules.Air.SelectMany(air => new[] { air.LegalCeiling, air.LegalTimeWeighted })]);

    public static FindingDefinition VapourAboveRecommended { get; } = Define("vapour-above-recommended", [Severity.Caution],
        "The vapour in the room would exceed a recommended limit.",
        "{substance} near the work may reach {measured} ({which}); {limit} is recommended.",
        "Ventilate more; keep vessels closed and the pour short.",
        Rules.Air[0].RecommendedTimeWeighted.Source, [.. Rules.Air.SelectMany(air => new[] { air.RecommendedShortTerm, air.RecommendedTimeWeighted })]);

    public static FindingDefinition ReadingMissing { get; } = Unknown("reading-missing",
        "A reading that a safety rule needs is missing. It is never taken from another reading.",
        "{reading} is not given.",
        "Read it and send it.");

    public static FindingDefinition PourTimeMissing { get; } = Unknown("pour-time-missing",
        "Without the time to fill a basket nobody knows whether the pot life is enough.",
        "The time to fill one basket is not given.",
        "Give crew.pourTime.");

    public static FindingDefinition SheetSilent { get; } = Unknown("sheet-silent",
        "The data sheet doesn't state what a safety rule needs.",
        "The sheet gives no {what}.",
        "Take it from the compound's data sheet, or ask its maker.");

    public static FindingDefinition DoseUnknown { get; } = Unknown("dose-unknown",
        "The sheet has no dose band for the temperature that decides.",
        "No dose band of the sheet covers {measured}.",
        "Ask the compound's maker for the dose at this temperature.");

    public static FindingDefinition GelTimeUnknown { get; } = Unknown("gel-time-unknown",
        "The sheet has no gel time for the dose that the temperature asks for.",
        "The sheet has no gel time for {doses} doses a kit.",
        "Ask the compound's maker for gel times with this dose.");

    public static FindingDefinition RopeAreaUnknown { get; } = Unknown("rope-area-unknown",
        "The metallic area of the rope isn't known, so the steel in the basket isn't either.",
        "No metallic area: neither a certificate's nor a rope class with its core.",
        "Give metallicArea from the certificate, or construction and core of a class at /v1/rope-classes. Kits are planned on a basket without steel.");

    public static FindingDefinition WireFitUnknown { get; } = Unknown("wire-fit-unknown",
        "Number or size of the wires isn't known, so nobody knows whether they fit the basket.",
        "The number or size of the wires is not known.",
        "Give wireCount and outerWireDiameter from the certificate, or construction and core.");

    public static FindingDefinition LotExpiryMissing { get; } = Define("lot-expiry-missing", [Severity.Unknown, Severity.Note],
        "A lot has no last good day. It is not used; a missing fact where the plan would have needed it.",
        "Lot {lot} has no expiry date.",
        "Read the date off the packs and send expiresOn.",
        Prudence);

    public static FindingDefinition BudgetSpent { get; } = Unknown("budget-spent",
        "No kits were found within the steps that a request may take.",
        "The job is too large for a plan of its kits.",
        "Plan fewer ends at a time.");

    public static FindingDefinition DoseEdge { get; } = Define("dose-edge", [Severity.Caution],
        "Air and steel lie in different dose bands of the sheet.",
        "By the steel the dose is {steelDoses} for each kit, by the air {airDoses}; the colder one decided.",
        "Bring air and steel closer together, and read both again right before mixing.",
        Source.DataSheet("doses"));

    public static FindingDefinition GelTimeExtrapolated { get; } = Define("gel-time-extrapolated", [Severity.Caution],
        "A gel time lies outside the temperatures at which the sheet measured it.",
        "Gel time at {measured} lies outside the {minimum} to {maximum} that the sheet measured for this dose.",
        "Treat gel time and pot life as a guess: mix a witness sample first.",
        Source.DataSheet("gelTimes"));

    public static FindingDefinition GelTimeFromOnePoint { get; } = Define("gel-time-from-one-point", [Severity.Caution],
        "The sheet has one gel time for this dose, so the effect of temperature is assumed in a band.",
        "One gel time for this dose: an activation energy of {low} to {high} is assumed.",
        "Mix a witness sample first and time it.",
        Rules.AssumedActivationEnergy.Expected.Source,
        Rules.AssumedActivationEnergy.Low, Rules.AssumedActivationEnergy.Expected, Rules.AssumedActivationEnergy.High);

    public static FindingDefinition StockShort { get; } = Define("stock-short", [Severity.Caution],
        "The usable stock does not cover the job.",
        "Usable stock holds {measured}; {limit} is needed.",
        "Buy what the plan lists before anything is mixed.",
        new("whole kits against the stock of the request", "", Basis.Derived));

    public static FindingDefinition StockDoesNotDivide { get; } = Define("stock-does-not-divide", [Severity.Caution],
        "The stock is enough in all, but not in whole kits for each mix inside the pot life.",
        "The usable stock can't be divided into whole kits for mixes that are used up in time.",
        "Buy what the plan lists, or use more mixers or a cooler compound.",
        new("whole kits against the stock of the request", "", Basis.Derived));

    public static FindingDefinition ExpiryBeyondShelfLife { get; } = Define("expiry-beyond-shelf-life", [Severity.Caution],
        "A lot's expiry lies later than its date of manufacture and the sheet's shelf life allow.",
        "Lot {lot} is marked good until {expiresOn}; made on {madeOn} with a shelf life of {limit} it is good until {lastDay}.",
        "Ask the compound's maker which date holds.",
        Source.DataSheet("shelfLife"));

    public static FindingDefinition Demonstration { get; } = Define("compound-demonstration", [Severity.Caution],
        "The compound is invented, for demonstration only.",
        "The compound is the invented demonstration: no number here is fit for a real pour.",
        "Send the data sheet of the compound in hand.",
        new("the compound's sheet says so", "demonstration", Basis.Derived));

    public static FindingDefinition HighGrade { get; } = Define("grade-above-ordinary", [Severity.Caution],
        "The rope grade asks for special precautions.",
        "Rope grade {measured} is above {limit}.",
        "Ask the rope supplier what this grade needs.",
        Rules.HighestOrdinaryGrade.Source, Rules.HighestOrdinaryGrade);

    public static FindingDefinition RopeFactMissing { get; } = Define("rope-fact-missing", [Severity.Caution],
        "A fact of the rope that asks for precautions in some cases isn't given.",
        "The {what} of the rope is not given: {why}.",
        "Take it from the rope's certificate.",
        Prudence);

    public static FindingDefinition Stainless { get; } = Define("stainless-rope", [Severity.Caution],
        "Stainless wires need their own cleaning and may not bond like carbon steel.",
        "The rope is stainless.",
        "Ask the rope and compound makers for their procedure with stainless wire.",
        Source.CommonPractice);

    public static FindingDefinition RoomMissing { get; } = Unknown("room-missing",
        "Without room and air changes nobody knows whether the vapour stays within its limits.",
        "The room is not given: vapour not computed.",
        "Give conditions.room, or conditions.place where the pour is outdoors.");

    public static FindingDefinition VapourNotComputed { get; } = Unknown("vapour-not-computed",
        "Whether the vapour of this compound stays within its limits can't be computed.",
        "Vapour not computed: {why}.",
        "Go by the safety data sheet of the compound, and give what is missing.");

    public static FindingDefinition Outdoors { get; } = Define("outdoors", [Severity.Caution],
        "Outdoors no vapour is computed, and wind, sun and rain change the readings.",
        "The pour is outdoors: vapour not computed.",
        "Stand upwind, keep sun and rain off steel and compound, and read again right before the pour.",
        Source.CommonPractice);

    public static FindingDefinition ConfinedSpace { get; } = Define("confined-space", [Severity.Caution],
        "The pour is in a confined space: vapour gathers, and people need a way out and somebody outside.",
        "The pour is in a confined space.",
        "Work by the local rules for confined spaces; measure the air.",
        new("29 CFR 1910.146", "", Basis.FromMemory));

    public static FindingDefinition RopeIdentityMissing { get; } = Unknown("rope-identity-missing",
        "The construction or the core of the rope isn't known: a fibre core has to come out of the broom.",
        "The {what} of the rope is not given.",
        "Take it from the rope's certificate.");

    public static FindingDefinition FitDependsOnTolerance { get; } = Define("fit-depends-on-tolerance", [Severity.Caution],
        "Rope or wires fit the basket as given, but not at the small end of its tolerance.",
        "At the smallest sizes that the tolerance allows, the {what} do not fit.",
        "Measure the basket more closely.",
        Geometry);

    public static FindingDefinition RopeLoose { get; } = Define("rope-loose", [Severity.Note],
        "The small end is more than twice as wide as the rope.",
        "Small end of {measured} for a rope of {limit}.",
        "Check the units of both sizes; seal and centre the rope.",
        Source.CommonPractice);

    public static FindingDefinition SocketWeaker { get; } = Stop("socket-weaker-than-rope",
        "The socket is not stronger than the rope.",
        "The socket breaks at {measured}; the rope at {limit}.",
        "Take a socket whose strength exceeds the rope's minimum breaking force.",
        new("ISO 17558", "scope", Basis.Published));

    public static FindingDefinition SocketStrengthMissing { get; } = Define("socket-strength-missing", [Severity.Caution],
        "The strength of socket or rope isn't known, so they are not compared.",
        "The {what} is not known: socket and rope are not compared.",
        "Give socket.breakingForce from the socket's maker, and the rope's certificate.",
        Prudence);

    public static FindingDefinition BasketShort { get; } = Define("basket-short", [Severity.Note],
        "The basket is shorter than tradition asks for.",
        "Basket length is {measured} rope diameters; tradition asks for {limit}.",
        "Check the socket against its maker's table.",
        Rules.BasketLengthInDiameters.Source, Rules.BasketLengthInDiameters);

    public static FindingDefinition ConeAngleUnusual { get; } = Define("cone-angle-unusual", [Severity.Note],
        "The cone is steeper or slimmer than tradition has it.",
        "Included angle of the cone is {measured}; tradition has {minimum} to {maximum}.",
        "Check the measured sizes, and the socket against its maker's table.",
        Rules.ConeAngleLeast.Source, Rules.ConeAngleLeast, Rules.ConeAngleMost);

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All { get; } =
    [
        .. new[]
        {
            SteelAtDewPoint, SteelNearDewPoint, OutsidePouringRange, PotLifeTooShort, LotExpired, WiresDoNotFit,
            RopeDoesNotEnter, VapourAboveLaw, VapourAboveRecommended, ReadingMissing, PourTimeMissing, SheetSilent, DoseUnknown,
            GelTimeUnknown, RopeAreaUnknown, WireFitUnknown, LotExpiryMissing, BudgetSpent, DoseEdge, GelTimeExtrapolated,
            GelTimeFromOnePoint, StockShort, StockDoesNotDivide, VapourMayExceedLaw, Outdoors, ConfinedSpace, RopeIdentityMissing, FitDependsOnTolerance, RopeLoose,
            SocketWeaker, SocketStrengthMissing, ExpiryBeyondShelfLife, Demonstration, HighGrade, RopeFactMissing, Stainless, RoomMissing,
            VapourNotComputed, BasketShort, ConeAngleUnusual,
        }.OrderBy(definition => definition.Code, StringComparer.Ordinal),
    ];

    private static FindingDefinition Stop(string code, string meaning, string message, string action, Source source, params RuleLimit[] limits) =>
        Define(code, [Severity.Stop], meaning, message, action, source, limits);

    private static FindingDefinition Unknown(string code, string meaning, string message, string action) =>
        Define(code, [Severity.Unknown], meaning, message, action, Prudence);

    private static FindingDefinition Define(string code, Severity[] severities, string meaning, string message, string action,
        Source source, params RuleLimit[] limits) =>
        new(code, severities, meaning, message, action, source, limits);
}
