namespace CalcService.Api.Units;

/// <summary>A unit of the wire with its conversions; UnitsNet does the arithmetic.</summary>
/// <param name="code">The case-sensitive ASCII code of the contract.</param>
/// <param name="ucum">The same unit in the Unified Code for Units of Measure.</param>
/// <param name="toSi">To the SI unit of the kind.</param>
/// <param name="fromSi">From the SI unit of the kind.</param>
public sealed class Unit(string code, string ucum, Func<double, double> toSi, Func<double, double> fromSi)
{
    /// <summary>Beyond it the zero point of a scale is far below the last digit, so a number can be scaled down first.</summary>
    private const double Huge = 1e200;

    private const double Scale = 1e100;

    public string Code { get; } = code;

    public string Ucum { get; } = ucum;

    /// <summary>To the SI unit of the kind; infinite where that is too large for a number.</summary>
    public double ToSi(double value) => Convert(toSi, value);

    /// <summary>From the SI unit of the kind; infinite where that is too large for a number.</summary>
    public double FromSi(double si) => Convert(fromSi, si);

    /// <summary>UnitsNet throws where a number overflows; whoever sent it is to be told so instead.</summary>
    private static double Convert(Func<double, double> convert, double value) =>
        Math.Abs(value) < Huge ? convert(value) : double.IsFinite(value) ? convert(value / Scale) * Scale : value;
}
