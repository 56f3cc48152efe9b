using CalcService.Engine.Cones;

namespace CalcService.Engine.Tests.Matching;

/// <summary>What the trade says of a poured end, held against a match: common practice, no source. The sheet is the test's own.</summary>
public sealed class CommonPracticeTests
{
    [Theory]
    [InlineData(-65, 240, false)]
    [InlineData(-66, 240, true)]
    [InlineData(-65, 241, true)]
    public void Resin_serves_from_65_below_to_240_degrees_Fahrenheit(double lowest, double highest, bool stops)
    {
        var match = GoodMatch.Match(GoodMatch.Input with
        {
            Compound = GoodMatch.Sheet with { Service = new(Fahrenheit(-65), Fahrenheit(240)) },
            Service = GoodMatch.Input.Service with { LowestK = Fahrenheit(lowest), HighestK = Fahrenheit(highest) },
        });
        Assert.Equal(stops, match.Findings.Any(finding => finding.Definition.Code == "service-outside-sheet"));
    }

    [Fact]
    public void Type_tested_end_holds_the_full_strength_of_the_rope() =>
        Assert.DoesNotContain(GoodMatch.Match(GoodMatch.Input).Findings,
        finding => finding.Definition.Code.StartsWith("efficiency", StringComparison.Ordinal));

    [Fact]
    public void Socket_of_no_standard_is_a_question_to_its_maker() =>
        Assert.Contains(GoodMatch.Match(GoodMatch.Input with { Socket = GoodMatch.Input.Socket with { Standard = null } }).Findings,
            finding => finding.Definition.Code == "socket-standard-missing");

    [Fact]
    public void Resin_that_shrank_lets_the_cone_seat_deeper()
    {
        double Seating(double shrinkage) => ConeLoad.Solve(
            new()
            {
                Basket = GoodMatch.Input.Socket.Basket, OuterAtSmallEndM = .040, OuterAtMouthM = .070, Friction = .2, Shrinkage = shrinkage,
                CompoundModulusPa = 6e9, RadialModulusPa = 9e9, PoissonRatio = .25, WireAreaM2 = 184e-6,
            },
            100e3, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!.SeatAtSmallEndM;
        Assert.True(Seating(.006) > Seating(.002) && Seating(.002) > 0);
    }

    private static double Fahrenheit(double degrees) => (degrees + 459.67) * 5 / 9;
}
