using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Curing;

/// <content>Findings of the cone's own heat.</content>
public static partial class CuringFindings
{
    private static IReadOnlyList<FindingDefinition> Coupled => [ConeSteelUnknown, SocketWallMissing, GelCupUnknown, PeakAboveSheet, PeakUpperEstimate, CureBudgetSpent];

    public static FindingDefinition ConeSteelUnknown { get; } = Unknown("cone-steel-unknown", Actor.Lead,
        "Without the metallic area of the rope nobody knows how much steel takes the cone's heat.",
        "The metallic area of the rope of {end} is not known.",
        "Give metallicArea from the rope's certificate, or construction and core.",
        Model);

    public static FindingDefinition SocketWallMissing { get; } = Unknown("socket-wall-missing", Actor.Lead,
        "Without the outside of the socket nobody knows how much cold steel holds the skin of the cone back.",
        "The outside diameter of the socket of {end} is not given.",
        "Measure it and give outerDiameter, or outerAtSmallEnd and outerAtMouth; thermalModel uniform does without.",
        Model);

    public static FindingDefinition GelCupUnknown { get; } = Caution("gel-cup-unknown", Actor.Lead,
        "The sheet doesn't say whether its gel times were taken in a cup that warmed itself. If they were, the cone's heat is counted twice and all times come out too early.",
        "It is not said whether the gel times were taken in a cup that warmed itself; they are taken as held at their temperature, which errs towards too early.",
        "Ask the compound's maker and give measuredIn.",
        Model);

    public static FindingDefinition PeakAboveSheet { get; } = Stop("peak-above-sheet", Actor.Lead,
        "The cone gets hotter than the sheet allows while it cures.",
        "{end} reaches {measured}; the sheet allows {limit}.",
        "Pour cooler compound or in cooler air, or take a compound that is made for so large a cone.",
        Source.DataSheet("peakLimit"));

    public static FindingDefinition PeakUpperEstimate { get; } = Note("peak-upper-estimate", Actor.Lead,
        "The computed peak is above what the compound reaches when it keeps all its heat: fronts of cure run into each other there, thinner than the grid. It is no lower than the true one; the times are not touched by it.",
        "The peak of {measured} in {end} is an upper estimate.",
        "Judge by it; where that stops the pour, cool compound or steel, or ask the compound's maker.",
        Model);

    public static FindingDefinition CureBudgetSpent { get; } = Unknown("cure-budget-spent", Actor.Integrator,
        "The cones were not followed to their end within the steps that a request may take.",
        "The ends are too many, or cure too slowly, for one request.",
        "Send fewer kinds of ends at a time.",
        Model);
}
