using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Cones.Heat;

/// <summary>The cure inside the heat solver, against what is known without conduction.</summary>
public sealed class CureInPlaceTests
{
    private static readonly ConeGrid Fine = new(4, 1, 1, 0, new(1e-4, 1e-8));

    [Theory]
    [InlineData(5, .086969)]
    [InlineData(10, .289150)]
    [InlineData(20, .635163)]
    public void Cure_without_heat_follows_the_exact_law(double minutes, double printed)
    {
        // m + n = 2: y = α/(1 − α), y^(1−m) = y₀^(1−m) + (1 − m)·k·t. Constants: Bogetti and Gillespie, J. Compos. Mater. 25 (1991), seed
        // 1e-6, 100 °C.
        var input = Cones.Thick() with
        {
            Law = new CureLaw(0, 0, 3.7e22 / 60, 167.4e3, .524, 1.476),
            Materials = Cones.Materials with { ReactionHeatJPerKg = 0 },
            Surroundings = new() { CompoundK = Cones.Zero + 100, SteelK = Cones.Zero + 100,
            AirK = PiecewiseLinear.Constant(Cones.Zero + 100), StartDegree = 1e-6 },
            HorizonS = minutes * 60,
            Grid = Fine,
        };
        Printed.Matches(printed, Cones.Slice(input).LeastDegree, 1e-4);
    }

    [Fact]
    public void Compound_that_keeps_its_heat_gels_after_10_14_min_instead_of_11_71()
    {
        // Independent code: the hot law from 20 °C to the degree .05, 11.71 min at its temperature, 10.14 min with its heat.
        var input = Cones.Thick() with { Degrees = [.05, .9], Grid = Fine };
        var steady = Cones.Slice(input with { Materials = Cones.Materials with { ReactionHeatJPerKg = 0 } });
        // A conductivity of next to nothing keeps each ring's heat in it.
        var kept = Cones.Slice(input with { Materials = Cones.Materials with { CompoundConductivityWPerMK = 1e-9 } });

        Assert.InRange(steady.Degrees[0].EverywhereS!.Value / 60, 11.705, 11.715);
        Assert.InRange(kept.Degrees[0].FirstS!.Value / 60, 10.135, 10.145);
        // w·H/c = 126 K of rise.
        Assert.InRange(kept.Peak.TemperatureK - Cones.Zero - 20, 125.5, 126.001);
    }

    [Fact]
    public void Compound_that_keeps_its_heat_follows_a_plain_integration()
    {
        var input = Cones.Thick() with { Degrees = [.5], Grid = Fine,
            Materials = Cones.Materials with { CompoundConductivityWPerMK = 1e-9 } };
        var time = Cones.Slice(input).Degrees[0].FirstS!.Value;
        var reached = Reference.RungeKutta(degree => Cones.Hot.RatePerS(degree, Cones.Zero + 20 + (126 * degree)), 0, time, 20000);
        // It runs through .5 at 4 % a second.
        Assert.InRange(reached, .5 - 2e-4, .5 + 2e-4);
    }
}
