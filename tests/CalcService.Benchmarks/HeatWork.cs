using CalcService.Engine;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Benchmarks;

/// <summary>Cones that cure, the same for the table and for BenchmarkDotNet. The compound is invented.</summary>
internal static class HeatWork
{
    private const double Zero = 273.15;

    /// <summary>A slice of 60 mm compound in steel of 90 mm, all at 20 °C: the case that cvode/slice.c solves too.</summary>
    public static ConeHeatInput Slice { get; } = new()
    {
        Body = new()
        {
            SmallEndDiameterM = .060,
            LargeEndDiameterM = .060,
            LengthM = .3,
            OuterAtSmallEndM = .090,
            OuterAtMouthM = .090,
            MetallicAreaM2 = 0,
            RopeDiameterM = .05,
        },
        Materials = new()
        {
            CompoundDensityKgPerM3 = 1750,
            CompoundSpecificHeatJPerKgK = 1250,
            CompoundConductivityWPerMK = .6,
            ReactionHeatJPerKg = 350e3,
            ResinFraction = .45,
        },
        Law = new CureLaw(1.2e7, 68e3, 1.5e8, 60e3, .9, 1.6),
        Surroundings = new() { CompoundK = Zero + 20, SteelK = Zero + 20, AirK = PiecewiseLinear.Constant(Zero + 20) },
        HorizonS = 6 * 3600,
        Degrees = [.05, .95],
        EndDegree = .99,
    };

    /// <summary>
    /// 20 mm 6x36 in a basket 23/45/100 mm in steel of 70 mm, poured at 18 °C into steel of 8 °C, on a morning that grows colder.
    /// </summary>
    public static ConeHeatInput Cone { get; } = Slice with
    {
        Body = new()
        {
            SmallEndDiameterM = .023,
            LargeEndDiameterM = .045,
            LengthM = .100,
            OuterAtSmallEndM = .070,
            OuterAtMouthM = .070,
            MetallicAreaM2 = 184e-6,
            RopeDiameterM = .020,
        },
        Surroundings = new() { CompoundK = Zero + 18, SteelK = Zero + 8, AirK = new([-1800, 41400], [Zero + 12, Zero + 3]) },
        HorizonS = 12 * 3600,
    };

    /// <summary>The same size poured warm with twice the bore at the mouth: a front runs through it.</summary>
    public static ConeHeatInput HotCone { get; } = Cone with
    {
        Body = Cone.Body with { SmallEndDiameterM = .046, LargeEndDiameterM = .090, LengthM = .200, OuterAtSmallEndM = .140,
            OuterAtMouthM = .140, MetallicAreaM2 = 736e-6, RopeDiameterM = .040 },
        Surroundings = new() { CompoundK = Zero + 25, SteelK = Zero + 20, AirK = PiecewiseLinear.Constant(Zero + 20) },
    };

    public static ConeHeatResult CureSlice(ConeHeatInput input) =>
        ConeHeat.CalculateSlice(input, 0, Trace.None, new Budget(Budget.DefaultSteps), CancellationToken.None)!;

    public static ConeHeatResult CureCone(ConeHeatInput input) =>
        ConeHeat.Calculate(input, Trace.None, new Budget(Budget.DefaultSteps), CancellationToken.None)!;
}
