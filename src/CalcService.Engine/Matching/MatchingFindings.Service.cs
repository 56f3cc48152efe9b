using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Matching;

/// <content>Findings of service and preparation.</content>
public static partial class MatchingFindings
{
    public static FindingDefinition ServiceTemperatureMissing { get; } = Unknown("service-temperature-missing", "2026-12", Actor.Office,
        "Whether the compound stands its service can't be said without the temperatures.",
        "The {which} service temperature is not given.",
        "Give the coldest and the warmest that the socket will be.");

    public static FindingDefinition ServiceOutsideSheet { get; } = Stop("service-outside-sheet", "2026-12", Actor.Office,
        "The socket gets colder or warmer than the compound's sheet allows.",
        "Service at {measured} is outside the sheet's {minimum} to {maximum}.",
        "Take a compound whose sheet covers the service.",
        Source.DataSheet("service"));

    public static FindingDefinition ServiceBeyondOldStandard { get; } = Note("service-beyond-older-standard", "2026-12", Actor.Office,
        "The sheet covers the service, but an older standard for resin sockets had a narrower range.",
        "Service at {measured} is beyond {limit}, the limit of an older standard.",
        "The compound's sheet governs; make sure that it is the sheet of the compound in hand.",
        limits: rules => [rules.Matching.ServiceLowest, rules.Matching.ServiceHighest]);

    public static FindingDefinition SurroundingsNotGiven { get; } = Caution("surroundings-not-given", "2026-12", Actor.Office,
        "Oils, solvents, acids or alkalis can attack a set compound.",
        "Nobody says what the socket meets in service.",
        "List the substances, or an empty list where there are none.",
        Source.CommonPractice);

    public static FindingDefinition ChemicalUnknown { get; } = Unknown("chemical-not-on-sheet", "2026-12", Actor.Office,
        "The sheet doesn't say what a substance does to the compound.",
        "The sheet says nothing about {substance}.",
        "Ask the compound's maker.");

    public static FindingDefinition ChemicalLimited { get; } = Caution("chemical-limited", "2026-12", Actor.Office,
        "The compound stands a substance only for a while, or in part.",
        "The compound resists {substance} to a limited degree.",
        "Ask the compound's maker how long; seal the mouth and inspect more often.",
        Source.DataSheet("chemicals"));

    public static FindingDefinition ChemicalAttacks { get; } = Stop("chemical-attacks", "2026-12", Actor.Office,
        "The compound is attacked by a substance that the socket meets.",
        "The compound is attacked by {substance}.",
        "Take another compound, or keep the substance away.",
        Source.DataSheet("chemicals"));
}
