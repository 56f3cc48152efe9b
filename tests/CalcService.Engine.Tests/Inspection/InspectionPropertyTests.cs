using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CsCheck;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>What holds for every end.</summary>
public sealed class InspectionPropertyTests
{
    private static readonly Gen<BrokenWires> AnyWires = Gen.Select(Gen.Int[1, 7], Gen.Enum<WirePlace>(), Gen.Double[0, 3], Gen.Bool,
        Gen.Int[1, 7], Gen.Bool)
        .Select((count, place, from, placed, strand, told) =>
        new BrokenWires(count, place, placed ? from : null, told ? Math.Min(strand, count) : null));

    private static readonly Gen<InspectionInput> AnyEnd =
        Gen.Select(Gen.Int[0, 5].Select(set => set < 5 ? InspectionRules.RuleSets[set] : null), Gen.Enum<RopeFunction>(), Gen.Bool,
        AnyWires.Array[0, 4], Gen.Bool, Gen.Double[0, 6], Gen.Bool)
            .Select((ruleSet, function, laid, wires, drum, turns, spare) => GoodInspection.Under(ruleSet) with
            {
                Rope = GoodInspection.Input.Rope with { Function = function, LayLengthM = laid ? .13 : null },
                BrokenWires = wires,
                DrumTurnsLeft = turns,
                DrumDiameterM = drum ? .5 : null,
                LengthLeftM = spare ? 2 : null,
            });

    [Fact]
    public void Wires_without_a_place_are_counted_where_they_would_reject() => AnyEnd.Sample(end =>
    {
        // Whatever place the missing ones turn out to have, it was not ruled out: no pass may become a rejection.
        if (end.RuleSet is null || end.Rope.Function == RopeFunction.Unknown || end.Rope.LayLengthM is null)
        {
            return;
        }

        var before = GoodInspection.Inspect(end).Result.Checks.ToDictionary(check => check.Id);
        var told =
            end with { BrokenWires =
            [.. end.BrokenWires!.Select(one =>
            one with { Place = one.Place != WirePlace.Unknown ? one.Place : one.FromMouthM is null ? WirePlace.Mouth : WirePlace.Lay,
            FromMouthM = one.FromMouthM ?? 0, InOneStrand = one.InOneStrand ?? one.Count })] };
        Assert.All(GoodInspection.Inspect(told)
            .Result.Checks.Where(check => check.Outcome == CheckOutcome.Fail
            && check.Id.StartsWith("broken-wires", StringComparison.Ordinal)),
            check => Assert.NotEqual(CheckOutcome.Pass, before[check.Id].Outcome));
    }, iter: 2000);

    [Fact]
    public void More_broken_wires_never_improve_a_decision() => Gen.Select(AnyEnd, AnyWires).Sample((end, more) =>
        Assert.True(GoodInspection.Inspect(end).Decision <= GoodInspection.Inspect(end with { BrokenWires = [.. end.BrokenWires!, more] })
        .Decision), iter: 3000);

    [Fact]
    public void More_broken_wires_at_one_place_never_improve_a_decision() => AnyEnd.Sample(end =>
    {
        var wires = end.BrokenWires!;
        if (wires.Count > 0)
        {
            Assert.True(GoodInspection.Inspect(end)
                .Decision <= GoodInspection.Inspect(end with { BrokenWires = [wires[0] with { Count = wires[0].Count + 1 },
                .. wires.Skip(1)] }).Decision);
        }
    }, iter: 2000);

    [Fact]
    public void Thinner_rope_never_improves_a_decision() =>
        Gen.Select(AnyEnd, Gen.Double[.017, .021], Gen.Double[0, .002]).Sample((end, diameter, less) =>
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
}
