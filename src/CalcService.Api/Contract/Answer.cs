using System.Text.Json;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>The answer of a calculation: decision, numbers and everything needed to trust or refuse them.</summary>
/// <typeparam name="TResult">The numbers.</typeparam>
public sealed record Answer<TResult>
    where TResult : class
{
    /// <summary>
    /// The worst severity of the findings: stop → doNotProceed, unknown → undetermined, caution → proceedWithCare, else proceed.
    /// </summary>
    public required Decision Decision { get; init; }

    /// <summary>The numbers. What could not be computed is null and has its finding.</summary>
    public required TResult Result { get; init; }

    /// <summary>What was found, worst first.</summary>
    public required IReadOnlyList<AnswerFinding> Findings { get; init; }

    /// <summary>Cautions that always hold.</summary>
    [Undigested]
    public required IReadOnlyList<AnswerSafetyNote> SafetyNotes { get; init; }

    /// <summary>Values that were used and not given.</summary>
    public required IReadOnlyList<AnswerAssumption> Assumptions { get; init; }

    /// <summary>Every formula as it was computed; empty without ?detail=full.</summary>
    [Undigested(Counts = true)]
    public required IReadOnlyList<AnswerTraceStep> Trace { get; init; }

    /// <summary>What this answer was computed from and by, with digests.</summary>
    [Undigested(Counts = true)]
    public required AnswerProvenance Provenance { get; init; }

    /// <summary>The canonical request in SI; null without ?detail=full.</summary>
    [Undigested(Counts = true)]
    public required JsonElement? Input { get; init; }
}

/// <summary>Something found, with the member to act on.</summary>
public sealed record AnswerFinding
{
    /// <summary>Stable code, explained at /v1/rules/{code}.</summary>
    public required string Code { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>JSON Pointer to the member of the request to act on.</summary>
    public required string Pointer { get; init; }

    /// <summary>Other members that take part.</summary>
    [Undigested]
    public required IReadOnlyList<string> Related { get; init; }

    /// <summary>Who can do something about it: crew, lead, inspector, office or integrator.</summary>
    [Since("0.9"), Undigested]
    public required string Actor { get; init; }

    /// <summary>What was found.</summary>
    [Words]
    public required string Message { get; init; }

    /// <summary>The number that was found.</summary>
    public required Quantity? Measured { get; init; }

    /// <summary>The number that is allowed.</summary>
    public required Quantity? Limit { get; init; }

    /// <summary>What to do.</summary>
    [Words]
    public required string Action { get; init; }

    /// <summary>Where the rule comes from.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }
}

/// <summary>Where a number or rule comes from.</summary>
public sealed record AnswerSource
{
    /// <summary>The document.</summary>
    public required string Document { get; init; }

    /// <summary>The place in it.</summary>
    public required string Clause { get; init; }

    /// <summary>published, law, dataSheet, commonPractice, fromMemory or derived.</summary>
    public required string Basis { get; init; }
}

/// <summary>A caution that always holds.</summary>
public sealed record AnswerSafetyNote
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The caution.</summary>
    [Words]
    public required string Text { get; init; }
}

/// <summary>A value that was used and not given.</summary>
public sealed record AnswerAssumption
{
    /// <summary>JSON Pointer to the member that would replace it.</summary>
    public required string Pointer { get; init; }

    /// <summary>What was assumed.</summary>
    [Words]
    public required string Text { get; init; }

    /// <summary>The value, where it is one number.</summary>
    public required Quantity? Value { get; init; }

    /// <summary>Who chose it.</summary>
    [Undigested]
    public required AssumptionOrigin Origin { get; init; }
}

/// <summary>One formula as it was computed.</summary>
public sealed record AnswerTraceStep
{
    /// <summary>What it was computed for, such as the id of an end; empty for the whole job.</summary>
    public required string Of { get; init; }

    /// <summary>Symbol of the result.</summary>
    public required string Symbol { get; init; }

    /// <summary>Name of the result.</summary>
    [Words]
    public required string Name { get; init; }

    /// <summary>The formula.</summary>
    public required string Formula { get; init; }

    /// <summary>The formula with its numbers.</summary>
    [Undigested]
    public required string Substituted { get; init; }

    /// <summary>The result.</summary>
    public required Quantity Value { get; init; }

    /// <summary>Where the formula comes from.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }
}

/// <summary>Where an answer comes from.</summary>
public sealed record AnswerProvenance
{
    /// <summary>Digest over operation, canonical input, rules and engine: the same question has the same id.</summary>
    public required string RecordId { get; init; }

    /// <summary>The calculation.</summary>
    public required string Operation { get; init; }

    /// <summary>Version of the contract.</summary>
    [Undigested]
    public required string Contract { get; init; }

    /// <summary>Edition of the rules.</summary>
    public required string Rules { get; init; }

    /// <summary>Language of the words (BCP 47).</summary>
    [Undigested]
    public required string Language { get; init; }

    /// <summary>Version of the computation.</summary>
    public required string Engine { get; init; }

    /// <summary>The compound; null where the calculation needs none.</summary>
    public required CompoundProvenance? Compound { get; init; }

    /// <summary>Digest of the canonical input.</summary>
    public required string InputDigest { get; init; }

    /// <summary>Digest of decision, metric result, findings and assumptions.</summary>
    public required string ResultDigest { get; init; }

    /// <summary>When it was computed; no digest covers it.</summary>
    [Undigested]
    public required DateTimeOffset ComputedAt { get; init; }
}

/// <summary>Which compound an answer was computed with.</summary>
public sealed record CompoundProvenance
{
    /// <summary>Id of the profile; null for a sheet sent with the request.</summary>
    public required string? Profile { get; init; }

    /// <summary>Digest of the canonical sheet.</summary>
    public required string Digest { get; init; }
}
