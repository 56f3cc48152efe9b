using CalcService.Engine.Findings;

namespace CalcService.Engine.Matching;

/// <summary>Cautions that are said with every match.</summary>
public static class MatchingNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides,
        new("model", "Pressures and seating come from a model that was held against other models, not against pull tests. They guide; "
            + "they prove nothing."),
        new("code-of-the-machine",
        "The design factor is that of the code which holds for the machine and the place, whatever this answer counts with."),
        new("socket-sound", "A used socket is assessed on its own before it is matched: cracks, wear, old compound."),
        SafetyNote.TestLoad,
    ];
}
