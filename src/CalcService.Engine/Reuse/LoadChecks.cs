using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket is meant for against what its maker allows and what is left of it.</summary>
internal static class LoadChecks
{
    /// <summary>Checks loads and rope; gives the breaking force with what is left, where the maker's is known.</summary>
    public static double? Check(ReuseScope scope, WearFacts wear, ReuseLoads loads, StrengthFacts strength, RopeFacts? rope)
    {
        var socket = scope.Socket;
        Gap[] unrated = socket.RatedLoadN is null ? [new(LoadFindings.RatedLoadMissing, ReusePointers.RatedLoad, "")] : [];
        scope.MustNotExceed("rated-load", Hold(loads.MeantRatedN, socket.RatedLoadN), ReusePointers.IntendedLoad,
            ReuseFindings.IntendedAboveRating, unrated);
        if (socket.ProofRatingN is null)
        {
            scope.Skip("proof-load", LoadFindings.ProofAboveRating, Force(loads.MeantProofN));
        }
        else
        {
            scope.MustNotExceed("proof-load", Hold(loads.MeantProofN, socket.ProofRatingN), ReusePointers.ProofRating,
                LoadFindings.ProofAboveRating, loads.MeantProofN is null ? unrated : []);
        }

        CheckTestLoad(scope, loads.MeantProofN, rope);
        CheckBail(scope);
        var least = RemainingN(scope, strength, strength.AsMeasured, scope.Trace);
        // Too weak by what was read is a stop; by how far the readings may be off, nobody knows. Where a size is missing the maker's force
        // bounds it.
        var left = RemainingN(scope, strength, strength.AsRead, Trace.None) ?? socket.BreakingForceN;
        var isWeaker = EndChecks.Check(scope, wear, rope, left).Any(finding => finding.Definition == FitFindings.SocketWeaker);
        CheckRope(scope, rope, left, least, isWeaker);
        return least;
    }

    /// <summary>The proof load on the rope, as every calculation judges it.</summary>
    private static void CheckTestLoad(ReuseScope scope, double? proofN, RopeFacts? rope)
    {
        const string Id = "half-of-breaking-force";
        if (proofN is not { } proof || rope?.BreakingForceN is not { } breaking)
        {
            scope.Skip(Id, LoadFindings.ProofAboveShare, Force(proofN));
            return;
        }

        var (against, judged) = TestLoads.CheckRope(scope, proof, breaking, scope.Book.Matching, ReusePointers.IntendedProof,
            ReusePointers.RopeStrength);
        scope.Weigh(Id, against, LoadFindings.ProofAboveShare, judged);
    }

    private static void CheckBail(ReuseScope scope)
    {
        if (scope.Socket.Type != SocketType.Closed)
        {
            scope.Skip("bail", ReuseFindings.BailNotComputed);
            return;
        }

        scope.Find(ReuseFindings.BailNotComputed, ReusePointers.Type);
        scope.Write("bail", CheckOutcome.Undetermined, ReuseFindings.BailNotComputed, missing: [ReusePointers.Type]);
    }

    private static double? RemainingN(ReuseScope scope, StrengthFacts strength, Utilisation? now, Trace trace)
    {
        if (scope.Socket.BreakingForceN is not { } breaking || strength.AsMade is not { } made || now is not { } worn)
        {
            return null;
        }

        var (before, after) = made.Parts.Zip(worn.Parts).MinBy(pair => pair.First.AtRated / pair.Second.AtRated);
        return StrengthFormulas.RemainingStrengthN(breaking, before.AtRated, after.AtRated, trace);
    }

    private static void CheckRope(ReuseScope scope, RopeFacts? rope, double? left, double? least, bool isWeaker)
    {
        const string Id = "rope-strength";
        if (rope is null)
        {
            scope.Skip(Id, FitFindings.SocketWeaker);
            return;
        }

        // The parts' own checks have said what the remaining strength lacks.
        List<string> missing = [.. scope.Checks
            .Where(check => check.Outcome == CheckOutcome.Undetermined && check.Id.StartsWith("strength-", StringComparison.Ordinal))
            .SelectMany(check => check.Missing)];
        if (rope.BreakingForceN is null)
        {
            scope.Find(ReuseFindings.RopeStrengthUnknown, ReusePointers.RopeStrength);
            missing.Add(ReusePointers.RopeStrength);
        }

        if (left is null)
        {
            scope.Find(ReuseFindings.BreakingForceMissing, ReusePointers.BreakingForce);
            missing.Add(ReusePointers.BreakingForce);
        }

        if (!isWeaker && least is { } worst && rope.BreakingForceN is { } breaking
            && Judged.Force(worst, breaking) is { IsAbove: false } weak)
        {
            scope.Find(ReuseFindings.MayBeWeaker, ReusePointers.Measured("uncertainty"), weak, [ReusePointers.RopeStrength]);
            missing.Add(ReusePointers.Measured("uncertainty"));
        }

        scope.Write(Id, isWeaker ? CheckOutcome.Fail : missing.Count > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass,
            FitFindings.SocketWeaker, Hold(left, rope.BreakingForceN), missing: [.. missing.Distinct(StringComparer.Ordinal)]);
    }

    private static Judged Hold(double? foundN, double? limitN) => new(Force(foundN), Force(limitN) is { } limit ? Limit.Of(limit) : null);

    private static Measure? Force(double? newtons) => newtons is { } value ? Measure.Force(value) : null;
}
