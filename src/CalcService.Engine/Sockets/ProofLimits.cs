using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Sockets;

/// <summary>What a proof load may not exceed, asked the same way by everybody who plans, makes or audits one.</summary>
public static class ProofLimits
{
    /// <summary>What is found where a proof load is above the socket's proof rating; null where it isn't.</summary>
    public static Finding? AboveRating(double proofN, double ratingN, string pointer, params IReadOnlyList<string> related) =>
        Judged.IsAbove(proofN, ratingN)
            ? new(LoadFindings.ProofAboveRating, Severity.Stop, pointer)
            {
                Measured = Measure.Force(proofN), Limit = Measure.Force(ratingN), Related = related,
            }
            : null;

    /// <summary>What is found where a proof load is more than its share of the rope's breaking force; null where it isn't.</summary>
    public static Finding? AboveShare(
        double proofN, double breakingN, MatchingRules rules, string pointer, params IReadOnlyList<string> related) =>
        Judged.IsAbove(proofN, rules.ProofShare.Si * breakingN)
            ? new(LoadFindings.ProofAboveShare, Severity.Caution, pointer)
            {
                Measured = Measure.Force(proofN), Limit = rules.ProofShare.Value, Related = related,
            }
            : null;
}
