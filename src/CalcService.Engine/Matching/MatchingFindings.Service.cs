using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Matching;

/// <content>Findings of service and preparation.</content>
public static partial class MatchingFindings
{
    private static IReadOnlyList<FindingDefinition> Service =>
    [
        ServiceTemperatureMissing, ServiceOutsideSheet, ServiceBeyondOldStandard, SurroundingsNotGiven, ChemicalUnknown, ChemicalLimited, ChemicalAttacks,
        CoreLeftIn, PlasticLeftIn, WrongCleaner,
    ];

    public static FindingDefinition ServiceTemperatureMissing { get; } = Unknown("service-temperature-missing",
        "Whether the compound stands its service can't be said without the temperatures.",
        "The {which} service temperature is not given.",
        "Give the coldest and the warmest that the socket will be.");

    public static FindingDefinition ServiceOutsideSheet { get; } = Stop("service-outside-sheet",
        "The socket gets colder or warmer than the compound's sheet allows.",
        "Service at {measured} is outside the sheet's {minimum} to {maximum}.",
        "Take a compound whose sheet covers the service.",
        Source.DataSheet("service"));

    public static FindingDefinition ServiceBeyondOldStandard { get; } = Note("service-beyond-older-standard",
        "The sheet covers the service, but an older standard for resin sockets had a narrower range.",
        "Service at {measured} is beyond {limit}, the limit of an older standard.",
        "The compound's sheet governs; make sure that it is the sheet of the compound in hand.",
        Rules.ServiceLowest.Source, Rules.ServiceLowest, Rules.ServiceHighest);

    public static FindingDefinition SurroundingsNotGiven { get; } = Caution("surroundings-not-given",
        "Oils, solvents, acids or alkalis can attack a set compound.",
        "Nobody says what the socket meets in service.",
        "List the substances, or an empty list where there are none.",
        Source.CommonPractice);

    public static FindingDefinition ChemicalUnknown { get; } = Unknown("chemical-not-on-sheet",
        "The sheet doesn't say what a substance does to the compound.",
        "The sheet says nothing about {substance}.",
        "Ask the compound's maker.");

    public static FindingDefinition ChemicalLimited { get; } = Caution("chemical-limited",
        "The compound stands a substance only for a while, or in part.",
        "The compound resists {substance} to a limited degree.",
        "Ask the compound's maker how long; seal the mouth and inspect more often.",
        Source.DataSheet("chemicals"));

    public static FindingDefinition ChemicalAttacks { get; } = Stop("chemical-attacks",
        "The compound is attacked by a substance that the socket meets.",
        "The compound is attacked by {substance}.",
        "Take another compound, or keep the substance away.",
        Source.DataSheet("chemicals"));

    public static FindingDefinition CoreLeftIn { get; } = Stop("core-left-in",
        "A fibre core that stays in the broom leaves a soft place where the grip is needed.",
        "The fibre core is not cut out of the broom.",
        "Cut the fibre core out to the seizing.",
        new("ISO 17558", "4.5", Basis.Published));

    public static FindingDefinition PlasticLeftIn { get; } = Stop("plastic-left-in",
        "Plastic between wires and compound takes the grip away.",
        "Plastic filling or sheathing stays in the broom.",
        "Remove all plastic from the broom down to the seizing.",
        new("compound grips only clean wire", "docs/termination-matches.md", Basis.Derived));

    public static FindingDefinition WrongCleaner { get; } = Stop("acid-or-flux",
        "Acid and flux belong to zinc. With resin they stay on the wires and spoil the bond.",
        "The broom is to be cleaned with {what}.",
        "Clean with fresh solvent for each end and let it dry.",
        new("API RP 9B", "resin sockets: no acid, no flux", Basis.Published));
}
