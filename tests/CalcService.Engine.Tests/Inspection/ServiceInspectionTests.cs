using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Inspection;

public sealed class ServiceInspectionTests
{
    [Fact]
    [Verifies("diameter-loss", Check.WorkedExample, "by hand: 19 mm of 20 mm are 5 % less")]
    public void Loss_of_diameter_is_that_worked_by_hand() => Printed.Matches(.05, SizeChecks.DiameterLoss(.019, .020, Trace.None));

    [Fact]
    [Verifies("turns-after-cut", Check.WorkedExample, "by hand: a drum of 0.5 m takes 1.5708 m a turn; 3.1416 m less are two turns less")]
    public void Turns_after_a_cut_are_those_worked_by_hand() => Printed.Matches(3, LeftChecks.TurnsAfterCut(5, Math.PI, .5, Trace.None));

    [Fact]
    public void Cut_takes_turns_from_the_drum()
    {
        // 0.9144 m off a drum of 0.5 m: 0.9144/(π·0.5) = 0.5821 turns.
        var mine = GoodInspection.Under(MatchingRules.MineHoist) with { BrokenWires = [new(2, WirePlace.Mouth, null, 1)] };
        var left = GoodInspection.Inspect(mine).Result.Left;
        Printed.Agrees(4.4179, left.TurnsAfterCut!.Value, 5);
        Assert.True(left.Enough);
        Assert.False(GoodInspection.Inspect(mine with { DrumTurnsLeft = 3.5 }).Result.Left.Enough);
    }

    [Fact]
    public void Strictest_is_the_row_that_is_exceeded_most()
    {
        // Three in one strand is the limit reached; six in a lay is not.
        var inspection = GoodInspection.Inspect(GoodInspection.With(RopeFunction.Running, new BrokenWires(3, WirePlace.Lay, 4, 3)));
        Assert.Equal("broken-wires-running-strand", inspection.Result.Strictest!.Id);
        // Without a rule set one wire at the fitting is the strictest known.
        var general =
            GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing,
            new BrokenWires(1, WirePlace.Mouth, null, 1)) with { RuleSet = PouringRules.General });
        Assert.Equal("broken-wires-naval-fitting", general.Result.Strictest!.Id);
        Assert.Equal(ServiceDisposition.Withdraw, general.Result.Disposition);
    }

    [Fact]
    public void Inspection_that_says_nothing_holds_and_names_what_is_missing()
    {
        var inspection = GoodInspection.Inspect(new() { AssessedOn = new(2026, 3, 12), Rope = new() { DiameterM = .020 } });
        Assert.Equal(ServiceDisposition.Hold, inspection.Result.Disposition);
        Assert.All(inspection.Result.Checks.Where(check => check.Outcome == CheckOutcome.Undetermined),
            check => Assert.NotEmpty(check.Missing));
        Assert.DoesNotContain(inspection.Result.Checks, check => check.Outcome == CheckOutcome.Pass);
    }

    [Fact]
    public void Trace_holds_the_formulas_of_the_inspection()
    {
        var mine = GoodInspection.Under(MatchingRules.MineHoist) with { BrokenWires = [new(2, WirePlace.Mouth, null, 1)] };
        Assert.Equal(["diameter-loss", "turns-after-cut"],
            GoodInspection.Inspect(mine, trace: true).Trace.Select(step => step.Formula.Id).Distinct().Order(StringComparer.Ordinal));
        Assert.Empty(GoodInspection.Inspect(mine).Trace);
    }

    [Fact]
    public void Cancelled_inspection_ends() =>
        Assert.Throws<OperationCanceledException>(() => ServiceInspection.Calculate(GoodInspection.Input, Editions.Known.Current,
            new Budget(1), new CancellationToken(canceled: true)));
}
