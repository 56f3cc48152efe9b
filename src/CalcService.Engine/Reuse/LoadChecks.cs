using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>What the socket is meant for against what its maker allows and what is left of it.</summary>
internal static class LoadChecks
{
    /// <summary>Checks loads and rope; gives the breaking force with what is left, where the maker's is known.</summary>
    public static double? Check(ReuseScope scope, ReuseLoads loads, StrengthFacts strength, RopeFacts? rope)
    {
        var socket = scope.Socket;
        Gap[] unrated = socket.RatedLoadN is null ? [new(LoadFindings.RatedLoadMissing, ReusePointers.RatedLoad, "")] : [];
        scope.MustNotExceed("rated-load", Force(loads.MeantRatedN), Force(socket.RatedLoadN), ReusePointers.IntendedLoad,
            ReuseFindings.IntendedAboveRating, ReuseFindings.IntendedAboveRating.Source, unrated);
        if (socket.ProofRatingN is null)
        {
            scope.Skip("proof-load", LoadFindings.ProofAboveRating, Force(loads.MeantProofN));
        }
        else
        {
            scope.MustNotExceed("proof-load", Force(loads.MeantProofN), Force(socket.ProofRatingN), ReusePointers.ProofRating,
                LoadFindings.ProofAboveRating,
                LoadFindings.ProofAboveRating.Source, loads.MeantProofN is null ? unrated : []);
        }

        CheckBail(scope);
        var remaining = RemainingN(scope, strength);
        CheckEntry(scope);
        CheckRope(scope, rope, remaining);
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

    /// <summary>The rope has to go through the narrowest place, drawn or found.</summary>
    private static void CheckEntry(ReuseScope scope)
    {
        const string Id = "rope-entry";
        if (scope.Input.Intended.Rope is not { } rope)
        {
            scope.Skip(Id, FitFindings.RopeDoesNotEnter);
            return;
        }

        var bore = scope.Socket.Measured.Stations.SelectMany(station => station.DiametersM)
            .Append(scope.Socket.Nominal.Basket.SmallEndDiameterM).Min();
        var enters = Judged.IsBelow(rope.OverallDiameterM, bore);
        if (!enters)
        {
            scope.Find(FitFindings.RopeDoesNotEnter, ReusePointers.IntendedRope + "/diameter", Measure.Length(rope.OverallDiameterM), Measure.Length(bore));
        }

        scope.Write(Id, enters ? CheckOutcome.Pass : CheckOutcome.Fail, FitFindings.RopeDoesNotEnter,
            Measure.Length(rope.OverallDiameterM), Measure.Length(bore));
    }

    private static void CheckRope(ReuseScope scope, RopeFacts? rope, double? remaining)
    {
        const string Id = "rope-strength";
        if (rope is null)
        {
            scope.Skip(Id, FitFindings.SocketWeaker);
            return;
        }

        if (scope.Socket.BreakingForceN is null)
        {
            scope.Find(FitFindings.SocketStrengthUnknown, ReusePointers.BreakingForce);
        }

        if (rope.BreakingForceN is null)
        {
            scope.Find(ReuseFindings.RopeStrengthUnknown, ReusePointers.RopeStrength);
        }

        // The parts' own checks have said what the remaining strength lacks.
        var open = scope.Checks.Where(check => check.Outcome == CheckOutcome.Undetermined && check.Id.StartsWith("strength-", StringComparison.Ordinal)).SelectMany(check => check.Missing);
        // What is left is at most what the maker made, so that a socket too weak when new fails whatever is missing.
        var (left, needed) = (remaining ?? scope.Socket.BreakingForceN, rope.BreakingForceN);
        var isWeaker = left is { } holds && needed is { } breaks && !Judged.IsAbove(holds, breaks);
        if (isWeaker)
        {
            scope.Find(FitFindings.SocketWeaker, ReusePointers.BreakingForce, Force(left), Force(needed), related: [ReusePointers.IntendedRope]);
        }

        string[] missing =
        [
            .. scope.Socket.BreakingForceN is null ? [ReusePointers.BreakingForce] : Array.Empty<string>(),
            .. rope.BreakingForceN is null ? [ReusePointers.RopeStrength] : Array.Empty<string>(), .. open,
        ];
        scope.Write(Id, isWeaker ? CheckOutcome.Fail : missing.Length > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass,
            FitFindings.SocketWeaker, Force(left), Force(needed), missing: [.. missing.Distinct(StringComparer.Ordinal)]);
    }

    private static Measure? Force(double? newtons) => newtons is { } value ? Measure.Force(value) : null;
}
