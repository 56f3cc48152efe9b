using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <content>Findings of dose, gel time and pot life.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> DoseAndGel =>
    [
        DoseUnknown, DoseEdge, DoseUncertain, GelTimeUnknown, GelTimeExtrapolated, GelTimeFromOnePoint, PourTimeMissing,
        PotLifeTooShort, MixLargerThanMeasured,
    ];

    public static FindingDefinition DoseUnknown { get; } = Unknown("dose-unknown",
        "The sheet has no dose band for the temperature that decides.",
        "No dose band of the sheet covers {measured}.",
        "Ask the compound's maker for the dose at this temperature.");

    public static FindingDefinition DoseUncertain { get; } = Define("dose-uncertain", [Severity.Caution],
        "The uncertainty of the reading reaches over the edge of a dose band.",
        "Read as {measured}, give or take {limit}: the dose is {lowDoses} for each kit at the cold end and {highDoses} at the warm end.",
        "Read again with a better instrument, or bring air and steel away from the edge.",
        Source.DataSheet("doses"));

    public static FindingDefinition DoseEdge { get; } = Define("dose-edge", [Severity.Caution],
        "Air and steel lie in different dose bands of the sheet.",
        "By the steel the dose is {steelDoses} for each kit, by the air {airDoses}; the colder one decided.",
        "Bring air and steel closer together, and read both again right before mixing.",
        Source.DataSheet("doses"));

    public static FindingDefinition GelTimeUnknown { get; } = Unknown("gel-time-unknown",
        "The sheet has no gel time for the dose that the temperature asks for.",
        "The sheet has no gel time for {doses} doses a kit.",
        "Ask the compound's maker for gel times with this dose.");

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

    public static FindingDefinition PourTimeMissing { get; } = Unknown("pour-time-missing",
        "Without the time to fill a basket nobody knows whether the pot life is enough.",
        "The time to fill one basket is not given.",
        "Give crew.pourTime.");

    public static FindingDefinition PotLifeTooShort { get; } = Stop("pot-life-too-short",
        "Mixing the kits for one basket and filling it takes longer than the compound can be used.",
        "Mixing {kits} kit(s) and filling one basket of {end} takes {measured}; the pot life is {limit}.",
        "Use cooler compound, larger kits or more mixers side by side, or shorten the fill. Do not pour compound that thickens.",
        Source.DataSheet("potLife"));

    public static FindingDefinition MixLargerThanMeasured { get; } = Define("mix-larger-than-measured", [Severity.Caution],
        "A mix is larger than the volume for which the sheet states its pot life: it warms itself more and gels sooner.",
        "Mix {mix} holds {measured}; the sheet's pot life is for {limit}.",
        "Make smaller mixes, or pour a large one out of the vessel at once.",
        Source.DataSheet("potLifeVolume"));
}
