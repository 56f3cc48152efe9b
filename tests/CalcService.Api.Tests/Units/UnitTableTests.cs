using System.Globalization;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CsCheck;

namespace CalcService.Api.Tests.Units;

/// <summary>
/// Every unit against constants written here: NIST Special Publication 811 (2008), appendix B, whose factors in bold
/// are exact; min, h, d, L, degree, °C by the SI brochure.
/// </summary>
public sealed class UnitTableTests
{
    private const double Inch = .0254;
    private const double Foot = .3048;
    private const double PoundForce = 4.4482216152605;

    /// <summary>Kind, unit, factor to SI, offset after the factor.</summary>
    public static TheoryData<string, string, double, double> Factors => new()
    {
        { "Length", "mm", 1e-3, 0 }, { "Length", "cm", 1e-2, 0 }, { "Length", "m", 1, 0 }, { "Length", "in", Inch, 0 },
            { "Length", "ft", Foot, 0 },
        { "Area", "mm2", 1e-6, 0 }, { "Area", "m2", 1, 0 }, { "Area", "in2", Inch * Inch, 0 },
        { "Volume", "mL", 1e-6, 0 }, { "Volume", "L", 1e-3, 0 }, { "Volume", "cm3", 1e-6, 0 }, { "Volume", "m3", 1, 0 },
        { "Volume", "in3", Inch * Inch * Inch, 0 }, { "Volume", "ft3", Foot * Foot * Foot, 0 },
        { "LinearDensity", "kg/m", 1, 0 }, { "Density", "kg/m3", 1, 0 }, { "Density", "g/mL", 1e3, 0 },
        { "Force", "N", 1, 0 }, { "Force", "kN", 1e3, 0 }, { "Force", "lbf", PoundForce, 0 }, { "Force", "kgf", 9.80665, 0 },
        { "Stress", "Pa", 1, 0 }, { "Stress", "MPa", 1e6, 0 }, { "Stress", "N/mm2", 1e6, 0 },
            { "Stress", "psi", PoundForce / (Inch * Inch), 0 },
        { "Temperature", "K", 1, 0 }, { "Temperature", "degC", 1, 273.15 }, { "Temperature", "degF", 5.0 / 9, 459.67 * 5 / 9 },
            { "TemperatureDifference", "K", 1, 0 },
        { "Duration", "s", 1, 0 }, { "Duration", "min", 60, 0 }, { "Duration", "h", 3600, 0 }, { "Duration", "d", 86400, 0 },
        { "Days", "s", 1, 0 }, { "Days", "d", 86400, 0 }, { "CalendarMonths", "mo", 1, 0 },
        { "Fraction", "1", 1, 0 }, { "Fraction", "%", 1e-2, 0 }, { "Count", "1", 1, 0 }, { "AirFraction", "1", 1, 0 },
            { "AirFraction", "ppm", 1e-6, 0 },
        { "MassConcentration", "kg/m3", 1, 0 }, { "MassConcentration", "mg/m3", 1e-6, 0 }, { "Angle", "rad", 1, 0 },
            { "Angle", "deg", Math.PI / 180, 0 },
        { "ThermalConductivity", "W/(m.K)", 1, 0 }, { "HeatTransferCoefficient", "W/(m2.K)", 1, 0 }, { "SpecificHeat", "J/(kg.K)", 1, 0 },
            { "SpecificEnergy", "J/kg", 1, 0 }, { "SpecificEnergy", "kJ/kg", 1e3, 0 },
        { "MolarEnergy", "J/mol", 1, 0 }, { "MolarEnergy", "kJ/mol", 1e3, 0 }, { "Rate", "1/s", 1, 0 }, { "Rate", "1/h", 1 / 3600.0, 0 },
        { "MassFlow", "kg/s", 1, 0 }, { "MassFlow", "mg/s", 1e-6, 0 }, { "Speed", "m/s", 1, 0 },
        { "Mass", "g", 1e-3, 0 }, { "Mass", "kg", 1, 0 }, { "Mass", "lb", .45359237, 0 },
        { "Expansion", "1/K", 1, 0 },
    };

    [Theory]
    [MemberData(nameof(Factors))]
    public void Unit_to_SI_and_back_is_the_published_factor(string kind, string code, double factor, double offset)
    {
        var unit = UnitTable.All.Single(entry => entry.Name == kind).Find(code)!;

        // The canonical form keeps twelve digits: the two have to agree there.
        foreach (var value in new[] { 1, 20, .5, 1234.5, -40 })
        {
            var si = (value * factor) + offset;
            Assert.Equal(si, unit.ToSi(value), Math.Abs(si) * 1e-13);
            Assert.Equal(value, unit.FromSi(si), (Math.Abs(value) + Math.Abs(offset / factor)) * 1e-13);
        }
    }

    /// <summary>The library behind it throws where a number overflows; here that is infinity, so a request can be refused.</summary>
    [Theory]
    [MemberData(nameof(Factors))]
    public void Unit_of_a_number_too_large_is_infinite_and_of_one_that_just_fits_is_its_factor(string kind, string code, double factor,
        double offset)
    {
        var unit = UnitTable.All.Single(entry => entry.Name == kind).Find(code)!;

        foreach (var value in new[] { 1e199, 1e201, 1e300, double.MaxValue, -1e300, double.MinValue })
        {
            // In parts, so that nothing overflows on the way that doesn't at the end; the offset is below the last digit.
            var (si, back) = (value / 1e9 * factor * 1e9, value / 1e9 / factor * 1e9);
            Assert.True(offset < 1e3);
            Assert.Equal(1, double.IsFinite(si) ? unit.ToSi(value) / si : double.IsFinite(unit.ToSi(value)) ? 0 : 1, 1e-12);
            Assert.Equal(1, double.IsFinite(back) ? unit.FromSi(value) / back : double.IsFinite(unit.FromSi(value)) ? 0 : 1, 1e-12);
        }
    }

    [Fact]
    public void Unit_of_the_table_has_a_published_factor_here() =>
        Assert.Equal(
            UnitTable.All.SelectMany(kind => kind.Units.Select(unit => $"{kind.Name} {unit.Code}")).Order(StringComparer.Ordinal),
            Factors.Select(row => $"{row.Data.Item1} {row.Data.Item2}").Order(StringComparer.Ordinal));

    [Fact]
    public void Unit_to_SI_and_back_is_the_value_to_six_digits() =>
        Gen.Select(Gen.OneOf([.. UnitTable.All.SelectMany(kind => kind.Units)]), Gen.Double[-1e6, 1e6]).Sample((unit, value) =>
        {
            var si = Rounding.ToDigits(unit.ToSi(value), Rounding.InputDigits);
            return Math.Abs(unit.FromSi(si) - value) <= 1e-9 * (Math.Abs(value) + 1000);
        });

    [Fact]
    public void Code_is_ASCII_without_space_and_stands_once_in_its_kind() => Assert.All(UnitTable.All, kind =>
    {
        Assert.All(kind.Units, unit => Assert.Matches("^[!-~]+$", unit.Code));
        Assert.Equal(kind.Units.Count, kind.Units.DistinctBy(unit => unit.Code).Count());
        Assert.Contains(kind.Si, kind.Units);
        Assert.Contains(kind.Metric, kind.Units);
        Assert.Contains(kind.Inch, kind.Units);
        Assert.Equal(1, kind.Si.ToSi(1));
    });

    /// <summary>The Unified Code for Units of Measure, case-sensitive codes; from memory of its tables.</summary>
    [Theory]
    [InlineData("mm", "mm")]
    [InlineData("in", "[in_i]")]
    [InlineData("ft", "[ft_i]")]
    [InlineData("in2", "[sin_i]")]
    [InlineData("in3", "[cin_i]")]
    [InlineData("ft3", "[cft_i]")]
    [InlineData("lbf", "[lbf_av]")]
    [InlineData("kgf", "kgf")]
    [InlineData("psi", "[psi]")]
    [InlineData("degC", "Cel")]
    [InlineData("degF", "[degF]")]
    [InlineData("ppm", "[ppm]")]
    [InlineData("%", "%")]
    [InlineData("1", "1")]
    [InlineData("d", "d")]
    [InlineData("mo", "mo")]
    [InlineData("deg", "deg")]
    [InlineData("W/(m.K)", "W/(m.K)")]
    [InlineData("N/mm2", "N/mm2")]
    public void Unit_says_its_UCUM_code(string code, string ucum)
    {
        var units = UnitTable.All.SelectMany(kind => kind.Units).Where(unit => unit.Code == code).ToArray();

        Assert.NotEmpty(units);
        Assert.All(units, unit => Assert.Equal(ucum, unit.Ucum));
    }

    [Fact]
    public void Quantity_of_an_answer_has_six_digits_at_most() =>
        Gen.Select(Gen.OneOf([.. UnitTable.All]), Gen.Double[1e-9, 1e9], Gen.OneOf(UnitSystem.Metric, UnitSystem.Inch))
        .Sample((kind, si, system) =>
        {
            var text = Math.Abs((decimal)Quantity.From(new(si, kind.Kind), system).Value).ToString(CultureInfo.InvariantCulture);
            return text.Replace(".", "", StringComparison.Ordinal).Trim('0').Length <= 6;
        });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Quantity_of_an_answer_that_is_no_number_is_refused(double si) =>
        Assert.Throws<RefusedException>(() => Quantity.From(Engine.Provenance.Measure.Length(si), UnitSystem.Metric));
}
