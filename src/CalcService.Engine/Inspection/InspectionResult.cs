using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Inspection;

/// <summary>What becomes of the end, by the findings on the end itself; in the order of decisions.</summary>
public enum ServiceDisposition
{
    /// <summary>It goes on serving.</summary>
    Serve,

    /// <summary>It goes on with the care that the findings name.</summary>
    ServeWithCare,

    /// <summary>It rests until what is missing is known.</summary>
    Hold,

    /// <summary>It is taken out of service.</summary>
    Withdraw,
}

/// <summary>One check with its evidence.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Outcome">How it came out.</param>
/// <param name="Severity">What it weighs where it isn't passed.</param>
/// <param name="Measured">What was found; the most that it can be where its place isn't known.</param>
/// <param name="Limit">The rule.</param>
/// <param name="Missing">Members of the request that would settle it.</param>
public sealed record InspectionCheck(string Id, CheckOutcome Outcome, Severity Severity, Measure? Measured, RuleLimit Limit,
    IReadOnlyList<string> Missing)
{
    /// <summary>Finding over limit, so that checks can be compared; null where they can't.</summary>
    public double? Use { get; init; }
}

/// <summary>Whether enough rope is left.</summary>
/// <param name="TurnsAfterCut">Turns on the drum after the cut; null where they, or what has to be cut off, are not known.</param>
/// <param name="Enough">Null where nobody can say.</param>
public sealed record RopeLeft(double? TurnsAfterCut, bool? Enough);

/// <summary>When the law wants something done next.</summary>
public sealed record NextDue(DateOnly On, RuleLimit Rule);

/// <summary>An inspection.</summary>
public sealed record InspectionResult
{
    public required ServiceDisposition Disposition { get; init; }

    public required IReadOnlyList<InspectionCheck> Checks { get; init; }

    /// <summary>Rope to cut off, from where it leaves the socket; null where no cut is needed or its place isn't known.</summary>
    public double? CutFromM { get; init; }

    public required RopeLeft Left { get; init; }

    public NextDue? NextDue { get; init; }

    /// <summary>The check that leaves least, or is exceeded most.</summary>
    public InspectionCheck? Strictest { get; init; }
}
