using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Compounds;

/// <summary>Findings about the compound and the readings that mean the same in every calculation.</summary>
public static class CompoundFindings
{
    public static FindingDefinition OutsidePouringRange { get; } = Stop("outside-pouring-range", "2026-12", Actor.Lead,
        "A temperature lies outside the pouring range of the sheet, which holds for air, steel, wires and compound each.",
        "{reading} at {measured} is outside the sheet's pouring range of {minimum} to {maximum}.",
        "Warm or cool what is outside the range, or wait.",
        Source.DataSheet("pouring"));

    public static FindingDefinition ReadingMissing { get; } = Unknown("reading-missing", "2026-12", Actor.Crew,
        "A reading that a safety rule needs is missing. It is never taken from another reading.",
        "Not given: {reading}.",
        "Read it and send it.");

    public static FindingDefinition SheetSilent { get; } = Unknown("sheet-silent", "2026-12", Actor.Lead,
        "The data sheet doesn't state what a safety rule needs.",
        "The sheet gives no {what}.",
        "Take it from the compound's data sheet, or ask its maker.");

    public static FindingDefinition Demonstration { get; } = Caution("compound-demonstration", "2026-12", Actor.Lead,
        "The compound is invented, for demonstration only.",
        "The compound is the invented demonstration: no number here is fit for a real pour.",
        "Send the data sheet of the compound in hand.",
        new("the compound's sheet says so", "demonstration", Basis.Derived));

    public static FindingDefinition DoseUnknown { get; } = Unknown("dose-unknown", "2026-12", Actor.Lead,
        "The sheet has no dose band for the temperature that decides.",
        "No dose band of the sheet covers {measured}.",
        "Ask the compound's maker for the dose at this temperature.");

    public static FindingDefinition DoseContradictsSheet { get; } = Stop("dose-contradicts-sheet", "2026-12", Actor.Lead,
        "The dose that was given, or is meant to be, is another than the sheet has for the temperature that decides.",
        "{measured} dose(s) a kit given or meant; the sheet has {limit} for the temperature that decides.",
        "Before mixing, give the dose of the sheet, or bring air and steel to a temperature that the meant dose is for. A mix with "
            + "another dose is not poured; an end that was is for a competent person to decide.",
        Source.DataSheet("doses"));

    public static FindingDefinition GelTimeUnknown { get; } = Unknown("gel-time-unknown", "2026-12", Actor.Lead,
        "The sheet has no gel time for the dose that the temperature asks for.",
        "The sheet has no gel time for {doses} dose(s) a kit.",
        "Ask the compound's maker for gel times with this dose.");

    public static FindingDefinition GelTimeExtrapolated { get; } = Caution("gel-time-extrapolated", "2026-12", Actor.Lead,
        "A gel time lies outside the temperatures at which the sheet measured it.",
        "Gel time at {measured} lies outside the {minimum} to {maximum} that the sheet measured for this dose.",
        "Treat gel time and pot life as a guess: mix a witness sample first.",
        Source.DataSheet("gelTimes"));

    public static FindingDefinition GelTimeFromOnePoint { get; } = Caution("gel-time-from-one-point", "2026-12", Actor.Lead,
        "The sheet has one gel time for this dose, so the effect of temperature is assumed in a band.",
        "One gel time for this dose: an activation energy of {low} to {high} is assumed.",
        "Mix a witness sample first and time it.",
        limits: rules => [rules.Pouring.AssumedActivationEnergy.Low, rules.Pouring.AssumedActivationEnergy.Expected,
            rules.Pouring.AssumedActivationEnergy.High]);

    public static FindingDefinition GelOutOfFamily { get; } = Caution("gel-out-of-family", "2026-12", Actor.Lead,
        "A gel came so much sooner or later than the sheet's that the lot, its dose or its mixing has to be doubted.",
        "{end} was seen gelled {measured} after mixing; {limit} was to be expected.",
        "Set the lot aside, check dose and mixing, and go by hardness before any load.",
        limits: rules => [rules.Curing.LotSpread, rules.Curing.ObservationSpread, rules.Curing.OutOfFamily]);

    public static FindingDefinition GelSeenInCup { get; } = Caution("gel-seen-in-cup", "2026-12", Actor.Crew,
        "A gel seen in a cup or in the vessel says little about the cone: the mix warms itself, the cone is cooled by its steel. It can "
            + "make times later only.",
        "The gel was seen in the {place}; it makes no time of the cone earlier.",
        "Go by a look at the cone itself, and by the times of this answer.",
        Source.CommonPractice);

    public static FindingDefinition GelPlaceUnknown { get; } = Caution("gel-place-unknown", "2026-12", Actor.Crew,
        "Nobody says where the gel was seen. It could be a cup's, which gels sooner than a cone, so it can make times later only.",
        "It is not said whether the gel was seen in the cone, at its mouth or in a cup.",
        "Give seenIn.",
        Source.CommonPractice);

    public static FindingDefinition PouredLate { get; } = Define("poured-beyond-pot-life", "2026-12", Actor.Lead,
        [Severity.Stop, Severity.Unknown],
        "A basket is not full yet when the pot life ends: compound that thickens doesn't flow between the wires. Unknown where the pot "
            + "life rests on a gel time read beyond the sheet's rows.",
        "The last basket is full {measured} after mixing; the pot life is {limit}.",
        "Before the pour: mix less at a time or fill faster. After it: take the end out of use until a competent person has decided; "
            + "where the pot life is certain, make it again.",
        Source.DataSheet("potLife"));

    public static FindingDefinition GelBeforePourEnds { get; } = Stop("gel-before-pour-ends", "2026-12", Actor.Lead,
        "The compound gelled, or can gel, while baskets are still being filled.",
        "The compound gels {measured} after mixing; the last basket is full after {limit}.",
        "Before the pour: mix less at a time, fill faster, or cool the compound. After it: take the end out of use and make it again.",
        new("compound that has gelled doesn't flow between the wires", "/docs/cure-schedules", Basis.Derived));

    private static Source Prudence => Source.NotGiven("/docs/pour-plans");

    private static FindingDefinition Unknown(string code, string since, Actor actor, string meaning, string message, string action) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence);
}
