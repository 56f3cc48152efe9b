using CalcService.Api.Reading;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Whether an archived answer is what its request gives.</summary>
public sealed record RecordVerificationResult
{
    /// <summary>One to one with the decision: match → proceed, differs → doNotProceed, cannotVerify → undetermined.</summary>
    public required VerificationOutcome Outcome { get; init; }

    /// <summary>The first member of this request that differs from what is computed, or that stands against computing it; null where it matches.</summary>
    public required string? Pointer { get; init; }

    /// <summary>Why; null where it matches.</summary>
    [Undigested]
    public required string? Reason { get; init; }

    /// <summary>Record id of the answer as computed now; null where there is none.</summary>
    public required string? RecordId { get; init; }

    /// <summary>Digest of its result; null where there is none. It equals the archived one on the same build and platform only.</summary>
    public required string? ResultDigest { get; init; }
}
