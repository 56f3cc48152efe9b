using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket is meant for against what its maker allows and what is left of it.</summary>
internal static class LoadChecks
{
    /// <summary>Checks loads and rope; gives the breaking force with what is left, where the maker's is known.</summary>
    public static double? Check(ReuseScope scope, StrengthFacts strength)
    {
        var (socket, intended) = (scope.Socket, scope.Input.Intended);
        Gap[] unrated = socket.RatedLoadN is null ? [new(LoadFindings.RatedLoadMissing, ReusePointers.RatedLoad, "")] : [];
        scope.MustNotExceed("rated-load", Force(intended.RatedLoadN ?? socket.RatedLoadN), Force(socket.RatedLoadN), ReusePointers.IntendedLoad,
            ReuseFindings.IntendedAboveRating, ReuseFindings.IntendedAboveRating.Source, unrated);
        var proof = strength.ProofN ?? intended.ProofLoadN;
        if (socket.ProofRatingN is null)
        {
            scope.Skip("proof-load", LoadFindings.ProofAboveRating, Force(proof));
        }
        else
        {
            scope.MustNotExceed("proof-load", Force(proof), Force(socket.ProofRatingN), ReusePointers.ProofRating, LoadFindings.ProofAboveRating,
                LoadFindings.ProofAboveRating.Source, proof is null ? [.. unrated, .. HistoryChecks.SteelGaps(socket)] : []);
        }

        CheckBail(scope);
        var remaining = RemainingN(scope, strength);
        CheckRope(scope, intended.Rope, remaining);
        return remaining;
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

    private static double? RemainingN(ReuseScope scope, StrengthFacts strength)
    {
        if (scope.Socket.BreakingForceN is not { } breaking || strength is not { AsMade: { } made, AsMeasured: { } found })
        {
            return null;
        }

        var (before, now) = made.Parts.Zip(found.Parts).MinBy(pair => pair.First.AtRated / pair.Second.AtRated);
        return StrengthFormulas.RemainingStrengthN(breaking, before.AtRated, now.AtRated, scope.Trace);
    }

    private static void CheckRope(ReuseScope scope, Rope? rope, double? remaining)
    {
        if (rope is null)
        {
            scope.Skip("rope-entry", FitFindings.RopeDoesNotEnter);
            scope.Skip("rope-strength", FitFindings.SocketWeaker);
            return;
        }

        var bore = scope.Socket.Nominal.Basket.SmallEndDiameterM;
        var enters = rope.OverallDiameterM < bore;
        if (!enters)
        {
            scope.Find(FitFindings.RopeDoesNotEnter, ReusePointers.IntendedRope + "/diameter", Measure.Length(rope.OverallDiameterM), Measure.Length(bore));
        }

        scope.Write("rope-entry", enters ? CheckOutcome.Pass : CheckOutcome.Fail, FitFindings.RopeDoesNotEnter, Measure.Length(rope.OverallDiameterM), Measure.Length(bore));
        if (scope.Socket.BreakingForceN is null)
        {
            scope.Skip("rope-strength", FitFindings.SocketWeaker);
            return;
        }

        var facts = RopeFacts.Of(rope, ReusePointers.IntendedRope, scope.Assumptions, scope.Trace);
        List<Gap> gaps = [];
        if (facts.BreakingForceN is null)
        {
            gaps.Add(new(ReuseFindings.RopeStrengthUnknown, ReusePointers.IntendedRope + "/certificate/breakingForce", ""));
        }

        // The parts' own checks have said what the remaining strength lacks.
        var open = scope.Checks.Where(check => check.Outcome == CheckOutcome.Undetermined && check.Id.StartsWith("strength-", StringComparison.Ordinal)).SelectMany(check => check.Missing);
        // What is left is at most what the maker made, so that a socket too weak when new fails whatever is missing.
        var (left, needed) = (remaining ?? scope.Socket.BreakingForceN, facts.BreakingForceN);
        var isWeaker = left <= needed;
        foreach (var gap in gaps)
        {
            scope.Find(gap.Finding, gap.Pointer);
        }

        if (isWeaker)
        {
            scope.Find(FitFindings.SocketWeaker, ReusePointers.BreakingForce, Force(left), Force(needed), related: [ReusePointers.IntendedRope]);
        }

        string[] missing = [.. gaps.Select(gap => gap.Pointer).Concat(open).Distinct(StringComparer.Ordinal)];
        scope.Write("rope-strength", isWeaker ? CheckOutcome.Fail : missing.Length > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass,
            FitFindings.SocketWeaker, Force(left), Force(needed), missing: missing);
    }

    private static Measure? Force(double? newtons) => newtons is { } value ? Measure.Force(value) : null;
}
