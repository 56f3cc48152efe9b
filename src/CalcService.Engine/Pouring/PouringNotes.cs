using CalcService.Engine.Findings;

namespace CalcService.Engine.Pouring;

/// <summary>Cautions that are said with every pour plan.</summary>
public static class PouringNotes
{
    public static IReadOnlyList<SafetyNote> All { get; } =
    [
        SafetyNote.WhoDecides,
        new("mixing-order",
        "Stir the dose into the resin before the hardener goes in. Peroxide and accelerator never meet undiluted: they can explode."),
        new("whole-kits", "Mix whole kits only. Never split a kit, never top up compound that has set."),
        new("protect-people", "Eye and skin protection on; breathe no vapour; no flame, spark or hot surface near open compound."),
        new("left-over", "Leave left-over mix in a thin layer, without a lid, away from anything that burns: in bulk it heats up."),
        new("match", "This plan does not judge whether socket and rope suit their duty."),
        SafetyNote.TestLoad,
    ];
}
