using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Curing;

/// <content>Findings of temperatures ahead and time.</content>
public static partial class CuringFindings
{
    public static FindingDefinition ForecastMissesMixing { get; } = Unknown("forecast-misses-mixing", "2026-12", Actor.Lead,
        "The temperatures of the air begin after the mixing, or end before it. Nothing is read out of their ends.",
        "The air's temperature at the mixing is not among those given.",
        "Send temperatures from before the mixing until after full strength.",
        Model);

    public static FindingDefinition ForecastTooShort { get; } = Unknown("forecast-too-short", "2026-12", Actor.Lead,
        "The temperatures end before the cone has its full strength, so nobody knows when it has.",
        "The temperatures end {limit} after mixing; full strength comes later.",
        "Send a longer forecast, or measure on and ask again.",
        Model);

    public static FindingDefinition GelNotReached { get; } = Unknown("gel-not-reached", "2026-12", Actor.Lead,
        "Nothing gels, or need gel, within the temperatures given.",
        "Within {limit} of mixing the compound need not gel.",
        "Warm the work, or do not mix.",
        Model, rules => [rules.Curing.Horizon]);

    public static FindingDefinition FullStrengthNotReached { get; } = Unknown("full-strength-not-reached", "2026-12", Actor.Lead,
        "At a temperature that stays as it is, full strength is not reached as far ahead as is looked.",
        "Within {limit} of mixing the cone does not reach its full strength.",
        "Warm the work.",
        Model, rules => [rules.Curing.Horizon]);

    public static FindingDefinition ForecastLeavesPouringRange { get; } = Caution("forecast-leaves-pouring-range", "2026-12", Actor.Lead,
        "Before the compound has gelled, the air leaves the range in which the sheet lets it be poured.",
        "Before gel the air reaches {measured}; the sheet's pouring range is {minimum} to {maximum}.",
        "Tent and warm or shade the work until it has gelled, or pour at another time.",
        Source.DataSheet("pouring"));

    public static FindingDefinition NightDelaysCure { get; } = Caution("night-delays-cure", "2026-12", Actor.Crew,
        "It gets colder after mixing. Whoever reckons with the temperature at mixing loads too early.",
        "Reckoned with the {temperature} at mixing, the load would come {measured} too early.",
        "Go by the times of this answer, and by the steel's temperature measured through the night.",
        Model, rules => [rules.Curing.DelayWorthSaying]);

    public static FindingDefinition SteelHoldsCureBack { get; } = Caution("steel-holds-cure-back", "2026-12", Actor.Crew,
        "Steel colder than the air holds back the cone's skin, which has to carry the load.",
        "Steel at {steel} holds full strength back by {measured} against the air alone.",
        "Warm the socket before the pour, or wait.",
        Model, rules => [rules.Curing.DelayWorthSaying]);
}
