using CalcService.Engine.Findings;

namespace CalcService.Engine.Audits;

/// <summary>Cautions that are said with every audit.</summary>
public static class AuditNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides,
        new("paper-only", "An audit reads the record, not the end. A record in order does not replace looking at the end."),
        new("record-as-found",
        "What the record lacks is looked up and entered with name and date; nobody fills it in from memory of how it usually is."),
        SafetyNote.TestLoad,
    ];
}
