using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Tests.Numerics.Conduction;

/// <summary>Endless cylinders in moving air, against the exact series.</summary>
public sealed class CylinderTests
{
    [Fact]
    public void First_root_and_coefficient_at_Bi_1_are_the_printed_ones()
    {
        // VanSant, Conduction Heat Transfer Solutions (UCRL-52863); Çengel, Heat and Mass Transfer, Table 4-2.
        var (root, coefficient) = Term(1, 0);
        Printed.Agrees(1.255784, root, 7);
        Printed.Agrees(1.207092, coefficient, 7);
    }

    [Theory]
    [InlineData(.1)]
    [InlineData(.5)]
    [InlineData(1)]
    public void Cylinder_at_Bi_1_follows_the_series(double fourier)
    {
        var radii = Bodies.Even(1, 80);
        var (found, _) = Bodies.At(Bodies.Slice(radii, new(1, 1, 1), film: 1), 1, PiecewiseLinear.Constant(0), fourier);

        Assert.All(new[] { 0, 40, 80 }, i => Assert.InRange(found[i] - Exact(1, fourier, radii[i]), -3e-5, 3e-5));
    }

    [Fact]
    public void Cylinder_error_falls_with_the_square_of_the_ring()
    {
        double Error(int rings) =>
            Math.Abs(Bodies.At(Bodies.Slice(Bodies.Even(1, rings), new(1, 1, 1), 1), 1, PiecewiseLinear.Constant(0), .3)
            .Temperatures[0] - Exact(1, .3, 0));

        Assert.InRange(Math.Log2(Error(10) / Error(20)), 1.9, 2.1);
        Assert.InRange(Math.Log2(Error(20) / Error(40)), 1.9, 2.1);
    }

    [Fact]
    public void Steps_of_a_smaller_tolerance_come_closer()
    {
        var network = Bodies.Slice(Bodies.Even(1, 40), new(1, 1, 1), 1);
        double At(double tolerance) => Bodies.At(network, 1, PiecewiseLinear.Constant(0), .3, new(tolerance, 1)).Temperatures[0];
        var exact = At(1e-10);

        Assert.InRange(Math.Abs(At(1e-3) - exact), 0, 1e-3);
        Assert.InRange(Math.Abs(At(1e-5) - exact), 0, 1e-5);
        Assert.InRange(Math.Abs(At(1e-7) - exact), 0, 1e-7);
    }

    [Fact]
    public void Shaft_of_the_textbook_cools_to_364_degrees_and_gives_off_636_per_mille()
    {
        // Çengel, Example 4-5: 0.20 m, k 14.9, ρ 7900, c 477, 600 → 200 °C, h 80, 45 min. Printed from a chart and rounded
        // properties: 364 °C; from the one-term series with k, ρ, c: 364.13 °C and .63614.
        var radii = Bodies.Even(.1, 60);
        var (found, run) = Bodies.At(Bodies.Slice(radii, new(7900 * 477, 14.9, 14.9), 80), 600, PiecewiseLinear.Constant(200), 45 * 60);

        Assert.InRange(found[0], 364.13 - .05, 364.13 + .05);
        Assert.InRange(run.Balance.LostJ / (7900 * 477 * Math.PI * .01 * 400), .63614 - .0002, .63614 + .0002);
        Assert.InRange(run.Balance.RelativeError, 0, 1e-10);
    }

    [Fact]
    public void Continuous_solution_is_as_good_inside_a_step_as_at_its_ends()
    {
        var network = Bodies.Slice(Bodies.Even(1, 40), new(1, 1, 1), 1);
        var air = PiecewiseLinear.Constant(0);
        var ends = new List<(double Time, double Value)>();
        Bodies.At(network, 1, air, .5, new(1e-4, 1), watch: step =>
        {
            for (var s = .25; s < 1; s += .25)
            {
                var time = step.FromS + (s * (step.ToS - step.FromS));
                ends.Add((time, step.Temperature(0, time)));
            }

            return true;
        });

        Assert.All(ends, end => Assert.InRange(end.Value - Bodies.At(network, 1, air, end.Time).Temperatures[0], -2e-4, 2e-4));
    }

    /// <summary>Σ Cₙ·J₀(ζₙ·r)·exp(−ζₙ²·Fo).</summary>
    private static double Exact(double biot, double fourier, double r)
    {
        var sum = 0.0;
        for (var n = 0; n < 4; n++)
        {
            var (root, coefficient) = Term(biot, n);
            sum += coefficient * Bessel.J0(root * r) * Math.Exp(-root * root * fourier);
        }

        return sum;
    }

    /// <summary>ζ·J₁(ζ) = Bi·J₀(ζ), one root between two zeros of J₁; C = 2·J₁/(ζ·(J₀² + J₁²)).</summary>
    private static (double Root, double Coefficient) Term(double biot, int n)
    {
        double[] zeros = [0, 3.8317059702, 7.0155866698, 10.1734681351, 13.3236919363];
        double Rising(double z) => (n % 2 == 0 ? 1 : -1) * ((z * Bessel.J1(z)) - (biot * Bessel.J0(z)));
        var root = Reference.Root(Rising, zeros[n], zeros[n + 1]);
        var (j0, j1) = (Bessel.J0(root), Bessel.J1(root));
        return (root, 2 * j1 / (root * ((j0 * j0) + (j1 * j1))));
    }
}
