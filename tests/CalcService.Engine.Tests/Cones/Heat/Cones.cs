using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Cones.Heat;

/// <summary>Cones that several tests look at. The compounds are invented.</summary>
internal static class Cones
{
    public const double Zero = 273.15;

    /// <summary>A law that runs hot.</summary>
    public static readonly CureLaw Hot = new(1.2e7, 68e3, 1.5e8, 60e3, .9, 1.6);

    /// <summary>A law that starts itself: rate constants 2.0e-5 and 4.0e-3 /s at 20 °C, 65 kJ/mol.</summary>
    public static readonly CureLaw Sudden = new(2.0e-5 * Math.Exp(65e3 / (8.314462618 * 293.15)), 65e3,
        4.0e-3 * Math.Exp(65e3 / (8.314462618 * 293.15)), 65e3, 1, 1);

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

    /// <summary>40 mm rope in a basket of twice the size, poured warm.</summary>
    public static ConeHeatInput Large(CureLaw law) => Example(law) with
    {
        Body = new()
        {
            SmallEndDiameterM = .046,
            LargeEndDiameterM = .090,
            LengthM = .200,
            OuterAtSmallEndM = .140,
            OuterAtMouthM = .140,
            MetallicAreaM2 = 736e-6,
            RopeDiameterM = .040,
        },
        Surroundings = new() { CompoundK = Zero + 25, SteelK = Zero + 20, AirK = PiecewiseLinear.Constant(Zero + 20) },
    };

    public static ConeHeatResult Slice(ConeHeatInput input, double share = 0) =>
        ConeHeat.CalculateSlice(input, share, Trace.None, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!;

    public static ConeHeatResult Whole(ConeHeatInput input) =>
        ConeHeat.Calculate(input, Trace.None, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!;
}
