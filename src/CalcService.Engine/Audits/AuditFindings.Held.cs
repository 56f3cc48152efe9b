using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Audits;

/// <content>Findings of what the record holds, and of people.</content>
public static partial class AuditFindings
{
    public static FindingDefinition FactMissing { get; } = Define("record-fact-missing", "2026-12", Actor.Office,
        [Severity.Unknown, Severity.Caution],
        "The record doesn't hold facts without which nobody can rebuild the decision that the end is safe. A caution where the work lies "
            + "ahead.",
        "The record doesn't give {what}.",
        "Look each of them up where it was first written down; where it can't be found any more, the end is looked at, loaded or made "
            + "again as a competent person decides.",
        Prudence);

    public static FindingDefinition TrailMissing { get; } = Caution("record-trail-missing", "2026-12", Actor.Office,
        "The record doesn't hold what lets others trace the end, its parts or the people who made it.",
        "The record doesn't give {what}.",
        "Enter it from the certificate or the list of the crew, with name and date of the entry.",
        Source.CommonPractice);

    public static FindingDefinition TimesContradict { get; } = Unknown("record-times-contradict", "2026-12", Actor.Inspector,
        "Two times of the record can't both be true, so neither proves anything.",
        "The record has {later} before {earlier}.",
        "Ask who wrote them down which is wrong; correct it with name and date.",
        Record("order of times"));

    public static FindingDefinition TimeAfterAudit { get; } = Unknown("record-time-after-audit", "2026-12", Actor.Inspector,
        "The record tells of something that had not happened yet when it was audited.",
        "The record has {what} after the day of the audit.",
        "Correct the time or the day of the audit.",
        Record("order of times"));

    public static FindingDefinition LookFailed { get; } = Stop("look-failed", "2026-12", Actor.Inspector,
        "Somebody looked at the work and found it not in order.",
        "The look at {what} found it not in order.",
        "Take the end out of use until a competent person has decided; work done again gets its own record.",
        Record("looks"));

    public static FindingDefinition QualificationExpired { get; } = Caution("qualification-expired", "2026-12", Actor.Office,
        "Somebody worked after the last day of the qualification that the record gives.",
        "The qualification of {who} was good until {until}, {days} day(s) before the work.",
        "Find the newer certificate. Where there is none, somebody qualified looks at what was done.",
        Source.CommonPractice);
}
