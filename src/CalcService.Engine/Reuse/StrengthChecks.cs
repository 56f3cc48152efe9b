using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>What the strength came to, as far as it could be computed.</summary>
internal sealed record StrengthFacts(double? RatedN, double? ProofN, double? DesignFactor, Utilisation? AsMade, Utilisation? AsMeasured);

/// <summary>Ears, pin and basket under rated and proof load, as made and as measured.</summary>
internal static class StrengthChecks
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["ear-bearing"] = "ears, bearing of the pin", ["ear-net-section"] = "ears, beside the hole", ["ear-shear-out"] = "ears, shear behind the hole",
        ["ear-block"] = "ears, splitting behind the hole", ["pin-shear"] = "pin, shear", ["pin-bending"] = "pin, bending", ["basket-hoop"] = "wall of the basket, hoop stress",
    };

    public static StrengthFacts Check(ReuseScope scope, WearFacts wear)
    {
        var load = Load(scope);
        IReadOnlyList<PartLoad> made = [], found = [];
        if (load is not null)
        {
            scope.Trace.Of = "as made";
            made = StrengthParts.Of(StrengthSizes.AsMade(scope.Socket), load, scope.HasEars, scope.Trace);
            scope.Trace.Of = "as measured";
            found = StrengthParts.Of(StrengthSizes.AsMeasured(scope.Socket, wear), load, scope.HasEars, scope.Trace);
            scope.Trace.Of = "";
        }

        foreach (var id in StrengthParts.Ids)
        {
            if (id != "basket-hoop" && !scope.HasEars)
            {
                scope.Skip("strength-" + id, ReuseFindings.YieldsAtProof);
            }
            else
            {
                CheckPart(scope, id, found.FirstOrDefault(part => part.Id == id));
            }
        }

        var parts = scope.HasEars ? StrengthParts.Ids.Count : 1;
        return new(load?.RatedN, load?.ProofN, load?.DesignFactor, made.Count == parts ? new(made) : null, found.Count == parts ? new(found) : null);
    }

    private static void CheckPart(ReuseScope scope, string id, PartLoad? part)
    {
        var (name, limit) = ("strength-" + id, Measure.Fraction(1));
        if (part is null)
        {
            scope.IsOpen(name, ReuseFindings.YieldsAtProof, StrengthGaps.Of(scope, id), limit: limit);
            return;
        }

        var pointer = StrengthGaps.PointerOf(id);
        var (yields, stressed) = (Judged.IsAbove(part.AtProof, 1), Judged.IsAbove(part.AtRated, 1));
        if (yields)
        {
            scope.Find(ReuseFindings.YieldsAtProof, pointer, Measure.Fraction(part.AtProof), limit, words: new FindingWord("what", Names[id]));
        }

        if (stressed)
        {
            scope.Find(ReuseFindings.HighlyStressed, pointer, Measure.Fraction(part.AtRated), limit, words: new FindingWord("what", Names[id]));
        }

        scope.Write(name, yields || stressed ? CheckOutcome.Fail : CheckOutcome.Pass, stressed && !yields ? ReuseFindings.HighlyStressed : ReuseFindings.YieldsAtProof,
            Measure.Fraction(part.Worst), limit);
    }

    private static StrengthCase? Load(ReuseScope scope)
    {
        var (socket, intended) = (scope.Socket, scope.Input.Intended);
        if ((intended.RatedLoadN ?? socket.RatedLoadN) is not { } rated || socket.YieldStrengthPa is not { } yield || socket.TensileStrengthPa is not { } tensile)
        {
            return null;
        }

        var body = StrengthFormulas.GoverningStrengthPa(yield, tensile, scope.Trace);
        if (scope.HasEars && socket.PinYieldStrengthPa is null)
        {
            scope.Assumptions.Add(new(ReusePointers.PinYield, "pin taken to be as strong as the socket's steel", Measure.Stress(body), AssumptionOrigin.Default));
            scope.Find(ReuseFindings.PinSteelAssumed, ReusePointers.PinYield);
        }

        if (scope.Input.Limits.DesignFactor is null)
        {
            scope.Assumptions.Add(new(ReusePointers.DesignFactor, scope.Rules.DesignFactor.Text, scope.Rules.DesignFactor.Value, AssumptionOrigin.RuleSet));
        }

        var friction = scope.Book.Matching.Friction.Low;
        scope.Assumptions.Add(new("/socket/nominal/basket", friction.Text + "; no shrinkage", friction.Value, AssumptionOrigin.RuleSet));
        return new(rated, ProofN(scope, rated), scope.Input.Limits.DesignFactor ?? scope.Rules.DesignFactor.Si,
            body, socket.PinYieldStrengthPa ?? body, friction.Si, socket.Nominal.Basket);
    }

    /// <summary>As given, else by the rule for slings, the one public rule for poured sockets.</summary>
    private static double ProofN(ReuseScope scope, double rated)
    {
        if (scope.Input.Intended.ProofLoadN is { } given)
        {
            return given;
        }

        var rule = scope.Book.Matching.Duties.First(duty => duty.Use == DutyUse.Sling).ProofFactor!;
        var proof = rule.Si * rated;
        scope.Assumptions.Add(new(ReusePointers.IntendedProof, rule.Text, Measure.Force(proof), AssumptionOrigin.RuleSet));
        return proof;
    }
}
