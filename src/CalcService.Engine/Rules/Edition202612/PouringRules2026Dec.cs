using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of a pour in the edition of December 2026.</summary>
public static class PouringRules2026Dec
{
    private static readonly Source ConeTradition = new("DIN 3092 and EN 13411-4 tradition", "", Basis.FromMemory);
    private static readonly Source Energy = new("J. Appl. Polym. Sci. 102", "p. 1870, redox-cured polyester", Basis.Published);

    public static PouringRules Rules { get; } = new()
    {
        DewMargin = new("steel at least this far above the dew point", Measure.TemperatureDifference(3),
            new("ISO 8502-4 and ISO 12944-7", "", Basis.FromMemory)),
        HighestOrdinaryGrade = new("above this grade special precautions, ask the rope supplier", Measure.Count(1960),
            new("BS 7035:1989", "§1, note 2", Basis.Published)),
        BasketLengthInDiameters = new("basket at least this many rope diameters long", Measure.Count(5), ConeTradition),
        ConeAngleLeast = new("included angle of the cone at least", Measure.Angle(5 * Math.PI / 180), ConeTradition),
        ConeAngleMost = new("included angle of the cone at most", Measure.Angle(18 * Math.PI / 180), ConeTradition),
        Allowance = new("allowance on the resin where none is given", Measure.Fraction(.10), Source.CommonPractice),
        AssumedActivationEnergy = (
            new("activation energy of gelling from one gel time, low", new(40e3, QuantityKind.MolarEnergy), Energy),
            new("activation energy of gelling from one gel time, expected", new(50e3, QuantityKind.MolarEnergy), Energy),
            new("activation energy of gelling from one gel time, high", new(60e3, QuantityKind.MolarEnergy), Energy)),
        MixingFactor = new("air exchange near the work is this many times less than in the room as a whole", Measure.Count(10),
            new("US EPA mass balance model for general ventilation, worst-case mixing", "", Basis.FromMemory)),
        AirSpeed = new("air speed over open resin indoors", new Measure(.508, QuantityKind.Speed),
            new("US EPA ChemSTEER user guide, default of 100 ft/min", "", Basis.FromMemory)),
        SheetAge = new("a data sheet older than this is asked for again", Measure.Months(24), Source.CommonPractice),
        BroomAngle = new("included angle of the opened broom at most (45° from the axis of the rope)", Measure.Angle(Math.PI / 2),
            new("ISO 17558", "§4.5", Basis.Published)),
        VentUpTo = new("up to this rope diameter the seal of the basket gets a vent", Measure.Length(.016), Source.CommonPractice),
        ReadingsValidFor = new("a reading holds this long where nobody says how long", Measure.Duration(3600), Source.CommonPractice),
        Seizing = SeizingRules2026Dec.Rules,
        Fit = FitRules2026Dec.Rules,
        Air = AirRules2026Dec.All,
    };
}
