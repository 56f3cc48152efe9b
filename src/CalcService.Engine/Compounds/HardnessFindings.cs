using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Compounds;

/// <summary>Findings of the hardness of the cured compound that mean the same before a load and in the record.</summary>
public static class HardnessFindings
{
    public static IReadOnlyList<FindingDefinition> All => [Low, NotAtLip];

    public static FindingDefinition Low { get; } = Stop("hardness-low", "2026-12", Actor.Crew,
        "The compound was softer than the sheet asks for.",
        "The hardness was {measured}; the sheet asks for {limit}.",
        "Nothing loads the end, and what hangs on it is taken off. Wait or warm it as the sheet allows, and read again.",
        Source.DataSheet("hardness"));

    public static FindingDefinition NotAtLip { get; } = Caution("hardness-not-at-lip", "2026-12", Actor.Crew,
        "The lip of the cone cures last and works hardest. Hardness at the mouth, or of a witness sample, proves nothing there.",
        "The hardness was not read at the lip.",
        "Read it at the lip where the seal is off; else go by the time that the cure takes in the cold.",
        Source.CommonPractice);
}
