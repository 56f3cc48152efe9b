using CalcService.Engine.Findings;

namespace CalcService.Engine.Audits;

/// <summary>Cautions that are said with every audit.</summary>
public static class AuditNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        new("who-decides", "The compound's data sheet, the rope and socket makers' instructions, local codes and a competent person stand above this answer."),
        new("paper-only", "An audit reads the record, not the end. A record in order does not replace looking at the end."),
        new("record-as-found", "What the record lacks is looked up and entered with name and date; nobody fills it in from memory of how it usually is."),
        new("test-load", "Nobody stands under or in line with a test load."),
    ];
}
