using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Matching;

/// <content>Findings of the duty.</content>
public static partial class MatchingFindings
{
    public static FindingDefinition DutyMissing { get; } = Unknown("duty-missing", "2026-12", Actor.Office,
        "What the end is for decides its design factor and its law.",
        "The duty is not given.",
        "Say what the end is for; for a duty that isn't listed give other and its design factor.");

    public static FindingDefinition DesignFactorMissing { get; } = Unknown("design-factor-missing", "2026-12", Actor.Office,
        "Without a design factor there is no working load limit.",
        "No design factor is given, and the rules have none for this duty.",
        "Give the design factor that the code of the machine asks for.");

    public static FindingDefinition DesignFactorFromMemory { get; } = Caution("design-factor-from-memory", "2026-12", Actor.Office,
        "The design factor is the one that a document named here is remembered to have.",
        "The design factor {measured} is taken from memory of {document}.",
        "Read the code that holds for the machine, and give its design factor.",
        new("the document that the limit names", "", Basis.FromMemory), rules =>
            [.. rules.Matching.Duties.Select(duty => duty.DesignFactor!)]);

    public static FindingDefinition DesignFactorBelowRule { get; } = Unknown("design-factor-below-rule", "2026-12", Actor.Office,
        "The request's design factor is below the one that the rules remember for the duty: whether less is allowed, nobody knows.",
        "Design factor {measured}; {document} is remembered to have {limit}.",
        "Read the code that holds for the machine, and have a competent person say which factor holds, before anything is made for this "
            + "load.",
        rules => [.. rules.Matching.Duties.Select(duty => duty.DesignFactor!)]);

    public static FindingDefinition DesignFactorBelowLaw { get; } = Define("design-factor-below-law", "2026-12", Actor.Office,
        [Severity.Stop, Severity.Unknown],
        "A law asks for a larger design factor, for rotation resistant hoist rope or for what hangs persons. Undetermined where that "
            + "hangs on a fact that nobody gave.",
        "Design factor {measured}; {document}, {clause}, asks for {limit}: {why}.",
        "Take a stronger rope or less load. Where the clause has an exception, have a competent person read it, and send the fact that it "
            + "hangs on.",
        Stated, rules => [rules.Matching.RotationResistantLeast, rules.Matching.RotationResistant, rules.Matching.Persons,
            rules.Matching.PersonsRotationResistant, rules.Matching.PersonsElsewhere, rules.Matching.PersonsElsewhereRotationResistant]);

    public static FindingDefinition LoadAboveLimit { get; } = Define("load-above-working-limit", "2026-12", Actor.Office,
        [Severity.Stop, Severity.Unknown],
        "The load of the duty is above what rope, end and design factor allow: a stop with the request's own factor or a law's, "
            + "undetermined with one that is only remembered.",
        "The load of {measured} is above the working load limit of {limit}.",
        "Take a stronger rope and socket, or less load; or give the design factor that the code of the machine asks for.",
        Stated, rules => [.. rules.Matching.Duties.Select(duty => duty.DesignFactor!), rules.Matching.RotationResistant,
            rules.Matching.Persons, rules.Matching.PersonsRotationResistant,
            rules.Matching.PersonsElsewhere, rules.Matching.PersonsElsewhereRotationResistant]);

    public static FindingDefinition LoadAboveRating { get; } = Stop("load-above-socket-rating", "2026-12", Actor.Office,
        "The load is above the rated load of the socket.",
        "The load of {measured} is above the socket's rated load of {limit}.",
        "Take a socket that is rated for the load.",
        new("the socket maker's rating, as the request states it", "ratedLoad", Basis.DataSheet));

    public static FindingDefinition EfficiencyNotTested { get; } = Note("efficiency-not-tested", "2026-12", Actor.Office,
        "An end holds the whole strength of the rope only as a system of rope, socket and compound that was type tested.",
        "The efficiency of {measured} holds for a type-tested system; nobody says that this one is. Tests in the open literature fell up "
            + "to half short.",
        "Ask the compound's maker for the type test with such a rope and socket.",
        limits: rules => [rules.Matching.Efficiency]);

    public static FindingDefinition LiftProportions { get; } = Caution("lift-proportions", "2026-12", Actor.Lead,
        "A lift's tapered socket has proportions of its own.",
        "{what} is {measured}; for a lift it is {word} {limit}.",
        "Check the socket against the code of the lift.",
        limits: rules => [rules.Matching.LiftTaperLength, rules.Matching.LiftSmallEndExcess, rules.Matching.LiftMouthLeast,
            rules.Matching.LiftMouthMost]);
}
