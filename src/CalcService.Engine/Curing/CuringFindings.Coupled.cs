using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Curing;

/// <content>Findings of the cone's own heat.</content>
public static partial class CuringFindings
{
    public static FindingDefinition PeakAboveSheet { get; } = Stop("peak-above-sheet", "2026-12", Actor.Lead,
        "The cone gets hotter than the sheet allows while it cures.",
        "{end} reaches {measured}; the sheet allows {limit}.",
        "Pour cooler compound or in cooler air, or take a compound that is made for so large a cone.",
        Source.DataSheet("peakLimit"));

    public static FindingDefinition PeakUpperEstimate { get; } = Note("peak-upper-estimate", "2026-12", Actor.Lead,
        "The computed peak is above what the compound reaches when it keeps all its heat: fronts of cure run into each other there, "
            + "thinner than the grid. It is no lower than the true one; the times are not touched by it.",
        "The peak of {measured} in {end} is an upper estimate.",
        "Judge by it; where that stops the pour, cool compound or steel, or ask the compound's maker.",
        Model);
}
