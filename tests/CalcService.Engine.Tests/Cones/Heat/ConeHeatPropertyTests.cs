using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Cones.Heat;

public sealed class ConeHeatPropertyTests
{
    private static readonly Gen<ConeHeatInput> Any =
        from rope in Gen.Double[.006, .060]
        from fill in Gen.Double[.05, .5]
        from opening in Gen.Double[1.2, 2.5]
        from wall in Gen.Double[.003, .05]
        from temperatures in Gen.Double[-20, 40].Array[4]
        from film in Gen.Double[2, 60]
        from k2 in Gen.Double[1e-4, 2e-2]
        from energies in Gen.Double[40e3, 80e3].Array[2]
        from m in Gen.Double[.2, 1.5]
        from n in Gen.Double[.8, 2.5]
        from seed in Gen.Double[0, .01]
        let small = rope * 1.15
        let large = small * opening
        let scale = 8.314462618 * 293.15
        select new ConeHeatInput
        {
            Body = new()
            {
                SmallEndDiameterM = small,
                LargeEndDiameterM = large,
                LengthM = 5 * rope,
                OuterAtSmallEndM = small + (2 * wall),
                OuterAtMouthM = large + (2 * wall),
                MetallicAreaM2 = fill * Math.PI * small * small / 4,
                RopeDiameterM = rope,
            },
            Materials = Cones.Materials,
            Law = new CureLaw(1e-6 * Math.Exp(energies[0] / scale), energies[0], k2 * Math.Exp(energies[1] / scale), energies[1], m, n),
            Surroundings = new()
            {
                CompoundK = Cones.Zero + temperatures[0],
                SteelK = Cones.Zero + temperatures[1],
                AirK = new([0, 3600, 7200], [.. temperatures[1..].Select(t => t + Cones.Zero)]),
                FilmWPerM2K = film,
                StartDegree = seed,
            },
            HorizonS = 24 * 3600,
            Degrees = [.1, .9],
            EndDegree = .9,
            CurveTimesS = [0, 600, 3600, 36000],
            Grid = new(6, 2, 6, 4, new(.2, 2e-3)),
        };

    [Fact]
    public void Any_cone_keeps_its_heat_and_gives_sensible_numbers() => Any.Sample(
        input =>
        {
            var found = ConeHeat.Calculate(input, Trace.None, new Budget(Budget.DefaultSteps), CancellationToken.None);
            Assert.NotNull(found);
            Assert.InRange(found.Balance.RelativeError, 0, 1e-6);
            Assert.NotEqual(ConductionEnd.RanAway, found.End);
            Assert.InRange(found.LeastDegree, input.Surroundings.StartDegree - 1e-4, 1.001);
            // Meeting fronts exceed the adiabatic rise of 126 K somewhat; nothing gets twice as hot.
            Assert.InRange(found.Peak.TemperatureK, Cones.Zero - 20, Cones.Zero + 40 + (2 * 126));
            Assert.All(found.Degrees, one => Assert.True(one.EverywhereS is null || one.FirstS <= one.EverywhereS));
            Assert.All(found.Curve,
                moment => Assert.True(double.IsFinite(moment.CentreK + moment.SkinK + moment.OuterK + moment.LeastDegree)));
        },
        iter: 60, threads: 1);

    /// <summary>
    /// Only all together: a compound that alone starts warmer gives its heat away sooner, and the last place may have to do without it.
    /// </summary>
    [Fact]
    public void Everything_warmer_never_cures_later() => Any.Sample(
        input =>
        {
            ConeHeatInput WarmedBy(double kelvins) => input with
            {
                Surroundings = input.Surroundings with
                {
                    CompoundK = input.Surroundings.CompoundK + kelvins,
                    SteelK = input.Surroundings.SteelK + kelvins,
                    AirK = new([0, 3600, 7200], [.. new[] { 0.0, 3600, 7200 }.Select(time => input.Surroundings.AirK.At(time) + kelvins)]),
                },
            };
            double Cured(ConeHeatInput one) =>
                ConeHeat.Calculate(one, Trace.None, new Budget(Budget.DefaultSteps), CancellationToken.None)!.Degrees[1].EverywhereS
                ?? double.PositiveInfinity;
            Assert.True(Cured(WarmedBy(5)) <= Cured(input) + 30);
        },
        iter: 25, threads: 1);
}
