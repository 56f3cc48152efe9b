using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CsCheck;

namespace CalcService.Engine.Tests.Cones.Heat;

public sealed class CureReactionTests
{
    [Fact]
    public void Rate_of_many_nodes_is_the_law_as_it_is_written() =>
        (from law in Gen.Select(Gen.Double[0, 1e6], Gen.Double[0, 80e3], Gen.Double[1e3, 1e8], Gen.Double[30e3, 90e3], Gen.Double[0, 2],
        Gen.Double[.5, 3])
         from progress in Gen.Double[0, 1].Array[7]
         from temperatures in Gen.Double[230, 520].Array[7]
         select (new CureLaw(law.Item1, law.Item2, law.Item3, law.Item4, law.Item5, law.Item6), progress, temperatures))
        .Sample(one =>
        {
            var (law, progress, temperatures) = one;
            var rates = new double[7];
            new CureReaction(law).Rates(progress, temperatures, rates);
            for (var i = 0; i < 7; i++)
            {
                var exact = AsWritten(law, progress[i], temperatures[i]);
                Assert.InRange(rates[i] - exact, (-1e-11 * exact) - 1e-200, (1e-11 * exact) + 1e-200);
            }
        });

    [Theory]
    [InlineData(0)]
    [InlineData(-1e-3)]
    [InlineData(1)]
    [InlineData(1.001)]
    [InlineData(1e-12)]
    public void Rate_at_the_ends_is_the_law_as_it_is_written(double degree)
    {
        foreach (var law in new[] { Cones.Hot, Cones.Hot with { K10PerS = 0 }, Cones.Hot with { M = 0 }, Cones.Hot with { M = .02 },
            Cones.Hot with { N = 0 }, new CureLaw(1e-3, 0, 0, 0, 1, 1) })
        {
            var rates = new double[2];
            new CureReaction(law).Rates([degree, degree], [250, 300], rates);
            var exact = AsWritten(law, degree, 300);
            Assert.Equal(exact, rates[1], 1e-12 * Math.Max(exact, 1e-12));
        }
    }

    /// <summary>(k₁ + k₂·α^m)·(1 − α)^n by the powers of the C library.</summary>
    private static double AsWritten(CureLaw law, double degree, double kelvins)
    {
        var done = Math.Clamp(degree, 0, 1);
        double Constant(double factor, double energy) => factor * Math.Exp(-energy / (8.314462618 * kelvins));
        return (Constant(law.K10PerS, law.E1JPerMol) + (Constant(law.K20PerS, law.E2JPerMol) * Math.Pow(done, law.M)))
            * Math.Pow(1 - done, law.N);
    }
}
