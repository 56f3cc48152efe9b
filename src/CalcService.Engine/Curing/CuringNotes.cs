using CalcService.Engine.Findings;

namespace CalcService.Engine.Curing;

/// <summary>Cautions that are said with every cure schedule.</summary>
public static class CuringNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides,
        new("release-is-a-plan",
        "A release time from a forecast is a plan: measure the steel's temperature meanwhile and the hardness before any load."),
        new("do-not-move", "Nobody moves the rope before the cone has gelled and its hold is over."),
        new("no-topping-up", "Never top up compound that has set."),
        SafetyNote.TestLoad,
        new("protect-people", "Curing compound gets hot and gives off vapour: no flame, spark or hot surface near it."),
    ];
}
