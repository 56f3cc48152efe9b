using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Compounds;

/// <summary>Findings of steel that is wet, or nearly so, that mean the same in every calculation.</summary>
public static class SteelFindings
{
    public static FindingDefinition SteelAtDewPoint { get; } = Define("steel-at-dew-point", "2026-12", Actor.Crew, [Severity.Stop],
        "The steel is at or below the temperature at which water or frost settles on it.",
        "{reading} at {measured} is not above the {point} of {limit}: the steel is wet or frosted.",
        "Warm the steel and dry wires and basket; do not pour on wet steel.",
        new("WMO-No. 8, Guide to Instruments and Methods of Observation", "Annex 4.B", Basis.Published));

    public static FindingDefinition SteelNearDewPoint { get; } = Define("steel-near-dew-point", "2026-12", Actor.Crew, [Severity.Caution],
        "The steel is so little above the dew point that a small change wets it.",
        "{reading} is {measured} above the {point}; at least {limit} is asked for.",
        "Warm the steel or dry the air; read both again right before the pour.",
        limits: rules => [rules.Pouring.DewMargin]);

}
