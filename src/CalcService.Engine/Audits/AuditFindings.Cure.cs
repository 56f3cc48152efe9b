using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Audits;

/// <content>Findings of gel, cure and release.</content>
public static partial class AuditFindings
{
    public static FindingDefinition MovedEarly { get; } = Stop("moved-before-gel", "2026-12", Actor.Inspector,
        "The end was moved before its cone had gelled, or before the hold after it that the sheet asks for: the wires are no longer where "
            + "they were poured.",
        "The end was moved {measured} after mixing; until {limit} it had to rest.",
        "Take the end out of use. A competent person decides; an end that was moved before it gelled is made again.",
        Record("release"));

    public static FindingDefinition LoadedEarly { get; } = Define("loaded-before-cured", "2026-12", Actor.Inspector,
        [Severity.Stop, Severity.Unknown],
        "The end was released, loaded or put to service before its release. Unknown where that rests on a time read beyond the sheet's "
            + "rows, and the sheet's own shortest time had passed.",
        "The end was {what} too early: {measured} after mixing, before its release.",
        "Unload it. A competent person decides whether it is proof loaded again or made again.",
        Record("release"));

    public static FindingDefinition BeforeSeenGel { get; } = Stop("before-seen-gel", "2026-12", Actor.Inspector,
        "The end was moved or loaded before anybody saw its compound gelled: the wires are no longer where they were poured. It takes no "
            + "temperature to know.",
        "The end was {what} before the gel was seen.",
        "Take the end out of use. A competent person decides; an end that was moved before it gelled is made again.",
        Record("release"));

    public static FindingDefinition CureNotFollowed { get; } = Unknown("cure-not-followed", "2026-12", Actor.Inspector,
        "The recorded air doesn't reach from mixing to the load, so nobody knows whether the compound had its strength.",
        "The recorded air doesn't tell when the compound had its full strength.",
        "Send the air from mixing until the end was released.",
        Prudence);

    public static FindingDefinition AirAssumed { get; } = Caution("air-during-cure-assumed", "2026-12", Actor.Inspector,
        "One air temperature is all there is: a night that was colder made the cure take longer.",
        "The record has no air temperatures between mixing and release; the air is taken to have stayed as it was.",
        "Send the air over the cure, or go by hardness at the lip.",
        Record("release"));
}
