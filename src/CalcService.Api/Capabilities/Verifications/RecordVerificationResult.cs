using CalcService.Api.Contract;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What the signature of an archived answer proves about who gave it.</summary>
public enum AnswerSignature
{
    /// <summary>It was given by who signed it, and nothing was changed.</summary>
    Valid,

    /// <summary>It is not what was signed.</summary>
    Invalid,

    /// <summary>It isn't signed.</summary>
    Absent,

    /// <summary>It was signed with a key that is not known here.</summary>
    UnknownKey,
}

/// <summary>Whether an archived answer is what its request gives.</summary>
public sealed record RecordVerificationResult
{
    /// <summary>
    /// match (of numbers, decision and findings) → proceed, or proceedWithCare where something beside them is not as computed;
    /// differs → doNotProceed; cannotVerify → undetermined.
    /// </summary>
    public required VerificationOutcome Outcome { get; init; }

    /// <summary>
    /// The first member of this request that differs from what is computed, or that stands against computing it; null where it matches.
    /// </summary>
    public required string? Pointer { get; init; }

    /// <summary>Why; null where it matches.</summary>
    [Words]
    public required string? Reason { get; init; }

    /// <summary>
    /// Pointers to what this verification says nothing about: members that are not known, words that can't be compared.
    /// </summary>
    public required IReadOnlyList<string> Unchecked { get; init; }

    /// <summary>Who gave the answer is proven by a signature only; always absent until answers are signed.</summary>
    public required AnswerSignature Signature { get; init; }

    /// <summary>Record id of the answer as computed now; null where there is none.</summary>
    public required string? RecordId { get; init; }

    /// <summary>Digest of its result; null where there is none. It equals the archived one on the same build and platform only.</summary>
    public required string? ResultDigest { get; init; }

    public static RecordVerificationResult From(Comparison compared) => new()
    {
        Outcome = compared.Outcome,
        Pointer = compared.Pointer,
        Reason = compared.Reason,
        Unchecked = [.. compared.Unchecked],
        // No answer is signed yet; a member of this name is one that the contract doesn't know.
        Signature = AnswerSignature.Absent,
        RecordId = compared.RecordId,
        ResultDigest = compared.ResultDigest,
    };
}
