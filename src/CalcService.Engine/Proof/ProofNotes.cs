using CalcService.Engine.Findings;

namespace CalcService.Engine.Proof;

/// <summary>Cautions that are said with every evaluation.</summary>
public static class ProofNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides, SafetyNote.TestLoad,
        new("measured-before-loading",
        "A release time from a forecast alone is a plan: measured steel temperatures and hardness come before loading."),
        new("model", "The seating that is expected comes from a model that was held against other models, not against pull tests. It "
            + "guides; it proves nothing."),
    ];
}
