using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

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

    public static StrengthFacts Check(ReuseScope scope, WearFacts wear, ReuseLoads loads, RopeFacts? rope)
    {
        var load = Load(scope, loads, rope);
        PartLoads made = new([], []), found = new([], []);
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
            else if (found.Gone.Contains(id))
            {
                // What is gone has its own finding, and no number.
                scope.Write("strength-" + id, CheckOutcome.Fail, ReuseFindings.HalfWornAway);
            }
            else
            {
                CheckPart(scope, id, found.Loaded.FirstOrDefault(part => part.Id == id));
            }
        }

        var parts = scope.HasEars ? StrengthParts.Ids.Count : 1;
        Utilisation? All(PartLoads of) => of.Loaded.Count == parts ? new(of.Loaded) : null;
        return new(load?.RatedN, load?.ProofN, load?.DesignFactor, All(made), All(found));
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
        // An assumed steel holds a socket, but scraps none.
        var guess = yields && id.StartsWith("pin-", StringComparison.Ordinal) && scope.Socket.PinYieldStrengthPa is null
            ? ReusePointers.PinYield : null;
        if (yields)
        {
            scope.Find(ReuseFindings.YieldsAtProof, guess ?? pointer, Measure.Fraction(part.AtProof), limit, guess is null ? [] : [pointer],
                guess is null ? Severity.Stop : Severity.Unknown, words: new FindingWord("what", Names[id]));
        }
        else if (stressed)
        {
            scope.Find(ReuseFindings.HighlyStressed, pointer, Measure.Fraction(part.AtRated), limit, words: new FindingWord("what", Names[id]));
        }

        scope.Write(name, guess is not null ? CheckOutcome.Undetermined : yields || stressed ? CheckOutcome.Fail : CheckOutcome.Pass,
            stressed && !yields ? ReuseFindings.HighlyStressed : ReuseFindings.YieldsAtProof,
            Measure.Fraction(part.Worst), limit, missing: guess is null ? [] : [guess]);
    }

    private static StrengthCase? Load(ReuseScope scope, ReuseLoads loads, RopeFacts? rope)
    {
        var socket = scope.Socket;
        if (loads is not { RatedN: { } rated, ProofN: { } proof } || socket.YieldStrengthPa is not { } yield || socket.TensileStrengthPa is not { } tensile)
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

        var cone = StrengthCone.Of(scope, rope);
        ConeState? At(double loadN) => cone is null ? null : ConeLoad.Solve(cone, loadN, scope.Budget, scope.CancellationToken);
        return new(rated, proof, scope.Input.Limits.DesignFactor ?? scope.Rules.DesignFactor.Si, body, socket.PinYieldStrengthPa ?? body,
            At(rated), At(proof));
    }
}
