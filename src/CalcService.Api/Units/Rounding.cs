using System.Globalization;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Units;

/// <summary>Rounding to significant decimal digits, half to even.</summary>
public static class Rounding
{
    /// <summary>Digits of a request's number in SI: what the engine computes with and digests cover.</summary>
    public const int InputDigits = 12;

    /// <summary>Digits of an answer's number.</summary>
    public const int AnswerDigits = 6;

    /// <summary>1 to 1e22, all of them exact.</summary>
    internal static readonly double[] PowersOfTen =
        [.. Enumerable.Range(0, 23).Select(n => double.Parse("1e" + n, CultureInfo.InvariantCulture))];

    /// <summary>
    /// The power of ten of a number's first digit. A last bit below a power of ten it may be that power's, which rounds to the same.
    /// </summary>
    /// <param name="size">Finite, above 0.</param>
    internal static int DecimalExponent(double size)
    {
        const double DecimalsPerBit = .30103;

        // The power of two gives it, or one less.
        var least = (int)Math.Floor(Math.ILogB(size) * DecimalsPerBit);
        var next = least + 1;
        return next switch
        {
            >= 0 and <= 22 => size >= PowersOfTen[next] ? next : least,
            < 0 and >= -22 => size * PowersOfTen[-next] >= 1 ? next : least,
            _ => int.Parse(size.ToString("E16", CultureInfo.InvariantCulture)[^4..], CultureInfo.InvariantCulture),
        };
    }

    /// <summary>The double nearest to a power of ten.</summary>
    internal static double PowerOfTen(int exponent) => exponent switch
    {
        >= 0 and <= 22 => PowersOfTen[exponent],
        < 0 and >= -22 => 1 / PowersOfTen[-exponent],
        _ => double.Parse("1e" + exponent.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
    };

    /// <summary>The least number with so many digits that isn't below the value, but for rounding in its last bits.</summary>
    public static double UpToDigits(double value, int digits)
    {
        var nearest = ToDigits(value, digits);
        return new Judged(Measure.Count(nearest), Limit.Of(Measure.Count(value))).IsBelow
            ? ToDigits(nearest + PowerOfTen(DecimalExponent(Math.Abs(value)) - digits + 1), digits) : nearest;
    }

    /// <summary>Never more than the value.</summary>
    public static double DownToDigits(double value, int digits) => -UpToDigits(-value, digits);

    /// <summary>The nearest double to the value with so many digits; −0 becomes 0, non-finite values stay as they are.</summary>
    public static double ToDigits(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value == 0 ? 0 : value;
        }

        // What has no more digits before its point and none behind it stays as it is.
        if (Math.Abs(value) < PowersOfTen[digits] && double.IsInteger(value))
        {
            return value;
        }

        var places = digits - 1 - DecimalExponent(Math.Abs(value));
        // Powers of ten up to 22 are exact in a double, and one division or product rounds once.
        return places switch
        {
            >= 0 and <= 22 => Math.Round(value * PowersOfTen[places]) / PowersOfTen[places],
            < 0 and >= -22 => Math.Round(value / PowersOfTen[-places]) * PowersOfTen[-places],
            _ => double.Parse(value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
        };
    }
}
