using CalcService.Engine.Cones;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Numerics;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>
/// Hoop stress of the basket: the pressure of the cone in the socket as drawn, whose solution has its own checks in ConeCheckValueTests,
/// times Lamé's factor of the wall that is left, worked out here by hand.
/// </summary>
public sealed class ReuseWallTests
{
    [Fact]
    public void Wall_as_made_is_stressed_by_the_pressure_of_the_cone() =>
        Printed.Matches(Highest(Cone(.070, .070), 50e3, _ => 0, _ => .070), Hoop(Assess(Input).Result.AsMade!), 1e-9);

    /// <summary>
    /// Stress against the shrunk cone doesn't go with the load, so that at proof load it is computed again: 100 kN over 355 N/mm².
    /// </summary>
    [Fact]
    public void Wall_at_the_proof_load_is_stressed_by_the_cone_at_that_load() =>
        Printed.Matches(Highest(Cone(.070, .070), 100e3, _ => 0, _ => .070) / 355e6, Part(Assess(Input).Result.AsMade!).AtProof, 1e-9);

    /// <summary>
    /// Wall of 69.8 less pits of half a millimetre all round; bores grown as at the nearest section, 0.2, 0.2 and 0.1 mm.
    /// </summary>
    [Fact]
    public void Pits_go_off_the_wall_and_the_bore_grows_with_its_section() => Printed.Matches(
        Highest(Cone(.070, .070), 50e3, Growth, _ => .0688), Hoop(Assess(Found(found => found with { PitDepthM = .0005 })(Input))
            .Result.AsMeasured!), 1e-9);

    /// <summary>A wall of 60 mm at the small end and 75 mm at the mouth, found 59.8 and 74.8.</summary>
    [Fact]
    public void Wall_that_widens_is_taken_where_the_bore_is()
    {
        var input = Found(found => found with { OuterAtSmallEndM = .0598,
            OuterAtMouthM = .0748 })(Drawn(drawn => drawn with { OuterAtSmallEndM = .060, OuterAtMouthM = .075 })(Input));
        Printed.Matches(Highest(Cone(.060, .075), 50e3, Growth, share => .0598 + (share * .015)), Hoop(Assess(input).Result.AsMeasured!),
            1e-9);
        Printed.Matches(Highest(Cone(.060, .075), 50e3, _ => 0, share => .060 + (share * .015)), Hoop(Assess(input).Result.AsMade!), 1e-9);
    }

    /// <summary>
    /// A rope that is known and goes in brings its own wires; one that is too large for the socket says nothing about its wall.
    /// </summary>
    [Fact]
    public void Wires_are_those_of_a_rope_that_goes_in()
    {
        Outcome<ReuseResult> With(double areaM2) =>
            Assess(For(use => use with { Rope = use.Rope! with { MetallicAreaM2 = areaM2 } })(Input));
        Printed.Matches(Highest(Cone(.070, .070) with { WireAreaM2 = 150e-6 }, 50e3, _ => 0, _ => .070), Hoop(With(150e-6).Result.AsMade!),
            1e-9);
        Assert.Equal(Hoop(Assess(Input).Result.AsMade!), Hoop(With(420e-6).Result.AsMade!));
    }

    /// <summary>Of a class that nobody knows, so that the wires take their usual share.</summary>
    private static ReuseInput Input { get; } = Roped(rope => rope with { Construction = null })(GoodSocket.Input);

    private static double Growth(double share) => share < .25 ? .2 / 23 : share < .75 ? .2 / 34 : .1 / 45;

    private static PartLoad Part(Utilisation parts) => parts.Parts.Single(part => part.Id == "basket-hoop");

    private static double Hoop(Utilisation parts) => Part(parts).StressPa;

    /// <summary>
    /// The cone of a filled polyester: 6000 N/mm², ν .25, two per cent by volume, a third of it along; μ .2; wires over .44 of the
    /// small end.
    /// </summary>
    private static Cone Cone(double outerAtSmallEndM, double outerAtMouthM) => new()
    {
        Basket = Input.Socket.Nominal.Basket, OuterAtSmallEndM = outerAtSmallEndM, OuterAtMouthM = outerAtMouthM, Friction = .2,
            Shrinkage = .02 / 3,
        CompoundModulusPa = 6e9, RadialModulusPa = 9e9, PoissonRatio = .25, WireAreaM2 = .44 * Math.PI / 4 * .023 * .023,
    };

    private static double Highest(Cone cone, double loadN, Func<double, double> growth, Func<double, double> outerM)
    {
        var state = ConeLoad.Solve(cone, loadN, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!;
        return state.Stations.Max(station =>
        {
            var share = station.XM / .100;
            var ratio = outerM(share) / ((.023 + (share * .022)) * (1 + growth(share)));
            return station.PressurePa * ((ratio * ratio) + 1) / ((ratio * ratio) - 1);
        });
    }
}
