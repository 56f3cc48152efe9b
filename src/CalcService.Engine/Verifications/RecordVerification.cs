using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Verifications;

/// <summary>What came of computing an archived answer again.</summary>
public enum VerificationOutcome
{
    /// <summary>It is the answer that was archived.</summary>
    Match,

    /// <summary>It is another.</summary>
    Differs,

    /// <summary>It can't be computed again here.</summary>
    CannotVerify,
}

/// <summary>A verification.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Pointer">The first member that differs, or that stands against computing it again; null where it matches.</param>
/// <param name="Reason">Why, in words; null where it matches.</param>
/// <param name="RecordId">Id of the recomputed answer; null where there is none.</param>
/// <param name="ResultDigest">Digest of its result; null where there is none.</param>
public sealed record VerificationResult(VerificationOutcome Outcome, string? Pointer, string? Reason, string? RecordId, string? ResultDigest);

/// <summary>Says what a comparison means for whoever holds the archived answer.</summary>
public static class RecordVerification
{
    private const string Answer = "/answer";

    public static Outcome<VerificationResult> Of(VerificationResult result, Budget budget)
    {
        var findings = new FindingList();
        if (Definition(result.Outcome) is { } definition)
        {
            findings.Add(new(definition, definition.Severities[0], Answer)
            {
                Words = [new("pointer", result.Pointer ?? Answer), new("reason", result.Reason ?? "")],
            });
        }

        return new(result, findings.Sorted(), VerificationNotes.All, [], new Trace(budget.Trace).Steps);
    }

    private static FindingDefinition? Definition(VerificationOutcome outcome) => outcome switch
    {
        VerificationOutcome.Differs => VerificationFindings.Differs,
        VerificationOutcome.CannotVerify => VerificationFindings.CannotVerify,
        _ => null,
    };
}
