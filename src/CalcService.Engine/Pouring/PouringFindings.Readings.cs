using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of the day's readings.</content>
public static partial class PouringFindings
{
    public static FindingDefinition ReadAgain { get; } = Note("read-again-during-pour", "2026-12", Actor.Crew,
        "The last mix starts after the readings have ceased to hold.",
        "Mix {mix} starts at {startsAt}; the readings hold until {validUntil}.",
        "Read air, steel, compound and humidity again before the mixes that start later, and plan the rest again.",
        limits: rules => [rules.Pouring.ReadingsValidFor]);
}
