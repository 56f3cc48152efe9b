using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Tests.Numerics.Conduction;

/// <summary>
/// Heat that grows with e^T in a cylinder (Frank-Kamenetskii): below a critical δ it comes to rest, above it runs away.
/// </summary>
public sealed class IgnitionTests
{
    private const double LongTime = 400;

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.8)]
    [InlineData(1.95)]
    public void Cylinder_below_the_critical_heat_rests_at_the_exact_temperature(double delta)
    {
        // Exact: centre 2·ln(1 + B) with δ = 8·B/(1 + B)², the smaller B; ln 4 at δ 2 (Frank-Kamenetskii, Diffusion and Heat Transfer in
        // Chemical Kinetics).
        var b = (4 / delta) - 1 - Math.Sqrt(Math.Pow((4 / delta) - 1, 2) - 1);
        var (found, run) = Rest(delta, film: 1e6);

        Assert.Equal(ConductionEnd.Reached, run.End);
        Assert.InRange(found[0] - (2 * Math.Log(1 + b)), -4e-3, 4e-3);
    }

    [Fact]
    public void Cylinder_at_the_critical_heat_would_have_ln_4_in_its_centre()
    {
        // Just below, since at δ 2 it would come there in endless time.
        var (found, _) = Rest(1.998, film: 1e6);
        Assert.InRange(found[0], Math.Log(4) - .1, Math.Log(4));
    }

    [Theory]
    [InlineData(1e6, 2.00)]
    [InlineData(10, 1.653837)]
    [InlineData(1, .575799)]
    public void Cylinder_runs_away_above_the_critical_heat_and_not_below(double biot, double worked)
    {
        // B = √(1 + 4/Bi²) − 2/Bi, δ_c = 8·B/(1 + B)²·exp(−4·B/((1 + B)·Bi)), exact; a cold wall has 2.00.
        var b = Math.Sqrt(1 + (4 / (biot * biot))) - (2 / biot);
        var critical = 8 * b / ((1 + b) * (1 + b)) * Math.Exp(-4 * b / ((1 + b) * biot));
        Assert.Equal(worked, critical, 1e-5);

        Assert.Equal(ConductionEnd.Reached, Rest(critical * .997, biot).Run.End);
        Assert.NotEqual(ConductionEnd.Reached, Rest(critical * 1.003, biot).Run.End);
    }

    private static (double[] Temperatures, ConductionRun Run) Rest(double delta, double film) =>
        Bodies.At(Bodies.Slice(Bodies.Even(1, 60), new(1, 1, 1, delta), film), 0, PiecewiseLinear.Constant(0), LongTime, new(1e-4, 1e6),
        new Exponential(),
            step => step.TemperaturesAfter[0] < 8);

    private sealed class Exponential : IReaction
    {
        public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS)
        {
            for (var i = 0; i < ratePerS.Length; i++)
            {
                ratePerS[i] = Math.Exp(temperature[i]);
            }
        }
    }
}
