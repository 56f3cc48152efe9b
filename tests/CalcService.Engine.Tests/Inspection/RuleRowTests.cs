using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>Every row of the rule sets on both sides of its edge, with document and clause beside it.</summary>
public sealed class RuleRowTests
{
    private const string Crane = InspectionRules.ConstructionCrane;
    private const string Mine = MatchingRules.MineHoist;
    private const string Naval = InspectionRules.Naval;

    /// <summary>Rule set, function, wires, check, whether it rejects.</summary>
    public static TheoryData<string, RopeFunction, BrokenWires[], string, bool> Wires => new()
    {
        // 29 CFR 1926.1413(a)(2)(ii)(A)(1): running ropes, six in one lay or three in one strand in one lay.
        { Crane, RopeFunction.Running, [Lay(5, 4, 2)], "running-lay", false },
        { Crane, RopeFunction.Running, [Lay(6, 4, 2)], "running-lay", true },
        { Crane, RopeFunction.Running, [Lay(3, 4, 1), Lay(3, 4.13, 1)], "running-lay", true },
        { Crane, RopeFunction.Running, [Lay(3, 4, 1), Lay(3, 4.14, 1)], "running-lay", false },
        { Crane, RopeFunction.Running, [Lay(3, 4, 2)], "running-strand", false },
        { Crane, RopeFunction.Running, [Lay(3, 4, 3)], "running-strand", true },
        { Crane, RopeFunction.Running, [Lay(3, 4, 3), Lay(1, 6, 1)], "running-strand", true },
        // Six of one group lie together wherever they are.
        { Crane, RopeFunction.Running, [new(6, WirePlace.Lay, null, 1), new(1, WirePlace.Lay, null, 1)], "running-lay", true },
        // (A)(2): rotation resistant ropes, two in six diameters or four in thirty; 6·20 and 30·20 mm.
        { Crane, RopeFunction.RotationResistant, [Lay(1, 4, 1), Lay(1, 4.121, 1)], "rotation-resistant-six-diameters", false },
        { Crane, RopeFunction.RotationResistant, [Lay(1, 4, 1), Lay(1, 4.12, 1)], "rotation-resistant-six-diameters", true },
        { Crane, RopeFunction.RotationResistant, [Lay(1, 4, 1), Lay(1, 4.2, 1), Lay(1, 4.4, 1), Lay(1, 4.601, 1)],
            "rotation-resistant-thirty-diameters", false },
        { Crane, RopeFunction.RotationResistant, [Lay(1, 4, 1), Lay(1, 4.2, 1), Lay(1, 4.4, 1), Lay(1, 4.6, 1)],
        "rotation-resistant-thirty-diameters", true },
        // (A)(3): pendants and standing ropes, more than two in one lay beyond end connections, more than one at an end connection.
        { Crane, RopeFunction.Standing, [Lay(2, 4, 1)], "standing-lay", false },
        { Crane, RopeFunction.Standing, [Lay(3, 4, 1)], "standing-lay", true },
        { Crane, RopeFunction.Pendant, [Lay(3, 4, 1)], "standing-lay", true },
        { Crane, RopeFunction.Standing, [Mouth(1)], "standing-end", false },
        { Crane, RopeFunction.Standing, [Mouth(2)], "standing-end", true },
        { Crane, RopeFunction.Pendant, [Mouth(2)], "standing-end", true },
        // In a lay at an end connection: the one at the mouth and the one 60 mm away lie in the same lay of 130 mm.
        { Crane, RopeFunction.Pendant, [Mouth(1), Lay(1, .06, 1)], "standing-end", true },
        { Crane, RopeFunction.Pendant, [Lay(1, .06, 1), Lay(1, .13, 1)], "standing-end", true },
        { Crane, RopeFunction.Pendant, [Mouth(1), Lay(1, .131, 1)], "standing-end", false },
        // 30 CFR 56.19027, 57.19027, 75.1437, 77.1437, each (a): more than one broken wire at an attachment, whatever the rope does.
        { Mine, RopeFunction.Running, [Mouth(1)], "mine-end", false },
        { Mine, RopeFunction.Running, [Mouth(2)], "mine-end", true },
        { Mine, RopeFunction.Standing, [Mouth(2)], "mine-end", true },
        { Mine, RopeFunction.Unknown, [Mouth(2)], "mine-end", true },
        // 30 CFR 56.19024, 57.19024, 75.1434, 77.1434, each (b): more than one broken wire in the valley in one lay.
        { Mine, RopeFunction.Running, [new(1, WirePlace.Valley, 4, 1)], "mine-valley", false },
        { Mine, RopeFunction.Running, [new(1, WirePlace.Valley, 4, 1), new(1, WirePlace.Valley, 4.1, 1)], "mine-valley", true },
        // US Navy Towing Manual, appendix B: six in a lay, three in a strand, one within one lay of an end fitting.
        { Naval, RopeFunction.Running, [Lay(5, 4, 2)], "naval-lay", false },
        { Naval, RopeFunction.Standing, [Lay(6, 4, 2)], "naval-lay", true },
        { Naval, RopeFunction.Running, [Lay(3, 4, 2)], "naval-strand", false },
        { Naval, RopeFunction.Sling, [Lay(3, 4, 3)], "naval-strand", true },
        { Naval, RopeFunction.Standing, [Lay(1, .131, 1)], "naval-fitting", false },
        { Naval, RopeFunction.Standing, [Lay(1, .13, 1)], "naval-fitting", true },
        { Naval, RopeFunction.Running, [Mouth(1)], "naval-fitting", true },
    };

    [Theory]
    [MemberData(nameof(Wires))]
    public void Broken_wires_reject_from_the_number_of_their_row_on(string ruleSet, RopeFunction function, BrokenWires[] wires, string row,
        bool rejects)
    {
        var inspection =
            GoodInspection.Inspect(GoodInspection.Under(ruleSet) with { Rope = GoodInspection.Input.Rope with { Function = function },
            BrokenWires = wires });
        var check = inspection.Result.Checks.Single(check => check.Id == "broken-wires-" + row);
        Assert.Equal(rejects ? CheckOutcome.Fail : CheckOutcome.Pass, check.Outcome);
        if (rejects)
        {
            Assert.Equal(ServiceDisposition.Withdraw, inspection.Result.Disposition);
        }
    }

    /// <summary>29 CFR 1926.1413(a)(2)(ii)(A)(3) against the Navy's one broken wire within one lay of a fitting.</summary>
    [Theory]
    [InlineData(Crane, 1, ServiceDisposition.Serve)]
    [InlineData(Crane, 2, ServiceDisposition.Withdraw)]
    [InlineData(Naval, 1, ServiceDisposition.Withdraw)]
    public void Wires_at_the_end_of_a_standing_rope_reject_from_two_on_under_the_crane_rule_and_from_one_on_under_the_naval(string ruleSet,
        int count, ServiceDisposition disposition) =>
        Assert.Equal(disposition,
        GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing, Mouth(count)) with { RuleSet = ruleSet }).Result.Disposition);

    [Fact]
    public void Row_of_another_function_is_not_asked()
    {
        var checks = GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing)).Result.Checks.Select(check => check.Id).ToArray();
        Assert.Contains("broken-wires-standing-end", checks);
        Assert.DoesNotContain(checks, id => id.Contains("running", StringComparison.Ordinal)
            || id.Contains("rotation", StringComparison.Ordinal));
    }

    /// <summary>
    /// Sizes of the law on both sides: 5 % of nominal (29 CFR 1926.1413(a)(2)(ii)(B)), 6 % of baseline and 10 % strength (30 CFR
    /// 77.1434(g), (h)), three turns (77.1436(b)); turns dispose of no end.
    /// </summary>
    [Theory]
    [InlineData(Crane, .0190, .020, 0, 5, true)]
    [InlineData(Crane, .01899, .020, 0, 5, false)]
    [InlineData(Mine, .0188, .020, 0, 5, true)]
    [InlineData(Mine, .01879, .020, 0, 5, false)]
    [InlineData(Mine, .0190, .020, .10, 5, true)]
    [InlineData(Mine, .0190, .020, .101, 5, false)]
    [InlineData(Mine, .0190, .020, 0, 3, true)]
    public void Sizes_are_held_against_the_law(string ruleSet, double measuredM, double baselineM, double strengthLoss, double turns,
        bool serves)
    {
        var good = GoodInspection.Under(ruleSet);
        var inspection = GoodInspection.Inspect(good with
        {
            Rope = good.Rope with { MeasuredDiameterM = measuredM }, BaselineDiameterM = baselineM, StrengthLoss = strengthLoss,
                DrumTurnsLeft = turns,
        });
        Assert.Equal(serves ? ServiceDisposition.Serve : ServiceDisposition.Withdraw, inspection.Result.Disposition);
    }

    /// <summary>30 CFR 77.1436(b): three full turns.</summary>
    [Theory]
    [InlineData(3, Decision.Proceed)]
    [InlineData(2.99, Decision.DoNotProceed)]
    public void Turns_on_the_drum_of_a_mine_are_three_at_least(double turns, Decision decision) =>
        Assert.Equal(decision, GoodInspection.Inspect(GoodInspection.Under(Mine) with { DrumTurnsLeft = turns }).Decision);

    /// <summary>WAC 296-870-30025(1): non-drum ends are socketed again within 24 months.</summary>
    [Theory]
    [InlineData("2024-03-12", ServiceDisposition.Serve)]
    [InlineData("2024-03-11", ServiceDisposition.Withdraw)]
    public void Platform_is_socketed_again_within_two_years(string socketedOn, ServiceDisposition disposition)
    {
        var made = DateOnly.ParseExact(socketedOn, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var result = GoodInspection.Inspect(GoodInspection.Under(InspectionRules.Platform) with { SocketedOn = made }).Result;
        Assert.Equal(disposition, result.Disposition);
        Assert.Equal(new DateOnly(2026, 3, made.Day), result.NextDue!.On);
    }

    /// <summary>The law speaks of ends that are not at a drum.</summary>
    [Theory]
    [InlineData(null, Decision.DoNotProceed)]
    [InlineData(false, Decision.DoNotProceed)]
    [InlineData(true, Decision.Proceed)]
    public void End_at_the_drum_of_a_platform_has_no_day(bool? isAtDrum, Decision decision)
    {
        var inspection =
            GoodInspection.Inspect(GoodInspection.Under(InspectionRules.Platform) with { SocketedOn = new(2024, 3, 11),
            IsAtDrum = isAtDrum });
        Assert.Equal((decision, isAtDrum == true), (inspection.Decision, inspection.Result.NextDue is null));
    }

    [Fact]
    public void Rows_name_document_and_clause() => Assert.All(Editions.Known.Current.Inspection.All.Where(limit =>
        limit.RuleSet != PouringRules.General), limit =>
    {
        // A condition's stop is our own rule beside the law's clause.
        Assert.True(limit.Source.Basis is Basis.Law or Basis.Published || ((Measure?)limit is null && limit.Source.Basis is Basis.Derived));
        Assert.NotEmpty(limit.Source.Clause);
    });

    /// <summary>TM 5-3810-288-12, NAVFAC MO-118: 3 ft = 914.4 mm beyond the broken wires.</summary>
    [Fact]
    public void Cut_lies_beyond_the_farthest_wire()
    {
        Printed.Matches(.9144, GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing, Mouth(2))).Result.CutFromM!.Value);
        Printed.Matches(4.9144,
            GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing, Mouth(2), Lay(1, 4, 1))).Result.CutFromM!.Value);
    }

    private static BrokenWires Lay(int count, double fromMouthM, int inOneStrand) => new(count, WirePlace.Lay, fromMouthM, inOneStrand);

    private static BrokenWires Mouth(int count) => new(count, WirePlace.Mouth, null, 1);
}
