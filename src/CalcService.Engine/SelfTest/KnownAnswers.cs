using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Numerics.Covering;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.SelfTest;

/// <summary>The proof, run at every start before the service says that it is ready, that it computes right here.</summary>
public static class KnownAnswers
{
    private const double Zero = DewPoint.ZeroCelsiusK;

    private static Cone Plain { get; } = new()
    {
        Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 },
        OuterAtSmallEndM = .0368,
        OuterAtMouthM = .072,
        Friction = .2,
        Shrinkage = .002,
        CompoundModulusPa = 6e9,
        RadialModulusPa = 6e9,
        PoissonRatio = .25,
    };

    /// <summary>A slice of 60 mm compound in steel of 90 mm, all at 20 °C. The compound is invented.</summary>
    private static ConeHeatInput ThickSlice { get; } = new()
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
        Surroundings = new() { CompoundK = 20 + Zero, SteelK = 20 + Zero, AirK = PiecewiseLinear.Constant(20 + Zero) },
        HorizonS = 6 * 3600,
        Degrees = [.95],
        EndDegree = .95,
    };

    /// <summary>Computes all of them.</summary>
    public static IReadOnlyList<KnownAnswer> Run()
    {
        var kits = new CoverItem[] { new(300, 19, 0, null), new(700, 41, 0, null), new(1100, 62, 0, null) };
        var cover = CoveringTable.Solve(kits, 7777, CoverObjective.Cost, new Budget(Budget.DefaultSteps), CancellationToken.None);
        var cured = ConeHeat.CalculateSlice(ThickSlice, 0, Trace.None, new Budget(Budget.DefaultSteps), CancellationToken.None);
        var cvode = new Source("SUNDIALS CVODE, BDF", "the same slice in 640 + 48 rings at 1e-5 K", Basis.Derived);
        return
        [
            new("rope-breaking-force", "6x7 fibre core, 20 mm, grade 1770", 235, .5,
                RopeFormulas.BreakingForceN(.020, 1770e6, .332, Trace.None) / 1e3, "kN", new("API Spec 9A", "Table C.1", Basis.Published)),
            new("rope-mass", "6x7 fibre core, 20 mm", 138, .5,
                RopeFormulas.MassKgPerM(.020, .345, Trace.None) * 100, "kg/100 m", new("API Spec 9A", "Table C.1", Basis.Published)),
            new("basket-volume", "frustum 23/45/100 mm", 93.960, .0005,
                Basket.VolumeM3(.023, .045, .100, Trace.None) * 1e6, "cm3",
                new("volume of the frustum of a cone", "by hand", Basis.Derived)),
            new("dew-point", "air at 20 °C and 60 %", 12.008, .03,
                DewPoint.OverWaterK(20 + Zero, .60, Trace.None) - Zero, "degC",
                new("IAPWS saturation pressure", "solved for the dew point", Basis.Published)),
            new("gel-time", "half-way in 1/T between 40 and 10 min", 20, 1e-9,
                GelModel.GelTimeS(40, 280, GelModel.ActivationEnergyJPerMol(280, 40, 300, 10, Trace.None), 2 / ((1 / 280.0) + (1 / 300.0)),
                Trace.None),
                "min", new("geometric mean on an Arrhenius line", "", Basis.Derived)),
            new("gel-age", "equivalent age of a ramp from 10 to 30 °C in 1 h, Q 5000 K, reference 20 °C", 1.050201, 5e-7,
                GelAge.OverPiece(3600, 10 + Zero, 30 + Zero, 20 + Zero, 3600, 5000 * GelModel.GasConstant, Trace.None), "h",
                new("ASTM C1074, Arrhenius form", "integral computed independently", Basis.Derived)),
            new("styrene-vapour-pressure", "at 20 °C", 599.4, .1,
                Evaporation.StyreneVapourPressurePa(20 + Zero, Trace.None), "Pa",
                new("Perry's Chemical Engineers' Handbook", "Table 2-8", Basis.Published)),
            new("cone-lower-third", "plain compound in a basket of 23/45/100 mm, R 1.6, 120 kN", .40296, .000005,
                ConeLoad.Solve(Plain, 120e3, new Budget(Budget.DefaultSteps), CancellationToken.None)?.Shares?.Lower ?? double.NaN, "1",
                new("two-point problem, solved independently by collocation", "", Basis.Derived)),
            new("cone-heat-peak", "hottest place of a slice of 60 mm compound in steel, poured at 20 °C", 135.6377, .1,
                cured?.Peak.TemperatureK - Zero ?? double.NaN, "degC", cvode),
            new("cone-cure-time", "the same slice cured to a degree of .95 everywhere", 22.2337, .1,
                cured?.Degrees[0].EverywhereS / 60 ?? double.NaN, "min", cvode),
            new("cover", "7777 mL from kits of 300, 700, 1100 mL at 19, 41, 62", 448, 0,
                cover is null ? double.NaN : (cover[0] * 19) + (cover[1] * 41) + (cover[2] * 62), "1",
                new("integer programme, solved independently", "", Basis.Derived)),
        ];
    }
}
