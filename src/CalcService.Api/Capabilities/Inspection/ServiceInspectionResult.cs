using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>What becomes of an end in service.</summary>
public sealed record ServiceInspectionResult
{
    /// <summary>
    /// By the findings on the end itself, in the order of decisions: serve, serveWithCare, hold, withdraw. The decision follows all
    /// findings, so that it is never better.
    /// </summary>
    public required ServiceDisposition Disposition { get; init; }

    /// <summary>Each check with its evidence.</summary>
    public required IReadOnlyList<InspectionCheckResult> Checks { get; init; }

    /// <summary>Rope to cut off, from where it leaves the socket; null where no cut is needed or helps, or its place isn't known.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? CutFrom { get; init; }

    /// <summary>Whether enough rope is left after it.</summary>
    public required RopeLeftResult RopeLeft { get; init; }

    /// <summary>What the rule set wants next and when; null where it sets no day.</summary>
    public required NextDueResult? NextDue { get; init; }

    /// <summary>The check that is exceeded most, or leaves least.</summary>
    public required InspectionCheckResult? Strictest { get; init; }
}

/// <summary>One check.</summary>
public sealed record InspectionCheckResult
{
    /// <summary>Name of the check.</summary>
    public required string Id { get; init; }

    /// <summary>How it came out.</summary>
    public required CheckOutcome Outcome { get; init; }

    /// <summary>What was found; the most that it can be where a place isn't known; null where it is no number.</summary>
    public required Quantity? Measured { get; init; }

    /// <summary>The limit; null where it is no number.</summary>
    public required Quantity? Limit { get; init; }

    /// <summary>The limit in words.</summary>
    public required string Rule { get; init; }

    /// <summary>The rule set that it comes from.</summary>
    public required string RuleSet { get; init; }

    /// <summary>Its document and clause.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }

    /// <summary>Members of the request that would settle it.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}

/// <summary>Whether enough rope is left.</summary>
public sealed record RopeLeftResult
{
    /// <summary>Whether it is: unknown where nobody can say or no cut is needed.</summary>
    public required Fact Enough { get; init; }

    /// <summary>Full turns on the drum, after the cut where there is one; null where they are not known.</summary>
    [Kind(QuantityKind.Count)]
    public required Quantity? DrumTurns { get; init; }
}

/// <summary>What is due next.</summary>
public sealed record NextDueResult
{
    /// <summary>The last day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>What is due, with its document.</summary>
    public required string Rule { get; init; }

    /// <summary>Its document and clause.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }
}
