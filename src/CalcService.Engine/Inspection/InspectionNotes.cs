using CalcService.Engine.Findings;

namespace CalcService.Engine.Inspection;

/// <summary>Cautions that are said with every inspection.</summary>
public static class InspectionNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides,
        new("inside-unseen",
        "What goes on inside the socket is not seen: broken wires at its mouth, rust and movement are the only signs."),
        new("law-of-the-place", "The limits are those of the rule set that was named. Whether it holds for this machine and place is for "
            + "a competent person to say."),
        new("look-first", "Take the load off before hands or eyes go near the end, and clean it before it is judged."),
    ];
}
