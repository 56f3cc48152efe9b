using CalcService.Engine.Provenance;
using UnitsNet;

namespace CalcService.Api.Units;

/// <summary>
/// The closed list of units, by kind. The only place that knows UnitsNet; its abbreviations are never parsed, since
/// parsing depends on the culture.
/// </summary>
public static class UnitTable
{
    private static readonly Unit One = Plain("1", "1");

    /// <summary>Every kind, in the order of <see cref="QuantityKind"/>.</summary>
    public static IReadOnlyList<UnitKind> All { get; } =
    [
        Kind(QuantityKind.Length, "m", "mm", "in",
            new("mm", "mm", v => Length.FromMillimeters(v).Meters, v => Length.FromMeters(v).Millimeters),
            new("cm", "cm", v => Length.FromCentimeters(v).Meters, v => Length.FromMeters(v).Centimeters),
            Plain("m", "m"),
            new("in", "[in_i]", v => Length.FromInches(v).Meters, v => Length.FromMeters(v).Inches),
            new("ft", "[ft_i]", v => Length.FromFeet(v).Meters, v => Length.FromMeters(v).Feet)),
        Kind(QuantityKind.Area, "m2", "mm2", "in2",
            new("mm2", "mm2", v => Area.FromSquareMillimeters(v).SquareMeters, v => Area.FromSquareMeters(v).SquareMillimeters),
            Plain("m2", "m2"),
            new("in2", "[sin_i]", v => Area.FromSquareInches(v).SquareMeters, v => Area.FromSquareMeters(v).SquareInches)),
        Kind(QuantityKind.Volume, "m3", "cm3", "in3",
            new("mL", "mL", v => Volume.FromMilliliters(v).CubicMeters, v => Volume.FromCubicMeters(v).Milliliters),
            new("L", "L", v => Volume.FromLiters(v).CubicMeters, v => Volume.FromCubicMeters(v).Liters),
            new("cm3", "cm3", v => Volume.FromCubicCentimeters(v).CubicMeters, v => Volume.FromCubicMeters(v).CubicCentimeters),
            Plain("m3", "m3"),
            new("in3", "[cin_i]", v => Volume.FromCubicInches(v).CubicMeters, v => Volume.FromCubicMeters(v).CubicInches),
            new("ft3", "[cft_i]", v => Volume.FromCubicFeet(v).CubicMeters, v => Volume.FromCubicMeters(v).CubicFeet)),
        Kind(QuantityKind.LinearDensity, "kg/m", "kg/m", "kg/m", Plain("kg/m", "kg/m")),
        Kind(QuantityKind.Density, "kg/m3", "g/mL", "g/mL",
            Plain("kg/m3", "kg/m3"),
            new("g/mL", "g/mL", v => Density.FromGramsPerMilliliter(v).KilogramsPerCubicMeter,
            v => Density.FromKilogramsPerCubicMeter(v).GramsPerMilliliter)),
        Kind(QuantityKind.Force, "N", "kN", "lbf",
            Plain("N", "N"),
            new("kN", "kN", v => Force.FromKilonewtons(v).Newtons, v => Force.FromNewtons(v).Kilonewtons),
            new("lbf", "[lbf_av]", v => Force.FromPoundsForce(v).Newtons, v => Force.FromNewtons(v).PoundsForce),
            new("kgf", "kgf", v => Force.FromKilogramsForce(v).Newtons, v => Force.FromNewtons(v).KilogramsForce)),
        Kind(QuantityKind.Stress, "Pa", "MPa", "psi",
            Plain("Pa", "Pa"),
            new("MPa", "MPa", v => Pressure.FromMegapascals(v).Pascals, v => Pressure.FromPascals(v).Megapascals),
            new("N/mm2", "N/mm2", v => Pressure.FromNewtonsPerSquareMillimeter(v).Pascals,
            v => Pressure.FromPascals(v).NewtonsPerSquareMillimeter),
            new("psi", "[psi]", v => Pressure.FromPoundsForcePerSquareInch(v).Pascals,
            v => Pressure.FromPascals(v).PoundsForcePerSquareInch)),
        Kind(QuantityKind.Temperature, "K", "degC", "degF",
            // K stands first: a client that invents 0 of the first unit is refused, where 0 °C would be computed with.
            Plain("K", "K"),
            new("degC", "Cel", v => Temperature.FromDegreesCelsius(v).Kelvins, v => Temperature.FromKelvins(v).DegreesCelsius),
            new("degF", "[degF]", v => Temperature.FromDegreesFahrenheit(v).Kelvins, v => Temperature.FromKelvins(v).DegreesFahrenheit)),
        Kind(QuantityKind.TemperatureDifference, "K", "K", "K", Plain("K", "K")),
        Kind(QuantityKind.Duration, "s", "min", "min",
            Plain("s", "s"),
            new("min", "min", v => Duration.FromMinutes(v).Seconds, v => Duration.FromSeconds(v).Minutes),
            new("h", "h", v => Duration.FromHours(v).Seconds, v => Duration.FromSeconds(v).Hours),
            new("d", "d", v => Duration.FromDays(v).Seconds, v => Duration.FromSeconds(v).Days)),
        Kind(QuantityKind.Days, "s", "d", "d",
            Plain("s", "s"),
            new("d", "d", v => Duration.FromDays(v).Seconds, v => Duration.FromSeconds(v).Days)),
        Kind(QuantityKind.CalendarMonths, "mo", "mo", "mo", Plain("mo", "mo")),
        Kind(QuantityKind.Fraction, "1", "%", "%",
            new("%", "%", v => Ratio.FromPercent(v).DecimalFractions, v => Ratio.FromDecimalFractions(v).Percent),
            One),
        Kind(QuantityKind.Count, "1", "1", "1", One),
        Kind(QuantityKind.AirFraction, "1", "ppm", "ppm",
            new("ppm", "[ppm]", v => Ratio.FromPartsPerMillion(v).DecimalFractions, v => Ratio.FromDecimalFractions(v).PartsPerMillion),
            One),
        Kind(QuantityKind.MassConcentration, "kg/m3", "mg/m3", "mg/m3",
            Plain("kg/m3", "kg/m3"),
            new("mg/m3", "mg/m3", v => MassConcentration.FromMilligramsPerCubicMeter(v).KilogramsPerCubicMeter,
                v => MassConcentration.FromKilogramsPerCubicMeter(v).MilligramsPerCubicMeter)),
        Kind(QuantityKind.Angle, "rad", "deg", "deg",
            Plain("rad", "rad"),
            new("deg", "deg", v => Angle.FromDegrees(v).Radians, v => Angle.FromRadians(v).Degrees)),
        Kind(QuantityKind.ThermalConductivity, "W/(m.K)", "W/(m.K)", "W/(m.K)", Plain("W/(m.K)", "W/(m.K)")),
        Kind(QuantityKind.HeatTransferCoefficient, "W/(m2.K)", "W/(m2.K)", "W/(m2.K)", Plain("W/(m2.K)", "W/(m2.K)")),
        Kind(QuantityKind.SpecificHeat, "J/(kg.K)", "J/(kg.K)", "J/(kg.K)", Plain("J/(kg.K)", "J/(kg.K)")),
        Kind(QuantityKind.SpecificEnergy, "J/kg", "kJ/kg", "kJ/kg",
            Plain("J/kg", "J/kg"),
            new("kJ/kg", "kJ/kg", v => SpecificEnergy.FromKilojoulesPerKilogram(v).JoulesPerKilogram,
            v => SpecificEnergy.FromJoulesPerKilogram(v).KilojoulesPerKilogram)),
        Kind(QuantityKind.MolarEnergy, "J/mol", "kJ/mol", "kJ/mol",
            Plain("J/mol", "J/mol"),
            new("kJ/mol", "kJ/mol", v => MolarEnergy.FromKilojoulesPerMole(v).JoulesPerMole,
            v => MolarEnergy.FromJoulesPerMole(v).KilojoulesPerMole)),
        Kind(QuantityKind.Rate, "1/s", "1/h", "1/h",
            Plain("1/s", "1/s"),
            new("1/h", "1/h", v => Frequency.FromPerSecond(v).PerSecond / 3600, v => Frequency.FromPerSecond(v).PerSecond * 3600)),
        Kind(QuantityKind.MassFlow, "kg/s", "mg/s", "mg/s",
            Plain("kg/s", "kg/s"),
            new("mg/s", "mg/s", v => MassFlow.FromMilligramsPerSecond(v).KilogramsPerSecond,
            v => MassFlow.FromKilogramsPerSecond(v).MilligramsPerSecond)),
        Kind(QuantityKind.Speed, "m/s", "m/s", "m/s", Plain("m/s", "m/s")),
        Kind(QuantityKind.Mass, "kg", "kg", "lb",
            new("g", "g", v => Mass.FromGrams(v).Kilograms, v => Mass.FromKilograms(v).Grams),
            Plain("kg", "kg"),
            new("lb", "[lb_av]", v => Mass.FromPounds(v).Kilograms, v => Mass.FromKilograms(v).Pounds)),
        Kind(QuantityKind.Expansion, "1/K", "1/K", "1/K", Plain("1/K", "K-1")),
    ];

    private static readonly UnitKind[] ByKind = [.. Enum.GetValues<QuantityKind>().Select(kind => All.Single(entry => entry.Kind == kind))];

    /// <summary>The units of a kind.</summary>
    public static UnitKind Of(QuantityKind kind) => ByKind[(int)kind];

    private static Unit Plain(string code, string ucum) => new(code, ucum, v => v, v => v);

    private static UnitKind Kind(QuantityKind kind, string si, string metric, string inch, params Unit[] units)
    {
        Unit Find(string code) => units.Single(unit => unit.Code == code);
        return new(kind, Find(si), Find(metric), Find(inch), units);
    }
}
