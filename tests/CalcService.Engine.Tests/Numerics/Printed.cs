namespace CalcService.Engine.Tests.Numerics;

/// <summary>Tolerances that follow from how a number is printed.</summary>
public static class Printed
{
    /// <summary>Holds a value against a printed one with so many significant digits: half a unit of its last digit.</summary>
    public static void Agrees(double printed, double value, int significantDigits)
    {
        var halfUnit = .5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - significantDigits + 1);
        Assert.InRange(value, printed - halfUnit, printed + halfUnit);
    }

    /// <summary>Holds a value against an exact one, up to rounding of doubles or the error of a quadrature.</summary>
    public static void Matches(double exact, double value, double relative = 1e-12) =>
        Assert.InRange(value, exact - (Math.Abs(exact) * relative), exact + (Math.Abs(exact) * relative));
}
