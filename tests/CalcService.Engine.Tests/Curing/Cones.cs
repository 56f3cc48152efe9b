using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Curing;

/// <summary>Cones that several tests look at. The compounds are invented.</summary>
internal static class Cones
{
    public const double Zero = 273.15;

    /// <summary>A law that runs hot.</summary>
    public static readonly CureLaw Hot = new(1.2e7, 68e3, 1.5e8, 60e3, .9, 1.6);

    public static readonly ConeMaterials Materials = new()
    {
        CompoundDensityKgPerM3 = 1750,
        CompoundSpecificHeatJPerKgK = 1250,
        CompoundConductivityWPerMK = .6,
        ReactionHeatJPerKg = 350e3,
        ResinFraction = .45,
    };

    /// <summary>A slice of 60 mm in steel of 90 mm, all at 20 °C.</summary>
    public static ConeHeatInput Thick(double metallicAreaM2 = 0) => new()
    {
        Body = new()
        {
            SmallEndDiameterM = .060,
            LargeEndDiameterM = .060,
            LengthM = .3,
            OuterAtSmallEndM = .090,
            OuterAtMouthM = .090,
            MetallicAreaM2 = metallicAreaM2,
            RopeDiameterM = .05,
        },
        Materials = Materials,
        Law = Hot,
        Surroundings = new() { CompoundK = Zero + 20, SteelK = Zero + 20, AirK = PiecewiseLinear.Constant(Zero + 20) },
        HorizonS = 6 * 3600,
    };

    /// <summary>20 mm 6x36 in a basket 23/45/100 mm, on a morning that grows colder.</summary>
    public static ConeHeatInput Example(CureLaw law) => new()
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
        Materials = Materials,
        Law = law,
        Surroundings = new() { CompoundK = Zero + 18, SteelK = Zero + 8, AirK = new([-1800, 41400], [Zero + 12, Zero + 3]) },
        HorizonS = 12 * 3600,
        Degrees = [.05, .9],
        EndDegree = .9,
    };

    public static ConeHeatResult Slice(ConeHeatInput input, double share = 0) =>
        ConeHeat.CalculateSlice(input, share, Trace.None, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!;

    public static ConeHeatResult Whole(ConeHeatInput input) =>
        ConeHeat.Calculate(input, Trace.None, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!;
}
