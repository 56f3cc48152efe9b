using CalcService.Engine.Findings;

namespace CalcService.Engine.Verifications;

/// <summary>Cautions that are said with every verification.</summary>
public static class VerificationNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        new("arithmetic-only",
            "A match says that the archived answer follows from the archived request. "
            + "Whether the request told the truth about rope, socket and compound it doesn't say."),
        new("origin-not-proven", "Nor does it say who gave the answer, or when: whoever has the request can make both."),
    ];
}
