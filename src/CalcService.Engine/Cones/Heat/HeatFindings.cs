using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Cones.Heat;

/// <summary>What keeps a cone's heat from being followed; the same wherever it is.</summary>
public static class HeatFindings
{
    public static FindingDefinition ConeSteelUnknown { get; } = Unknown("cone-steel-unknown", "2026-12", Actor.Lead,
        "Without the metallic area of the rope nobody knows how much steel takes the cone's heat.",
        "The metallic area of the rope of {end} is not known.",
        "Give metallicArea from the rope's certificate, or construction and core.",
        Model);

    public static FindingDefinition SocketWallMissing { get; } = Unknown("socket-wall-missing", "2026-12", Actor.Lead,
        "Without the outside of the socket nobody knows how much cold steel holds the skin of the cone back.",
        "The outside diameter of the socket of {end} is not given.",
        "Measure it and give outerDiameter, or outerAtSmallEnd and outerAtMouth; thermalModel uniform does without.",
        Model);

    public static FindingDefinition BudgetSpent { get; } = Unknown("cure-budget-spent", "2026-12", Actor.Integrator,
        "The cones were not followed to their end within the steps that a request may take.",
        "The ends are too many, or cure too slowly, for one request.",
        "Send fewer kinds of ends at a time.",
        Model);

    public static FindingDefinition PeakNotJudged { get; } = Caution("peak-not-judged", "2026-12", Actor.Lead,
        "The sheet limits how hot the cone may get, and nothing here says how hot it gets: only a schedule that follows the cone's own "
            + "heat does.",
        "The sheet lets the cone get no hotter than {limit}; its peak is not computed here.",
        "Compute the schedule with thermalModel coupled, and go by its peak.",
        Source.DataSheet("peakLimit"));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FindingDefinition> All => [ConeSteelUnknown, SocketWallMissing, BudgetSpent, PeakNotJudged];

    /// <summary>Says that a limit of the sheet is held against nothing; silent where the sheet has none.</summary>
    internal static void LeavePeakOpen(this CalculationScope scope, CompoundSheet sheet)
    {
        if (sheet.PeakLimitK is { } limit)
        {
            scope.Find(PeakNotJudged, "/compound/sheet/peakLimit", new(null, Limit.Of(Measure.Temperature(limit))));
        }
    }

    private static Source Model => new("heat and cure of the cone, its wires and its socket together", "/docs/cone-heat", Basis.Derived);
}
