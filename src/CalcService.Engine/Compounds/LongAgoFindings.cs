using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Compounds;

/// <summary>What was read, cleaned or issued so long before the pour that it may not hold any more: the same in plan and record.</summary>
public static class LongAgoFindings
{
    public static FindingDefinition ReadingsOld { get; } = Caution("readings-old", "2026-12", Actor.Crew,
        "Readings were taken so long before the pour that they may not hold any more.",
        "Read {measured} before the pour; a reading holds {limit}.",
        "Read air, steel, compound and humidity again right before mixing, and plan again.",
        limits: rules => [rules.Pouring.ReadingsValidFor]);

    public static FindingDefinition BroomDriedLongAgo { get; } = Caution("broom-dried-long-ago", "2026-12", Actor.Crew,
        "The broom was cleaned and dried so long before the pour that dust, damp or rust may have settled on the wires.",
        "The broom was dry {measured} before the pour; at most {limit} is asked for.",
        "Clean and dry it again right before the pour.",
        limits: rules => [rules.Pouring.Fit.DriedFor]);

    public static FindingDefinition SheetOld { get; } = Caution("sheet-old", "2026-12", Actor.Office,
        "The data sheet was issued long ago; a newer edition may say otherwise.",
        "The sheet was issued on {issuedOn}; one older than {limit} is asked for again.",
        "Ask the compound's maker whether this edition still holds.",
        limits: rules => [rules.Pouring.SheetAge]);
}
