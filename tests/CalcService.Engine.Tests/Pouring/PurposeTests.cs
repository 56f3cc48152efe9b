using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>What is asked for by whoever pours, plans or quotes, and how little an ordinary job has to hear.</summary>
public sealed class PurposeTests
{
    /// <summary>Only what the numbers can't exist without.</summary>
    private static PourPlanInput Bare => GoodPour.Input with
    {
        Conditions = new(), Stock = null, PourTimeS = null, Mixers = null,
        Ends = [new("A", 3, new() { DiameterM = .020 }, GoodPour.End("A", 1).Basket, ToleranceStated: true)],
    };

    [Fact]
    public void Quote_asks_for_nothing_and_has_its_kits()
    {
        var quote = GoodPour.Plan(Bare with { Purpose = Purpose.Quote });
        Assert.Empty(quote.Findings);
        Assert.Equal(Decision.Proceed, quote.Decision);
        Assert.NotNull(quote.Result.Cost);
        Assert.All(quote.Result.Mixes, mix => Assert.Null(mix.StopPouringAt));
    }

    [Fact]
    public void Quote_still_says_what_can_not_be()
    {
        var end = Bare.Ends[0];
        Assert.Equal(Decision.DoNotProceed,
            GoodPour.Plan(Bare with { Purpose = Purpose.Quote,
            Ends = [end with { Basket = end.Basket with { LargeEndDiameterM = .0235 } }] }).Decision);
    }

    [Fact]
    public void Work_ahead_has_one_caution_for_all_that_the_work_itself_makes()
    {
        var end = GoodPour.Input.Ends[0] with { Bore = null, Cleaner = null, DriedAt = null, TiltRad = null, StraightBelowM = null };
        var lot = GoodPour.Lot("A", "small", 9, "2026-12-31") with { State = null, Quarantined = Fact.Unknown, Storage = null };
        var ahead = GoodPour.Plan(GoodPour.Input with
        {
            Purpose = Purpose.Plan, Ends = [end, end with { Id = "B" }], Stock = [lot],
                Conditions = new() { Room = GoodPour.Input.Conditions.Room, Jurisdiction = "US" },
        });
        var finding = Assert.Single(ahead.Findings);
        Assert.Equal((StatedFacts.NotStated, Severity.Caution), (finding.Definition, finding.Severity));
        Assert.Superset(new HashSet<string> { "/ends/0/socket/bore", "/ends/1/socket/bore", "/stock/0/quarantined",
            "/conditions/steelTemperature" }, finding.Related.Append(finding.Pointer).ToHashSet());
        Assert.Superset(new HashSet<string> { "broom", "alignment", "steel", "lots", "ignition", "fit" },
            ahead.Result.HoldPoints.Select(point => point.What).ToHashSet());
    }

    [Fact]
    public void Pour_done_now_never_proceeds_on_what_nobody_said()
    {
        var pour = GoodPour.Plan(Bare);
        Assert.Equal(Decision.Undetermined, pour.Decision);
        Assert.Equal(Purpose.Pour,
            new PourPlanInput { PourAt = Bare.PourAt, Compound = Bare.Compound, Conditions = Bare.Conditions, Ends = Bare.Ends }.Purpose);
    }

    /// <summary>A finding is news: an ordinary job with everything said gives at most two besides the demonstration's.</summary>
    [Theory]
    [InlineData(8, false)]
    [InlineData(12.7, true)]
    [InlineData(20, false)]
    [InlineData(25.4, true)]
    [InlineData(44, false)]
    [InlineData(76, true)]
    public void Ordinary_whole_job_has_at_most_two_findings(double millimetres, bool isFibre)
    {
        var diameter = millimetres / 1000;
        var end = GoodPour.End("A", 4) with
        {
            Rope = new()
            {
                DiameterM = diameter, Construction = "6x36", Core = isFibre ? RopeCore.Fibre : RopeCore.Iwrc, Grade = 1770,
                    Finish = WireFinish.Galvanized, PlasticFilled = Fact.No,
                Lubricant = Lubricant.Light,
            },
            FibreCore = isFibre ? BroomPart.Removed : null,
            Basket = new() { SmallEndDiameterM = diameter * 1.15, LargeEndDiameterM = diameter * 2.25, LengthM = diameter * 5.2,
            ToleranceM = diameter * .01 },
            SocketBreakingForceN = 1770e6 * .4 * diameter * diameter,
        };
        foreach (var (air, steel, compound) in new[] { (8.0, 7.5, 16.0), (14, 13, 17), (22, 21, 20), (29, 28, 24) })
        {
            var job = GoodPour.Input with
            {
                Compound = GoodPour.Sheet with { Demonstration = true },
                // A shop of ordinary size, whose air near the work nobody measured.
                Conditions = GoodPour.Input.Conditions with
                {
                    AirK = air + GoodPour.Zero, SteelK = steel + GoodPour.Zero, CompoundK = compound + GoodPour.Zero, RelativeHumidity = .5,
                        Room = new(1500, 6.0 / 3600), MixingFactor = null,
                    Place = PourPlace.Indoors,
                },
                Ends = [end, end with { Id = "B", Quantity = 2 }],
                Stock = [GoodPour.Lot("S", "small", 60, "2026-12-31"), GoodPour.Lot("L", "large", 60, "2026-12-31")],
                PourTimeS = 60,
                Mixers = 2,
            };
            var findings = GoodPour.Plan(job).Findings.Where(finding => finding.Definition != CompoundFindings.Demonstration).ToArray();
            Assert.True(findings.Length <= 2, string.Join(", ", findings.Select(finding => finding.Definition.Code)));
        }
    }

    [Fact]
    public void Outdoors_said_is_no_finding()
    {
        var plan =
            GoodPour.Plan(GoodPour.Input with { Conditions = GoodPour.Input.Conditions with { Place = PourPlace.Outdoors, Room = null } });
        Assert.Empty(plan.Findings);
        Assert.Contains(plan.Assumptions, assumption => assumption.Pointer == "/conditions/place");
    }

    [Fact]
    public void Thousand_ends_alike_are_told_as_one()
    {
        var end = Bare.Ends[0];
        var plan = GoodPour.Plan(Bare with { Ends = [.. Enumerable.Range(0, 1000).Select(i => end with { Id = $"E{i}", Quantity = 1 })] });
        Assert.InRange(plan.Findings.Count, 1, 9);
        var asked = plan.Findings.Single(finding => finding.Definition == StatedFacts.NotStated
            && finding.Pointer == "/ends/0/socket/bore");
        Assert.Contains("/ends/999/socket/bore", asked.Related);
    }
}
