using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What computing an archived answer again gave.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Pointer">Where, in the archived answer.</param>
/// <param name="Reason">Why.</param>
/// <param name="RecordId">Id of the recomputed answer.</param>
/// <param name="ResultDigest">Digest of its result.</param>
internal sealed record Comparison(VerificationOutcome Outcome, string? Pointer = null, string? Reason = null, string? RecordId = null, string? ResultDigest = null)
{
    public static Comparison CannotVerify(string pointer, string reason) => new(VerificationOutcome.CannotVerify, pointer, reason);
}
