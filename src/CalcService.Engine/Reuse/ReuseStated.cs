using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Reuse;

/// <summary>
/// Facts without which there is a number all the same, by the drawing or an estimate: an answer that went by them says so.
/// </summary>
internal static class ReuseStated
{
    /// <summary>Whether all that was not stated is of the use: the socket is what it is.</summary>
    public static bool IsOfTheUse(Finding finding) =>
        finding.Definition == StatedFacts.Taken
        && finding.Related.Prepend(finding.Pointer).All(at => at is ReusePointers.ProofRating or ReusePointers.RopeStrength);

    public static IEnumerable<(string Pointer, string What, bool IsStated)> Facts(ReuseScope scope, RopeFacts? rope)
    {
        var (input, found) = (scope.Input, scope.Socket.Measured);
        yield return (ReusePointers.Metal, "what the socket is made of", scope.Socket.Metal is not null);
        // Where nobody measured the ears at all there is more to ask for, and it is asked for elsewhere.
        if (scope.HasEars && found.EarThicknessM is not null)
        {
            yield return (ReusePointers.Measured("earWidth"), "the width of the ears as measured (the drawing's is taken)",
                found.EarWidthM is not null);
            yield return (ReusePointers.Measured("earEndDistance"),
                "the distance from the hole to the end of the ears as measured (the drawing's is taken)",
                found.EarEndDistanceM is not null);
        }

        yield return (ReusePointers.ProofRating, "the proof load that the socket's maker allows", scope.Socket.ProofRatingN is not null);
        yield return (ReusePointers.RopeStrength, "the certified breaking force of the rope (an estimate is taken)",
            input.Intended.Rope?.CertifiedBreakingForceN is not null || rope?.BreakingForceN is null);
    }
}
