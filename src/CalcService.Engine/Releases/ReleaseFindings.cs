using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Releases;

/// <summary>Findings of a release that mean the same wherever it is computed.</summary>
public static class ReleaseFindings
{
    public static FindingDefinition BelowLowestCure { get; } = Define("below-lowest-cure", "2026-12", Actor.Lead,
        [Severity.Unknown, Severity.Caution],
        "Before full strength it gets colder than the compound cures at: it turns to glass half cured, and time alone doesn't help. Its "
            + "time stands still meanwhile. A caution where the steel was measured until the release.",
        "Before full strength it gets {measured}; below {limit} the compound does not cure.",
        "Keep cone and socket warmer until full strength; load only after the hardness at the lip has been read.",
        Source.DataSheet("lowestCure"));

    public static FindingDefinition Extrapolated { get; } = Caution("full-strength-extrapolated", "2026-12", Actor.Lead,
        "The time to full strength is read at a temperature for which the sheet has no row near by.",
        "Until full strength it gets {measured}; the sheet's time to full strength is stated at {limit}.",
        "Ask the compound's maker for the time at that temperature; load only after the hardness at the lip has been read.",
        Source.DataSheet("fullStrength"));

    public static FindingDefinition OfOtherDose { get; } = Caution("full-strength-of-other-dose", "2026-12", Actor.Lead,
        "The sheet states no time to full strength for the dose in use; the longest of all is taken.",
        "The sheet has no time to full strength for {doses} dose(s) a kit; its longest one is taken.",
        "Ask the compound's maker for the time with this dose.",
        Source.DataSheet("fullStrength"));

    public static FindingDefinition ByOwnHeat { get; } = Caution("release-by-own-heat", "2026-12", Actor.Lead,
        "The sheet's samples were held at their temperature, so that the cone's own heat may count: the release rests on a computed "
            + "temperature.",
        "By its own heat the cone is released {measured} after mixing; the sheet's time without it ends after {limit}.",
        "Read the hardness at the lip before any load; without it wait for the sheet's time.",
        new("a release on a computed temperature", "/docs/release", Basis.Derived));

    public static FindingDefinition HardnessAsked { get; } = Note("hardness-before-load", "2026-12", Actor.Crew,
        "The sheet asks for a hardness. No time stands in for it: it is read at the lip before any load.",
        "Before any load the hardness at the lip has to be {limit} or more by the sheet's method, {method}.",
        "Read it where the seal is off, and write it down.",
        Source.DataSheet("hardness"));

    /// <summary>All that hang on temperatures and rows.</summary>
    public static IReadOnlyList<FindingDefinition> All => [BelowLowestCure, Extrapolated, OfOtherDose, ByOwnHeat];
}
