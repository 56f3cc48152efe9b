using CalcService.Engine.Findings;

namespace CalcService.Engine.Reuse;

/// <summary>Cautions that are said with every assessment.</summary>
public static class ReuseNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        new("who-decides", "The socket maker's instructions, local codes and a competent person stand above this answer."),
        new("no-repair", "A socket is never welded, straightened, heated or ground to bring it back. A crack is never worked away."),
        new("mark-it", "A socket that is set aside or withdrawn is marked at once, so that nobody pours it by mistake."),
        new("match-next",
        "A sound socket still has to be matched with its rope, and its bore has to be clean bare metal on the day of the pour."),
        SafetyNote.TestLoad,
    ];
}
