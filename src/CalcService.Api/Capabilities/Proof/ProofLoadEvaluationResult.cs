using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Proof;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>How an end is proof loaded, or what the test says of it.</summary>
public sealed record ProofLoadEvaluationResult
{
    /// <summary>
    /// One to one with the decision: pass (proceed), passWithCare (proceedWithCare), hold (undetermined), reject (doNotProceed). Before the
    /// test it is about the test, after it about the end.
    /// </summary>
    public required ProofVerdict Verdict { get; init; }

    /// <summary>before or after the test.</summary>
    public required string Phase { get; init; }

    /// <summary>Proof load.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? ProofLoad { get; init; }

    /// <summary>Least load that counts as the proof load.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? LeastTestLoad { get; init; }

    /// <summary>Highest load that is meant.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? MostTestLoad { get; init; }

    /// <summary>Before the test the loads to hold; after it those that were read.</summary>
    public required IReadOnlyList<ProofStepResult> Steps { get; init; }

    /// <summary>Seating expected at the highest step, under load; null where it can't be computed.</summary>
    public required ExpectedSeating? ExpectedSeating { get; init; }

    /// <summary>Where that seating is read, under load.</summary>
    public required SeatingPlace SeatingReadAt { get; init; }

    /// <summary>Each check with its evidence.</summary>
    public required IReadOnlyList<ProofCheckResult> Checks { get; init; }
}

/// <summary>One step of a test.</summary>
public sealed record ProofStepResult
{
    /// <summary>Share of the proof load; null where that isn't known.</summary>
    [Kind(QuantityKind.Fraction)]
    public required Quantity? Share { get; init; }

    /// <summary>The load.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity Load { get; init; }

    /// <summary>Seating expected under it; null where it can't be computed.</summary>
    public required ExpectedSeating? ExpectedSeating { get; init; }

    /// <summary>Seating that was read; null before the test and where it wasn't.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? Seating { get; init; }
}

/// <summary>A band of seating over friction and shrinkage, by a model.</summary>
public sealed record ExpectedSeating
{
    /// <summary>Least.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity Low { get; init; }

    /// <summary>Most.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity High { get; init; }
}

/// <summary>One check.</summary>
public sealed record ProofCheckResult
{
    /// <summary>Name of the check.</summary>
    public required string Id { get; init; }

    /// <summary>How it came out.</summary>
    public required CheckOutcome Outcome { get; init; }

    /// <summary>
    /// What was found; null where it is no number. For cure: how long after proofLoadFrom the test is, negative before it.
    /// </summary>
    public required Quantity? Measured { get; init; }

    /// <summary>The limit; null where it is no number.</summary>
    public required Quantity? Limit { get; init; }

    /// <summary>Where the limit comes from.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }

    /// <summary>Members of the request that would settle it.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}
