using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>The loads of an assessment; null where nobody says.</summary>
/// <param name="MeantRatedN">What the end is meant to carry.</param>
/// <param name="MeantProofN">What it is meant to be proof loaded to.</param>
/// <param name="RatedN">What the socket's strength is judged at: what is meant, and never more than its maker allows.</param>
/// <param name="ProofN">The same under proof.</param>
internal sealed record ReuseLoads(double? MeantRatedN, double? MeantProofN, double? RatedN, double? ProofN)
{
    /// <summary>
    /// A load beyond what the maker allows is refused as a load. It says nothing about the socket, whose strength is judged at what it
    /// may carry.
    /// </summary>
    public static ReuseLoads Of(ReuseScope scope)
    {
        var (socket, intended) = (scope.Socket, scope.Input.Intended);
        var meant = intended.RatedLoadN ?? socket.RatedLoadN;
        var proof = intended.ProofLoadN ?? ByRule(scope, meant);
        return new(meant, proof, Least(meant, socket.RatedLoadN), Least(proof, socket.ProofRatingN));
    }

    /// <summary>By the rule for slings, the one public rule for poured sockets.</summary>
    private static double? ByRule(ReuseScope scope, double? ratedN)
    {
        if (ratedN is not { } rated)
        {
            return null;
        }

        var rule = scope.Book.Matching.Duties.First(duty => duty.Use == DutyUse.Sling).ProofFactor!;
        var proof = TestLoads.RequiredN(rated, rule.Si, scope.Trace);
        scope.Assumptions.Add(new(ReusePointers.IntendedProof, rule.Text, Measure.Force(proof), AssumptionOrigin.RuleSet));
        return proof;
    }

    private static double? Least(double? meant, double? allowed) => meant > allowed ? allowed : meant;
}
