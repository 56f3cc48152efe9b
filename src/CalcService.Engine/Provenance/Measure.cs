namespace CalcService.Engine.Provenance;

/// <summary>A number with what it measures.</summary>
/// <param name="Si">The value in the SI unit of <paramref name="Kind"/>.</param>
/// <param name="Kind">What the value measures.</param>
public readonly record struct Measure(double Si, QuantityKind Kind)
{
    public static Measure Length(double metres) => new(metres, QuantityKind.Length);

    public static Measure Area(double squareMetres) => new(squareMetres, QuantityKind.Area);

    public static Measure Volume(double cubicMetres) => new(cubicMetres, QuantityKind.Volume);

    public static Measure Force(double newtons) => new(newtons, QuantityKind.Force);

    public static Measure Stress(double pascals) => new(pascals, QuantityKind.Stress);

    public static Measure Temperature(double kelvins) => new(kelvins, QuantityKind.Temperature);

    /// <summary>A thermodynamic temperature that a formula takes in kelvins, so that the trace shows kelvins.</summary>
    public static Measure Kelvins(double kelvins) => new(kelvins, QuantityKind.TemperatureDifference);

    public static Measure TemperatureDifference(double kelvins) => new(kelvins, QuantityKind.TemperatureDifference);

    public static Measure Duration(double seconds) => new(seconds, QuantityKind.Duration);

    public static Measure Days(double days) => new(days * 86400, QuantityKind.Days);

    public static Measure Months(double months) => new(months, QuantityKind.CalendarMonths);

    public static Measure Fraction(double ratio) => new(ratio, QuantityKind.Fraction);

    public static Measure Count(double number) => new(number, QuantityKind.Count);

    public static Measure AirFraction(double ratio) => new(ratio, QuantityKind.AirFraction);

    public static Measure Angle(double radians) => new(radians, QuantityKind.Angle);

    public static Measure Mass(double kilograms) => new(kilograms, QuantityKind.Mass);
}
