using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Inspection;

public sealed class ServiceInspectionTests
{
    private static readonly Gen<BrokenWires> AnyWires = Gen.Select(Gen.Int[1, 7], Gen.Enum<WirePlace>(), Gen.Double[0, 3], Gen.Bool, Gen.Int[1, 7], Gen.Bool)
        .Select((count, place, from, placed, strand, told) => new BrokenWires(count, place, placed ? from : null, told ? Math.Min(strand, count) : null));

    private static readonly Gen<InspectionInput> AnyEnd =
        Gen.Select(Gen.Int[0, 5].Select(set => set < 5 ? InspectionRules.RuleSets[set] : null), Gen.Enum<RopeFunction>(), Gen.Bool, AnyWires.Array[0, 4], Gen.Bool, Gen.Double[0, 6], Gen.Bool)
            .Select((ruleSet, function, laid, wires, drum, turns, spare) => GoodInspection.Under(ruleSet) with
            {
                Rope = GoodInspection.Input.Rope with { Function = function, LayLengthM = laid ? .13 : null },
                BrokenWires = wires,
                DrumTurnsLeft = turns,
                DrumDiameterM = drum ? .5 : null,
                LengthLeftM = spare ? 2 : null,
            });

    [Fact]
    [Verifies("diameter-loss", Check.WorkedExample, "by hand: 19 mm of 20 mm are 5 % less")]
    public void Loss_of_diameter_is_that_worked_by_hand() => Printed.Matches(.05, SizeChecks.DiameterLoss(.019, .020, Trace.None));

    [Fact]
    [Verifies("turns-after-cut", Check.WorkedExample, "by hand: a drum of 0.5 m takes 1.5708 m a turn; 3.1416 m less are two turns less")]
    public void Turns_after_a_cut_are_those_worked_by_hand() => Printed.Matches(3, LeftChecks.TurnsAfterCut(5, Math.PI, .5, Trace.None));

    [Fact]
    public void Cut_takes_turns_from_the_drum()
    {
        // 0.91 m off a drum of 0.5 m: 0.91/(π·0.5) = 0.5793 turns.
        var mine = GoodInspection.Under(MatchingRules.MineHoist) with { BrokenWires = [new(2, WirePlace.Mouth, null, 1)] };
        var left = GoodInspection.Inspect(mine).Result.Left;
        Printed.Agrees(4.4207, left.TurnsAfterCut!.Value, 5);
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
        var general = GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing, new BrokenWires(1, WirePlace.Mouth, null, 1)) with { RuleSet = PouringRules.General });
        Assert.Equal("broken-wires-naval-fitting", general.Result.Strictest!.Id);
        Assert.Equal(ServiceDisposition.Withdraw, general.Result.Disposition);
    }

    [Fact]
    public void Inspection_that_says_nothing_holds_and_names_what_is_missing()
    {
        var inspection = GoodInspection.Inspect(new() { AssessedOn = new(2026, 3, 12), Rope = new() { DiameterM = .020 } });
        Assert.Equal(ServiceDisposition.Hold, inspection.Result.Disposition);
        Assert.All(inspection.Result.Checks.Where(check => check.Outcome == CheckOutcome.Undetermined), check => Assert.NotEmpty(check.Missing));
        Assert.DoesNotContain(inspection.Result.Checks, check => check.Outcome == CheckOutcome.Pass);
    }

    [Fact]
    public void Wires_without_a_place_are_counted_where_they_would_reject() => AnyEnd.Sample(end =>
    {
        // Whatever place the missing ones turn out to have, it was not ruled out: no pass may become a rejection.
        if (end.RuleSet is null || end.Rope.Function == RopeFunction.Unknown || end.Rope.LayLengthM is null)
        {
            return;
        }

        var before = GoodInspection.Inspect(end).Result.Checks.ToDictionary(check => check.Id);
        var told = end with { BrokenWires = [.. end.BrokenWires!.Select(one => one with { Place = one.Place == WirePlace.Unknown ? WirePlace.Mouth : one.Place, FromMouthM = one.FromMouthM ?? 0, InOneStrand = one.InOneStrand ?? one.Count })] };
        Assert.All(GoodInspection.Inspect(told).Result.Checks.Where(check => check.Outcome == CheckOutcome.Fail && check.Id.StartsWith("broken-wires", StringComparison.Ordinal)),
            check => Assert.NotEqual(CheckOutcome.Pass, before[check.Id].Outcome));
    }, iter: 2000);

    [Fact]
    public void More_broken_wires_never_improve_a_decision() => Gen.Select(AnyEnd, AnyWires).Sample((end, more) =>
        Assert.True(GoodInspection.Inspect(end).Decision <= GoodInspection.Inspect(end with { BrokenWires = [.. end.BrokenWires!, more] }).Decision), iter: 3000);

    [Fact]
    public void More_broken_wires_at_one_place_never_improve_a_decision() => AnyEnd.Sample(end =>
    {
        var wires = end.BrokenWires!;
        if (wires.Count > 0)
        {
            Assert.True(GoodInspection.Inspect(end).Decision <= GoodInspection.Inspect(end with { BrokenWires = [wires[0] with { Count = wires[0].Count + 1 }, .. wires.Skip(1)] }).Decision);
        }
    }, iter: 2000);

    [Fact]
    public void Thinner_rope_never_improves_a_decision() => Gen.Select(AnyEnd, Gen.Double[.017, .021], Gen.Double[0, .002]).Sample((end, diameter, less) =>
    {
        Decision Of(double measured) => GoodInspection.Inspect(end with { Rope = end.Rope with { MeasuredDiameterM = measured } }).Decision;
        Assert.True(Of(diameter) <= Of(diameter - less));
    }, iter: 1000);

    [Fact]
    public void Check_that_fails_with_the_weight_of_a_stop_stops() => AnyEnd.Sample(end =>
    {
        var inspection = GoodInspection.Inspect(end);
        if (inspection.Result.Checks.Any(check => check is { Outcome: CheckOutcome.Fail, Severity: Severity.Stop }))
        {
            Assert.Equal(Decision.DoNotProceed, inspection.Decision);
        }
    }, iter: 1000);

    [Fact]
    public void Trace_holds_the_formulas_of_the_inspection()
    {
        var mine = GoodInspection.Under(MatchingRules.MineHoist) with { BrokenWires = [new(2, WirePlace.Mouth, null, 1)] };
        Assert.Equal(["diameter-loss", "turns-after-cut"], GoodInspection.Inspect(mine, trace: true).Trace.Select(step => step.Formula.Id).Distinct().Order(StringComparer.Ordinal));
        Assert.Empty(GoodInspection.Inspect(mine).Trace);
    }

    [Fact]
    public void Cancelled_inspection_ends() =>
        Assert.Throws<OperationCanceledException>(() => ServiceInspection.Calculate(GoodInspection.Input, RuleBook.Current, new Budget(1), new CancellationToken(canceled: true)));
}
