using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Findings about the compound that mean the same in every room.</summary>
public static class CompoundFindings
{
    public static FindingDefinition SheetSilent { get; } = new("sheet-silent", [Severity.Unknown],
        "The data sheet doesn't state what a safety rule needs.",
        "The sheet gives no {what}.",
        "Take it from the compound's data sheet, or ask its maker.",
        new("a safety rule needs this fact and nobody gave it", "docs/pour-plans.md", Basis.Derived), []);

    public static FindingDefinition Demonstration { get; } = new("compound-demonstration", [Severity.Caution],
        "The compound is invented, for demonstration only.",
        "The compound is the invented demonstration: no number here is fit for a real pour.",
        "Send the data sheet of the compound in hand.",
        new("the compound's sheet says so", "demonstration", Basis.Derived), []);
}
