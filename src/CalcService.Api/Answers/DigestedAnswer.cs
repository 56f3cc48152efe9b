using CalcService.Api.Units;
using CalcService.Engine.Findings;

namespace CalcService.Api.Answers;

/// <summary>What the digest of a result covers: texts may change, these may not.</summary>
public sealed record DigestedAnswer<TResult>
    where TResult : class
{
    public required Decision Decision { get; init; }

    public required TResult Result { get; init; }

    public required IReadOnlyList<DigestedFinding> Findings { get; init; }

    public required IReadOnlyList<DigestedAssumption> Assumptions { get; init; }
}

/// <summary>The part of a finding that the digest covers.</summary>
public sealed record DigestedFinding
{
    public required string Code { get; init; }

    public required Severity Severity { get; init; }

    public required string Pointer { get; init; }

    public required Quantity? Measured { get; init; }

    public required Quantity? Limit { get; init; }
}

/// <summary>The part of an assumption that the digest covers.</summary>
public sealed record DigestedAssumption
{
    public required string Pointer { get; init; }

    public required Quantity? Value { get; init; }
}
