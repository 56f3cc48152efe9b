using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Compounds;

/// <summary>Findings of the dose that mean the same in every calculation that holds one against the sheet.</summary>
public static class DoseFindings
{
    public static FindingDefinition DoseAboveMaximum { get; } = Stop("dose-above-maximum", "2026-12", Actor.Lead,
        "A dose is above the most that the sheet allows: the compound gels early, runs hot and may crack.",
        "{measured} dose(s) a kit; the sheet allows {limit}.",
        "Give no more than the sheet allows; warm the steel instead.",
        Source.DataSheet("maximumDoses"));

    public static FindingDefinition DoseAfterHardener { get; } = Stop("dose-after-hardener", "2026-12", Actor.Crew,
        "The dose goes into the resin and is stirred in before the hardener. Peroxide and accelerator together undiluted react violently.",
        "The dose goes in after the hardener.",
        "Stir the dose into the resin first. Throw a mix away that got it too late; an end that was poured from it is made again.",
        new("peroxide and accelerator react with each other", "/docs/pour-plans", Basis.Derived));
}
