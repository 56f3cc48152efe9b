using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Curing;

/// <content>Findings of the shop's tasks.</content>
public static partial class CuringFindings
{
    public static FindingDefinition ShopDoesNotFinish { get; } = Unknown("shop-does-not-finish", "2026-12", Actor.Lead,
        "No schedule was found that takes every end to its record inside the shifts, with pours only where the air stays in the pouring "
            + "range, asks for the same dose and is known until full strength.",
        "Within the shifts given no schedule was found for all ends.",
        "Give more shifts, people or stands, a longer forecast, or fewer ends.",
        Model);

    public static FindingDefinition PourTimeNotStated { get; } = Caution("pour-time-not-stated", "2026-12", Actor.Crew,
        "Without the time from mixing until the last basket is full nobody knows whether the compound gels while it is poured.",
        "It is not said how long the pour takes.",
        "Give pourTime; keep it inside the pot life.",
        Model);

    public static FindingDefinition PourTimeUnknown { get; } = Unknown("mix-and-pour-time-unknown", "2026-12", Actor.Lead,
        "Without the time from mixing until the basket is full no tasks can be scheduled.",
        "Neither the pour time nor the sheet's mixing time is given.",
        "Give pourTime.",
        Model);
}
