using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>Rope, basket and kits against each other: the numbers of the plan once more.</summary>
internal static class VolumeChecks
{
    public static RecomputedPlan Check(AuditScope scope, RopeFacts? rope, RecomputedPlan plan)
    {
        var asked = scope.Ask()
            .Fact(scope.Input.Rope is not null, AuditPointers.Rope, "the rope")
            .Fact(scope.Input.Socket.Basket is not null, AuditPointers.Basket, "the sizes of the basket");
        BasketFill? fill = null;
        if (scope.Input is { Rope: { } known, Socket.Basket: { } basket } && rope is not null)
        {
            CheckFit(scope, known, rope, basket);
            fill = BasketFill.Of(basket, rope, 0, scope.Trace);
        }
        else
        {
            scope.MustHold("fit", FitFindings.WiresDoNotFit, asked);
        }

        CheckMetal(scope);
        CheckVolume(scope, fill, asked.Gaps);
        var (mixed, needed) = CheckKits(scope, fill, asked.Gaps);
        return plan with { Fill = fill, MixedM3 = mixed, NeededM3 = needed };
    }

    private static void CheckFit(AuditScope scope, Rope rope, RopeFacts facts, Basket basket)
    {
        var found = new List<Finding>();
        var fit = new EndFit(rope, facts, basket, "", scope.Book.Pouring,
            found.Add) { SocketBreakingForceN = scope.Input.Socket.BreakingForceN, SizesFrom = scope.Input.Socket.SizesFrom };
        fit.Check();
        fit.CheckCare();
        fit.AskWires(WireSpacing.Of(basket, facts, scope.Trace));

        found.RemoveAll(finding => !finding.Definition.IsIn(scope.Book));
        found.ForEach(scope.Add);

        var worst = found.Count == 0 ? Severity.Note : found.Max(finding => finding.Severity);
        scope.Write("fit", CheckScope.OutcomeOf(worst), FitFindings.WiresDoNotFit,
            missing: [.. found.Where(finding => finding.Severity == Severity.Unknown).Select(finding => finding.Pointer)]);
    }

    private static void CheckMetal(AuditScope scope)
    {
        var metal = scope.Input.Socket.Metal;
        var unfit = EndFit.AgainstMetal(metal, "/socket");
        if (unfit is not null)
        {
            scope.Add(unfit);
        }

        scope.Judge("socket-metal", unfit?.Severity, BoundFindings.SocketMetalUnfit,
            scope.Ask().Told(StatedFact.Of(AuditPointers.SocketMetal, "what the socket is made of", metal, isNeeded: false)).Gaps);
    }

    private static void CheckVolume(AuditScope scope, BasketFill? fill, IReadOnlyList<Gap> gaps)
    {
        var rules = scope.Book.Audits;
        var recorded = scope.Input.Mix.VolumeM3;
        Measure? found = recorded is { } volume ? Measure.Volume(volume) : null;
        var asked = scope.Ask().Trail(recorded is not null, AuditPointers.Volume, "the volume that went into the basket");
        if (fill is not { LowM3: { } low, HighM3: { } high })
        {
            if (gaps.Count + asked.Gaps.Count == 0)
            {
                scope.Write("volume", CheckOutcome.Undetermined, AuditFindings.VolumeOff, new(found, null), [AuditPointers.Rope]);
            }
            else
            {
                scope.Judge("volume", null, AuditFindings.VolumeOff, [.. gaps, .. asked.Gaps], new(found, null));
            }

            return;
        }

        (Judged Little, Judged Much) Within(RuleLimit spread) => (new(found, spread.Below(Measure.Volume(low))),
            new(found, spread.Above(Measure.Volume(high))));
        static bool IsOff((Judged Little, Judged Much) band) => band.Little.IsBelow || band.Much.IsAbove;
        var near = Within(rules.VolumeSpread);
        var judged = near.Little.IsBelow ? near.Little : near.Much;
        Severity? against = IsOff(Within(rules.VolumeFar)) ? Severity.Unknown : IsOff(near) ? Severity.Caution : null;
        if (against is { } weight)
        {
            scope.Find(AuditFindings.VolumeOff, AuditPointers.Volume, judged, [AuditPointers.Rope, AuditPointers.Basket], weight,
                words: [new("low", near.Little.Limit!.Value), new("high", near.Much.Limit!.Value)]);
        }

        scope.Judge("volume", against, AuditFindings.VolumeOff, [.. gaps, .. asked.Gaps], judged);
    }

    private static (double? MixedM3, double? NeededM3) CheckKits(AuditScope scope, BasketFill? fill, IReadOnlyList<Gap> gaps)
    {
        var (mix, sheet) = (scope.Input.Mix, scope.Input.Compound);
        double? mixed = mix.Kits is { Count: > 0 } kits
            ? kits.Sum(lot => lot.Count * (sheet.Kits.FirstOrDefault(kit => kit.Code == lot.Kit)?.VolumeM3 ?? 0)) : null;
        var asked = scope.Ask()
            .Fact(mixed is not null, AuditPointers.Kits, "the kits of the mix by lot")
            .Trail(mix.Baskets is not null, AuditPointers.Baskets, "how many baskets the mix filled");
        var allowance = scope.Book.Pouring.Allowance;
        // Without the metal of the rope nobody knows what a basket takes.
        double? needed = fill is { SteelM3: not null, HighM3: { } high } && mix.Baskets is { } baskets
            ? MixFormulas.NeededM3(allowance.Si, baskets * high, 0, scope.Trace) : null;
        if (needed is not null)
        {
            scope.Assume("/mix", allowance);
        }

        double? least = fill?.LowM3 is { } low ? mix.Baskets * low : null;
        Measure? found = mixed is { } gave ? Measure.Volume(gave) : null;
        Judged Hold(double? must) => new(found, must is { } volume ? Limit.Of(Measure.Volume(volume)) : null);
        var judged = Hold(least) is { IsBelow: true } little ? little : Hold(needed);
        Severity? against = Hold(least).IsBelow ? Severity.Stop : judged.IsBelow ? Severity.Caution : null;
        if (against is { } weight)
        {
            scope.Find(AuditFindings.KitsShort, AuditPointers.Kits, judged, [AuditPointers.Baskets], weight);
        }

        scope.Judge("kits", against, AuditFindings.KitsShort, [.. gaps, .. asked.Gaps], judged);
        return (mixed, needed);
    }
}
