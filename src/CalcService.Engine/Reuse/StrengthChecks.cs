using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Reuse;

/// <summary>What the strength came to, as far as it could be computed.</summary>
/// <param name="RatedN">Rated load of the socket.</param>
/// <param name="ProofN">Proof load it is to bear.</param>
/// <param name="DesignFactor">Breaking force over rated load.</param>
/// <param name="AsMade">By the drawing.</param>
/// <param name="AsMeasured">As far to the bad side as the readings may be off; null where all of a part may be gone.</param>
/// <param name="AsRead">By the readings.</param>
internal sealed record StrengthFacts(double? RatedN, double? ProofN, double? DesignFactor, Utilisation? AsMade, Utilisation? AsMeasured,
    Utilisation? AsRead);

/// <summary>Ears, pin and basket under rated and proof load, as made and as measured.</summary>
internal static class StrengthChecks
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["ear-bearing"] = "ears, bearing of the pin", ["ear-net-section"] = "ears, beside the hole",
            ["ear-shear-out"] = "ears, shear behind the hole",
        ["ear-block"] = "ears, splitting behind the hole", ["pin-shear"] = "pin, shear", ["pin-bending"] = "pin, bending",
            ["basket-hoop"] = "wall of the basket, hoop stress",
    };

    public static StrengthFacts Check(ReuseScope scope, WearFacts wear, ReuseLoads loads, RopeFacts? rope)
    {
        var load = Load(scope, loads, rope);
        PartLoads made = new([], []), found = new([], []), read = new([], []), renewed = new([], []);
        if (load is not null)
        {
            scope.Trace.Of = "as made";
            made = StrengthParts.Of(StrengthSizes.AsMade(scope.Socket), load, scope.HasEars, scope.Trace);
            scope.Trace.Of = "as measured";
            var sizes = StrengthSizes.AsMeasured(scope.Socket, wear, scope.Socket.Measured.UncertaintyM);
            found = StrengthParts.Of(sizes, load, scope.HasEars, scope.Trace);
            scope.Trace.Of = "";
            read = StrengthParts.Of(StrengthSizes.AsMeasured(scope.Socket, wear), load, scope.HasEars, Trace.None);
            renewed = StrengthParts.Of(sizes with { PinM = scope.Socket.Nominal.PinDiameterM ?? sizes.PinM }, load, scope.HasEars,
                Trace.None);
        }

        foreach (var id in StrengthParts.Ids)
        {
            if (id != "basket-hoop" && !scope.HasEars)
            {
                scope.Skip("strength-" + id, ReuseFindings.YieldsAtProof);
            }
            else if (read.Gone.Contains(id))
            {
                // What is gone has its own finding, and no number.
                scope.Write("strength-" + id, CheckOutcome.Fail, ReuseFindings.HalfWornAway);
            }
            else
            {
                CheckPart(scope, id, Part(found, id), Part(read, id), Part(renewed, id));
            }
        }

        var parts = scope.HasEars ? StrengthParts.Ids.Count : 1;
        Utilisation? All(PartLoads of) => of.Loaded.Count == parts ? new(of.Loaded) : null;
        return new(load?.RatedN, load?.ProofN, load?.DesignFactor, All(made), All(found), All(read));
    }

    private static PartLoad? Part(PartLoads of, string id) => of.Loaded.FirstOrDefault(part => part.Id == id);

    /// <param name="scope">The assessment.</param>
    /// <param name="id">The part.</param>
    /// <param name="part">As far to the bad side as its readings may be off; null where a size isn't known, or all of it may be
    /// gone.</param>
    /// <param name="read">By the readings.</param>
    /// <param name="renewed">With a new pin.</param>
    private static void CheckPart(ReuseScope scope, string id, PartLoad? part, PartLoad? read, PartLoad? renewed)
    {
        var name = "strength-" + id;
        static Judged Hold(double? use) => new(use is { } share ? Measure.Fraction(share) : null, Limit.Of(Measure.Fraction(1)));
        if (read is null)
        {
            scope.IsOpen(name, ReuseFindings.YieldsAtProof, StrengthGaps.Of(scope, id), Hold(null));
            return;
        }

        var pointer = StrengthGaps.PointerOf(id);
        if (part is null || (Hold(part.AtProof).IsAbove && !Hold(read.AtProof).IsAbove))
        {
            scope.Find(ReuseFindings.ReadingTooCoarse, pointer, Hold(read.AtProof), [ReusePointers.Measured("uncertainty")],
                words: [new("what", "use of the strength under proof load, " + Names[id] + ","),
                    part is null ? new("most", "without bound") : new("most", Measure.Fraction(part.AtProof))]);
            scope.Write(name, CheckOutcome.Undetermined, ReuseFindings.ReadingTooCoarse, Hold(read.AtProof), missing: [pointer]);
            return;
        }

        var (yields, stressed) = (Hold(part.AtProof).IsAbove, Hold(part.AtRated).IsAbove);
        // An assumed steel holds a socket, but scraps none.
        var guess = yields && id.StartsWith("pin-", StringComparison.Ordinal) && scope.Socket.PinYieldStrengthPa is null
            ? ReusePointers.PinYield : null;
        // A worn pin presses on less of the ear as well.
        var isPin = id.StartsWith("pin-", StringComparison.Ordinal) || (renewed is not null && !Hold(renewed.AtProof).IsAbove);
        if (yields && guess is null && isPin)
        {
            scope.Find(ReuseFindings.PinYields, ReusePointers.Measured("pinDiameter"), Hold(part.AtProof),
                [ReusePointers.PinYield], words: new FindingWord("what", Names[id]));
        }
        else if (yields)
        {
            scope.Find(ReuseFindings.YieldsAtProof, guess ?? pointer, Hold(part.AtProof), guess is null ? [] : [pointer],
                guess is null ? Severity.Stop : Severity.Unknown, words: new FindingWord("what", Names[id]));
        }
        else if (stressed)
        {
            scope.Find(ReuseFindings.HighlyStressed, pointer, Hold(part.AtRated), words: new FindingWord("what", Names[id]));
        }

        var against = guess is not null ? Severity.Unknown : yields ? Severity.Stop : stressed ? Severity.Caution : (Severity?)null;
        scope.Write(name, CheckScope.OutcomeOf(against),
            yields && isPin && guess is null ? ReuseFindings.PinYields
                : stressed && !yields ? ReuseFindings.HighlyStressed : ReuseFindings.YieldsAtProof,
            Hold(part.Worst), missing: guess is null ? [] : [guess]);
    }

    private static StrengthCase? Load(ReuseScope scope, ReuseLoads loads, RopeFacts? rope)
    {
        var socket = scope.Socket;
        if (loads is not { RatedN: { } rated, ProofN: { } proof } || socket.YieldStrengthPa is not { } yield
            || socket.TensileStrengthPa is not { } tensile)
        {
            return null;
        }

        var body = StrengthFormulas.GoverningStrengthPa(yield, tensile, scope.Trace);
        if (scope.HasEars && socket.PinYieldStrengthPa is null)
        {
            scope.Assumptions.Add(new(ReusePointers.PinYield, "pin taken to be as strong as the socket's steel", Measure.Stress(body),
                AssumptionOrigin.Default));
            scope.Find(ReuseFindings.PinSteelAssumed, ReusePointers.PinYield);
        }

        if (scope.Input.Limits.DesignFactor is null)
        {
            scope.Assume(ReusePointers.DesignFactor, scope.Rules.DesignFactor);
        }

        var cone = StrengthCone.Of(scope, rope);
        ConeState? At(double loadN) => cone is null ? null : ConeLoad.Solve(cone, loadN, scope.Budget, scope.CancellationToken);
        return new(rated, proof, scope.Rules.DesignFactor.InPlaceOf(scope.Input.Limits.DesignFactor), body,
            socket.PinYieldStrengthPa ?? body,
            At(rated), At(proof));
    }
}
