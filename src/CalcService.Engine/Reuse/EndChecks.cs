using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Reuse;

/// <summary>The rope that goes in next, by the function by which a match and a plan judge it: what they refuse is refused here.</summary>
internal static class EndChecks
{
    /// <summary>The check that shows a finding; what isn't named here shows in <c>rope-fit</c>.</summary>
    private static readonly Dictionary<FindingDefinition, string> Shown = new()
    {
        [FitFindings.RopeDoesNotEnter] = "rope-entry",
        [FitFindings.SocketWeaker] = "rope-strength",
        [BoundFindings.NoCone] = "basket-shape",
        [BoundFindings.BasketTooShort] = "basket-shape",
        [BoundFindings.SocketMetalUnfit] = "socket-metal",
    };

    /// <summary>Judges rope, basket and metal. Without a rope there is still the socket.</summary>
    public static IReadOnlyList<Finding> Check(ReuseScope scope, WearFacts wear, RopeFacts? facts, double? strengthN)
    {
        List<Finding> found = [];
        var intended = scope.Input.Intended.Rope;
        var drawn = scope.Socket.Nominal.Basket;
        // Any rope will do where nobody says which: only what holds for all of them is kept.
        var rope = intended ?? new Rope { DiameterM = drawn.SmallEndDiameterM };
        Basket[] baskets = [.. Baskets(scope, wear)];
        foreach (var basket in baskets)
        {
            var fit = new EndFit(rope, facts ?? RopeFacts.Of(rope, "", [], Trace.None), basket, "", scope.Book.Pouring, found.Add)
            {
                SocketBreakingForceN = strengthN,
                Metal = scope.Socket.Metal,
            };
            fit.Check();
            if (intended is not null)
            {
                fit.Ask(WireSpacing.Of(basket, facts!, Trace.None));
            }
        }

        Finding[] kept = [.. found.Where(one => one.Definition.IsIn(scope.Book)
            && (intended is not null || IsOfAnyRope(one.Definition))).Select(Placed)];
        foreach (var one in kept)
        {
            scope.Find(one.Definition, one.Pointer, one.Judged, one.Related, one.Severity, one.Source, [.. one.Words]);
        }

        Write(scope, kept, "basket-shape", BoundFindings.NoCone, isOfUse: true);
        CheckMetal(scope, kept);
        Write(scope, kept, "rope-entry", FitFindings.RopeDoesNotEnter, intended is not null,
            Judged.Length(rope.OverallDiameterM, baskets.Min(basket => basket.SmallEndDiameterM)));
        Write(scope, kept, "rope-fit", FitFindings.WiresDoNotFit, intended is not null);
        return kept;
    }

    /// <summary>As drawn, with the narrowest bore that was found, and as worn.</summary>
    private static IEnumerable<Basket> Baskets(ReuseScope scope, WearFacts wear)
    {
        var drawn = scope.Socket.Nominal.Basket;
        yield return drawn;
        if (wear.Stations.Count == 0)
        {
            yield break;
        }

        yield return drawn with { SmallEndDiameterM = Math.Min(drawn.SmallEndDiameterM, wear.Stations.Min(one => one.SmallestM)) };
        var worn = StrengthSizes.AsMeasured(scope.Socket, wear);
        yield return drawn with { SmallEndDiameterM = worn.BoreAtM(0), LargeEndDiameterM = worn.BoreAtM(drawn.LengthM) };
    }

    private static void CheckMetal(ReuseScope scope, IReadOnlyList<Finding> kept)
    {
        const string Id = "socket-metal";
        Gap[] gaps = scope.Socket.Metal == SocketMetal.Unknown
            ? [new(ReuseFindings.SteelUnknown, ReusePointers.Metal, "what the socket is made of")] : [];
        if (!scope.IsOpen(Id, BoundFindings.SocketMetalUnfit, gaps))
        {
            Write(scope, kept, Id, BoundFindings.SocketMetalUnfit, scope.Socket.Metal is not null);
        }
    }

    private static bool IsOfAnyRope(FindingDefinition finding) => finding == BoundFindings.NoCone
        || finding == BoundFindings.SocketMetalUnfit;

    /// <summary>Where rope and basket stand in the request of an assessment.</summary>
    private static Finding Placed(Finding finding) => finding with
    {
        Pointer = Placed(finding.Pointer), Related = [.. finding.Related.Select(Placed)],
    };

    private static string Placed(string pointer) =>
        pointer.StartsWith("/rope", StringComparison.Ordinal) ? "/intended" + pointer
            : pointer.Replace("/socket/basket", ReusePointers.Nominal("basket"), StringComparison.Ordinal);

    private static void Write(ReuseScope scope, IReadOnlyList<Finding> kept, string id, FindingDefinition rule, bool isOfUse,
        Judged judged = default)
    {
        var worst = kept.Where(one => Shown.GetValueOrDefault(one.Definition, "rope-fit") == id).MaxBy(one => one.Severity);
        if (worst is null && !isOfUse)
        {
            scope.Skip(id, rule);
            return;
        }

        var outcome = CheckScope.OutcomeOf(worst?.Severity);
        scope.Write(id, outcome, worst?.Definition ?? rule, worst?.Judged ?? judged,
            missing: worst?.Severity == Severity.Unknown ? Missing(worst) : []);
    }

    /// <summary>Where something isn't said all members are missing; else the one to look at again.</summary>
    private static string[] Missing(Finding finding) =>
        finding.Definition == FitFindings.RopeIdentityMissing ? [finding.Pointer, .. finding.Related] : [finding.Pointer];
}
