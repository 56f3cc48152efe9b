using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>The short formulas of a pour, reached through plans where the method is not public.</summary>
public sealed class PouringFormulaTests
{
    [Fact]
    [Verifies("pot-life", Check.WorkedExample, "by hand: 75 % of a gel time of 24 min is 18 min")]
    public void Pot_life_is_the_usable_share_of_the_gel_time()
    {
        var plan = GoodPour.Plan(GoodPour.Input with { Conditions = GoodPour.Input.Conditions with { AirK = 20 + 273.15 } });
        Printed.Matches(18 * 60, plan.Result.Gel!.PotLifeS!.Value);
    }

    [Theory]
    [InlineData(3, 1, 30, 6, 120, 810)] // three kits one after another, then six baskets
    [InlineData(3, 2, 30, 6, 120, 780)] // two side by side, the third alone
    [InlineData(3, 5, 30, 6, 120, 750)]
    [Verifies("use-time", Check.WorkedExample, "by hand")]
    public void Use_time_is_that_worked_by_hand(int kits, int mixers, double mixS, int baskets, double pourS, double expected) =>
        Assert.Equal(expected, UseTime(kits, mixers, mixS, baskets, pourS), 1e-9);

    [Fact]
    [Verifies("use-time", Check.IndependentCode,
        "a clock for each mixer: the next kit goes to whoever is free first, then one pourer fills")]
    public void Use_time_is_that_of_a_crew_followed_kit_by_kit() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 4], Gen.Int[1, 300], Gen.Int[1, 9], Gen.Int[1, 300]).Sample(
            (kits, mixers, mixS, baskets, pourS) =>
            {
                var freeAt = new double[mixers];
                for (var kit = 0; kit < kits; kit++)
                {
                    freeAt[Array.IndexOf(freeAt, freeAt.Min())] += mixS;
                }

                var clock = freeAt.Max();
                for (var basket = 0; basket < baskets; basket++)
                {
                    clock += pourS;
                }

                Assert.Equal(clock, UseTime(kits, mixers, mixS, baskets, pourS), 1e-9);
            },
            iter: 200);

    [Fact]
    [Verifies("needed-volume", Check.WorkedExample,
        "by hand: 6 baskets of 100 mL and 2 of 250 mL with 10 % and 40 mL left in the vessel are 1250 mL")]
    public void Needed_volume_is_that_worked_by_hand()
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Compound = GoodPour.Sheet with { PotLife = null },
            Ends = [GoodPour.Cylinder("A", 6, 100e-6), GoodPour.Cylinder("B", 2, 250e-6)],
            Allowance = .10,
            VesselResidueM3 = 40e-6,
        });
        Printed.Matches(1250e-6, plan.Result.NeededM3!.Value);
    }

    /// <summary>A plan whose stock is one kit size that holds just enough, so that the number of kits is known.</summary>
    private static double UseTime(int kits, int mixers, double mixS, int baskets, double pourS)
    {
        double small = 100e-6;
        var input = GoodPour.Input with
        {
            Ends = [GoodPour.Cylinder("A", baskets, small * kits / baskets * (1 - 1e-2))],
            Compound = GoodPour.Input.Compound with { Kits = [new("only", small, 1)], MixingTimeS = mixS, PotLife = null },
            Mixers = mixers,
            PourTimeS = pourS,
            Allowance = 0,
        };
        var mix = GoodPour.Plan(input).Result.Mixes[0];
        Assert.Equal(kits, mix.Kits.Sum(kit => kit.Count));
        return mix.UsedInS!.Value;
    }
}
