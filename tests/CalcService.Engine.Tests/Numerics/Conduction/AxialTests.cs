using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Tests.Numerics.Conduction;

/// <summary>Heat along the axis, against exact solutions.</summary>
public sealed class AxialTests
{
    [Fact]
    public void Slab_with_one_face_to_the_air_follows_the_series()
    {
        // Plane wall at Bi 1: ζ₁ .8603, C₁ 1.1191 (Çengel, Table 4-2); the roots of ζ·tan ζ = 1.
        const double Fourier = .4;
        var network = Bodies.Cylinder(Bodies.Even(.3, 3), 1, 40, new(1, .01, 1), 0, 0, 1);
        var (found, _) = Bodies.At(network, 1, PiecewiseLinear.Constant(0), Fourier);
        var exact = 0.0;
        for (var n = 0; n < 6; n++)
        {
            var root = Reference.Root(z => (z * Math.Tan(z)) - 1, n * Math.PI, (n * Math.PI) + (Math.PI / 2) - 1e-9);
            exact += 4 * Math.Sin(root) / ((2 * root) + Math.Sin(2 * root)) * Math.Exp(-root * root * Fourier);
        }

        Assert.All(found[..4], centre => Assert.InRange(centre - exact, -1e-4, 1e-4));
    }

    [Fact]
    public void Heated_rod_in_the_air_is_the_fin_of_the_textbook()
    {
        // A fin with an adiabatic tip (Çengel, section 3-6): T(z) = q/(√(h·P·k·A)·tanh(m·L))·cosh(m·(L − z))/cosh(m·L), m² = h·P/(k·A).
        const double Radius = .01, Film = 20, Conductivity = 50, Length = .3, Watts = 2;
        const int Rows = 60;
        var network = Bodies.Cylinder([0, Radius], Length, Rows, new(1e5, 1e6, Conductivity), Film, 0, 0);
        network.AddReaction(0, Watts);
        var (found, run) = Bodies.At(network, 0, PiecewiseLinear.Constant(0), 1e6, reaction: new Steady());
        var perimeter = 2 * Math.PI * Radius;
        var section = Math.PI * Radius * Radius;
        var m = Math.Sqrt(Film * perimeter / (Conductivity * section));
        double Exact(double z) =>
            Watts / (Math.Sqrt(Film * perimeter * Conductivity * section) * Math.Tanh(m * Length)) * Math.Cosh(
            m * (Length - z)) / Math.Cosh(m * Length);

        // The rows are 5 mm apart: (m·5 mm)²/12 is 1.7e-4.
        for (var row = 0; row <= Rows; row += 10)
        {
            Printed.Matches(Exact(Length * row / Rows), found[row * 2], 3e-4);
        }

        Assert.Equal(ConductionEnd.Reached, run.End);
        Assert.InRange(run.Balance.RelativeError, 0, 1e-10);
    }

    [Fact]
    public void Cylinder_of_finite_length_is_the_product_of_cylinder_and_slab()
    {
        // Product solution (Çengel, section 4-4).
        const double Fourier = .3;
        var radii = Bodies.Even(1, 24);
        var material = new RingMaterial(1, 1, 1);
        var air = PiecewiseLinear.Constant(0);
        var (both, _) = Bodies.At(Bodies.Cylinder(radii, 1, 24, material, 1, 0, 1), 1, air, Fourier);
        var (across, _) = Bodies.At(Bodies.Slice(radii, material, 1), 1, air, Fourier);
        var (along, _) = Bodies.At(Bodies.Cylinder([0, .1], 1, 24, material, 0, 0, 1), 1, air, Fourier);

        for (var row = 0; row <= 24; row += 6)
        {
            for (var i = 0; i <= 24; i += 6)
            {
                Assert.InRange(both[(row * 25) + i] - (across[i] * along[row * 2]), -1e-5, 1e-5);
            }
        }
    }

    private sealed class Steady : IReaction
    {
        public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS) => ratePerS.Fill(1);
    }
}
