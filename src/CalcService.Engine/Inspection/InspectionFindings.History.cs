using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Inspection;

/// <content>Findings of sizes, heat, substances, time and evidence.</content>
public static partial class InspectionFindings
{
    public static FindingDefinition DiameterReduced { get; } = Stop("diameter-reduced", "2026-12", Actor.Inspector,
        "The rope has become thinner than its rule allows.",
        "The rope has lost {measured} of its diameter; {document} allows {limit}.",
        "Take the rope out of service.",
        OfTheLimit, rules => [rules.Inspection.NominalDiameterLoss, rules.Inspection.BaselineDiameterLoss]);

    public static FindingDefinition DiameterMissing { get; } = Unknown("diameter-not-measured", "2026-12", Actor.Inspector,
        "Loss of diameter can't be told without the diameter now and the one before.",
        "The {which} diameter is not given.",
        "Measure the rope, and take the baseline from its first record.",
        rules => [rules.Inspection.NominalDiameterLoss, rules.Inspection.BaselineDiameterLoss]);

    public static FindingDefinition DiameterImplausible { get; } = Unknown("diameter-implausible", "2026-12", Actor.Inspector,
        "A diameter that no rope of this size has, now or when new: a slip of the pen, another rope, or a rope that swells. What it has "
            + "lost can't be told from it.",
        "The {which} diameter of {measured} is not that of a rope of {nominal}: {limit} is as far as it goes.",
        "Measure again, over the crowns, and compare rope and record; until then leave the end unloaded.",
        rules => [rules.Pouring.Fit.Thinning, rules.Pouring.Fit.Thickening]);

    public static FindingDefinition StrengthLost { get; } = Stop("strength-lost", "2026-12", Actor.Inspector,
        "A nondestructive test found more loss of strength than the rule allows.",
        "The rope has lost {measured} of its strength; {document} allows {limit}.",
        "Take the rope out of service.",
        OfTheLimit, rules => [rules.Inspection.StrengthLoss]);

    public static FindingDefinition CompoundNotKnown { get; } = Caution("compound-not-known", "2026-12", Actor.Office,
        "Without the sheet of the compound in the socket, what it stands is taken from memory.",
        "The compound in the socket is not known.",
        "Look it up in the record of the end.",
        Source.CommonPractice);

    public static FindingDefinition HeatNotKnown { get; } = Unknown("highest-temperature-missing", "2026-12", Actor.Inspector,
        "Whether the compound was overheated can't be told.",
        "The highest temperature that the end has seen is not given.",
        "Give the highest temperature since it was socketed.",
        rules => [rules.Inspection.RememberedHighest]);

    public static FindingDefinition HotterThanSheet { get; } = Stop("overheated", "2026-12", Actor.Inspector,
        "The end was hotter than the compound's sheet allows.",
        "The end has seen {measured}; the sheet allows {limit}.",
        "Take the end out of service, cut it off and socket again; ask the compound's maker.",
        Source.DataSheet("service"));

    public static FindingDefinition HotterThanRemembered { get; } = Unknown("perhaps-overheated", "2026-12", Actor.Inspector,
        "The end was hotter than resin sockets are known to stand, and no sheet says otherwise: nobody knows whether the compound still "
            + "holds. Of a resin that nobody names only the lower range of an older standard is known.",
        "The end has seen {measured}; without the compound's sheet {limit} is known to be stood.",
        "Leave the end unloaded until the compound's sheet, or its maker, says that it stands this; without either, cut off and socket "
            + "again.",
        rules => [rules.Inspection.RememberedHighest, rules.Matching.ServiceHighest]);

    public static FindingDefinition ChemicalsNotTold { get; } = Caution("chemicals-not-told", "2026-12", Actor.Office,
        "Oils, solvents, acids or alkalis can attack a set compound.",
        "Nobody says what the end has met.",
        "List the substances, or an empty list where there were none.",
        Source.CommonPractice);

    public static FindingDefinition MetUnlisted { get; } = Unknown("met-unlisted-chemical", "2026-12", Actor.Inspector,
        "The end met a substance, and no sheet says what it does to the compound.",
        "No sheet says what {substance} does to the compound.",
        "Ask the compound's maker.");

    public static FindingDefinition MetLimited { get; } = Caution("met-limited-chemical", "2026-12", Actor.Inspector,
        "The end met a substance that the compound stands only for a while, or in part.",
        "The compound resists {substance} to a limited degree.",
        "Ask the compound's maker how long; look for softening at the mouth.",
        Source.DataSheet("chemicals"));

    public static FindingDefinition MetAttacking { get; } = Stop("met-attacking-chemical", "2026-12", Actor.Inspector,
        "The end met a substance that attacks the compound.",
        "The compound is attacked by {substance}.",
        "Take the end out of service, cut it off and socket again.",
        Source.DataSheet("chemicals"));

    public static FindingDefinition SocketingDateMissing { get; } = Unknown("socketing-date-missing", "2026-12", Actor.Inspector,
        "The rule set wants ends socketed again after a time, and nobody says when this one was made.",
        "The day of socketing is not given.",
        "Take it from the record of the end; without a record, socket again.",
        rules => [rules.Inspection.ResocketAfter]);

    public static FindingDefinition ResocketingOverdue { get; } = Stop("resocketing-overdue", "2026-12", Actor.Inspector,
        "The end is older than the rule set allows.",
        "The end was to be socketed again by {due}, {limit} after it was made.",
        "Cut it off and socket again.",
        limits: rules => [rules.Inspection.ResocketAfter]);
}
