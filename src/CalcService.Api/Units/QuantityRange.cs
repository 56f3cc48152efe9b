using System.Globalization;

namespace CalcService.Api.Units;

/// <summary>The least and the most of a quantity, ends allowed.</summary>
public sealed class QuantityRange(double least, double most, Unit unit)
{
    private readonly double _leastSi = Rounding.ToDigits(unit.ToSi(least), Rounding.InputDigits);
    private readonly double _mostSi = Rounding.ToDigits(unit.ToSi(most), Rounding.InputDigits);

    /// <summary>The range in words, as the schema's description shows it.</summary>
    public string Text { get; } = string.Create(CultureInfo.InvariantCulture, $"{least} to {most}{Named(unit.Code)}");

    /// <summary>Whether the quantity lies within it.</summary>
    public bool Holds(Quantity quantity) => quantity.Si >= _leastSi && quantity.Si <= _mostSi;

    /// <summary>Says what was found and what is allowed, the same in every culture.</summary>
    public string Refuse(Quantity quantity) =>
        string.Create(CultureInfo.InvariantCulture, $"{quantity.Value}{Named(quantity.Unit)} is out of range; allowed: {Text}.");

    /// <summary>A plain number has no unit to name.</summary>
    private static string Named(string unit) => unit == "1" ? "" : " " + unit;
}
