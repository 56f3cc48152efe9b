using CalcService.Engine.Cones;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Proof;

/// <summary>How an end is proof loaded, and what the test says of it.</summary>
public static class ProofLoadEvaluation
{
    /// <summary>Evaluates a proof load, before or after the test.</summary>
    /// <param name="input">The end, the test and what was read.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<ProofResult> Calculate(ProofInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        var scope = new ProofScope(input, rules, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(CompoundFindings.Demonstration, "/compound");
        }

        var rope = RopeFacts.Of(input.Rope, "/rope", scope.Assumptions, scope.Trace);
        var fit = new EndFit(input.Rope, rope, input.Basket, "", rules.Pouring, scope.Add);
        fit.Check();
        if (scope.Purpose != Purpose.Quote)
        {
            var wires = WireSpacing.Of(input.Basket, rope, Trace.None);
            fit.Ask(wires.Count > 0 && rope.MetallicAreaM2 is null ? [] : wires);
        }

        var proof = LoadChecks.ProofLoad(scope);
        var highest = input.Measured is { Count: > 0 } read ? read.Max(step => step.LoadN) : proof;
        LoadChecks.Check(scope, proof is { } meant && highest is { } found ? Math.Max(meant, found) : highest, rope.BreakingForceN);
        var end = new EndCone(scope, rules.Matching, input.Compound.Cured, input.Basket,
            rope.MetallicAreaM2) { OuterAtSmallEndM = input.OuterAtSmallEndM, OuterAtMouthM = input.OuterAtMouthM };
        var seats = EndFit.Seats(input.Rope, rope, input.Basket, rules.Pouring);
        var forecast = seats ? SeatingForecast.Of(end, rules.Proof.ShrinkageSpread, input.ReadAt, input.Friction, ProofPointers.Friction)
            : null;
        var steps = Steps(scope, forecast, proof);
        if (input.Measured is not null)
        {
            AfterChecks.Check(scope, proof, steps, seats);
        }

        scope.CheckStated();
        TestLoads? loads = proof is { } asked ? TestLoads.Of(asked, rules.Proof) : null;
        return new(
            new()
            {
                Verdict = Verdict.Of<ProofVerdict>(scope.Findings.Decide()),
                IsAfter = input.Measured is not null,
                ProofLoadN = proof,
                LeastTestLoadN = ((Measure?)loads?.Least)?.Si,
                MostTestLoadN = ((Measure?)loads?.Most)?.Si,
                Steps = steps,
                Expected = steps.Count > 0 ? steps.MaxBy(step => step.LoadN)!.Expected : null,
                ReadAt = input.ReadAt == SeatingPlace.SmallEnd ? SeatingPlace.SmallEnd : SeatingPlace.Mouth,
                Checks = scope.Checks,
            },
            scope.Findings.Sorted(), ProofNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>Before the test the steps of the rules, after it those that were read.</summary>
    private static List<ProofStep> Steps(ProofScope scope, SeatingForecast? forecast, double? proofN)
    {
        var steps = new List<ProofStep>();
        SeatingBand? Expect(double loadN) => forecast?.At(loadN, scope.CancellationToken);

        if (scope.Input.Measured is { } measured)
        {
            foreach (var step in measured)
            {
                steps.Add(new(step.LoadN / proofN, step.LoadN, Expect(step.LoadN), step.SeatingM));
            }
        }
        else if (proofN is { } proof)
        {
            foreach (var share in scope.Book.Proof.Steps.Select(step => step.Si))
            {
                steps.Add(new(share, share * proof, Expect(share * proof), null));
            }
        }

        return steps;
    }
}
