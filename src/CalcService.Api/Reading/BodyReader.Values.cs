using System.Globalization;
using System.Text.Json;
using CalcService.Api.Units;

namespace CalcService.Api.Reading;

/// <content>Texts, words, dates, plain numbers and quantities.</content>
public ref partial struct BodyReader
{
    private const string TooLarge = "The number is too large.";

    private readonly object? ReadText(Shape shape)
    {
        if (Text() is not { } text)
        {
            return null;
        }

        return shape switch
        {
            EnumShape words => ReadWord(words, text),
            DateShape => Texts.Date(text) is { } date ? date : Refuse("date",
                $"“{ReadErrors.Show(text)}” is no date yyyy-MM-dd from {Texts.FirstYear} to {Texts.LastYear}."),
            InstantShape => Texts.Instant(text) is { } instant ? instant : Refuse("date-time",
                $"“{ReadErrors.Show(text)}” is no date-time yyyy-MM-ddThh:mm:ss with Z or an offset, from {Texts.FirstYear} to "
                    + $"{Texts.LastYear}."),
            TextShape { MaxLength: var most, IsId: var isId } when Texts.Fault(text, most, isId) is var (code, detail) =>
                Refuse(code, detail),
            _ => text,
        };
    }

    private readonly object? ReadWord(EnumShape words, string text)
    {
        foreach (var word in words.Words)
        {
            if (word.Key == text)
            {
                return word.Value;
            }
        }

        return Refuse("enum",
            $"“{ReadErrors.Show(text)}” is not allowed; allowed: {string.Join(", ", words.Words.Select(word => word.Key))}.");
    }

    private readonly object? ReadNumber(Shape shape)
    {
        if (shape is DecimalShape)
        {
            return decimal.TryParse(_json.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount)
                ? Ranged(amount, DecimalShape.Fault(amount))
                : Refuse("not-finite", TooLarge);
        }

        // 3.0 and 3e0 are the same number as 3.
        return double.TryParse(_json.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && number is >= int.MinValue and <= int.MaxValue && number == Math.Floor(number)
                ? Ranged((int)number, ((IntegerShape)shape).Fault((int)number))
                : Refuse("not-integer", $"A whole number up to {int.MaxValue} is expected.");
    }

    /// <summary>A quantity: {"value", "unit"}, both always there, in either order.</summary>
    private Quantity? ReadQuantity(QuantityShape shape)
    {
        var holes = _errors.Holes;
        var (value, unit) = ((double?)null, (string?)null);
        bool valueSeen = false, unitSeen = false;
        for (Next(); _json.TokenType != JsonTokenType.EndObject; Next())
        {
            var name = Text() ?? "\uFFFD";
            if (name == QuantityShape.Value && !valueSeen)
            {
                valueSeen = true;
                value = ReadQuantityValue();
            }
            else if (name == QuantityShape.Unit && !unitSeen)
            {
                unitSeen = true;
                unit = ReadQuantityUnit();
            }
            else
            {
                ReportMember(name, [QuantityShape.Value, QuantityShape.Unit],
                    isDuplicate: name is QuantityShape.Value or QuantityShape.Unit);
                SkipValue();
            }
        }

        // Where something is wrong with it already, nothing more is asked for.
        return _errors.Holes > holes ? null
            : value is { } number && unit is { } code ? Convert(shape, number, code)
            : Incomplete(shape.Kind!, value, unit);
    }

    private double? ReadQuantityValue()
    {
        double? value = null;
        _errors.Enter(QuantityShape.Value);
        Next();
        if (_json.TokenType == JsonTokenType.Number)
        {
            value = double.Parse(_json.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture);
            if (!double.IsFinite(value.Value))
            {
                Refuse("not-finite", TooLarge);
            }
        }
        else if (_json.TokenType != JsonTokenType.Null)
        {
            WrongType("a number");
        }

        _errors.Leave();
        return value;
    }

    private string? ReadQuantityUnit()
    {
        string? unit = null;
        _errors.Enter(QuantityShape.Unit);
        Next();
        if (_json.TokenType == JsonTokenType.String)
        {
            unit = Text();
        }
        else if (_json.TokenType != JsonTokenType.Null)
        {
            WrongType("a text");
        }

        _errors.Leave();
        return unit;
    }

    private readonly Quantity? Convert(QuantityShape shape, double value, string code)
    {
        var kind = shape.Kind!;
        if (kind.Find(code) is not { } unit)
        {
            _errors.NotComputableAt(QuantityShape.Unit, "unit",
                $"“{ReadErrors.Show(code)}” is no unit of {kind.Name}; allowed: {Allowed(kind)}.");
            return null;
        }

        var si = Rounding.ToDigits(unit.ToSi(value), Rounding.InputDigits);
        if (!double.IsFinite(si))
        {
            _errors.NotComputableAt(QuantityShape.Value, "not-finite", TooLarge);
            return null;
        }

        var quantity = new Quantity { Value = value, Unit = unit.Code, Si = si };
        if (shape.IsWhole && si != Math.Floor(si))
        {
            Refuse("not-integer", $"A whole number of {kind.Si.Code} is expected.");
        }

        return (Quantity)Ranged(quantity, shape.Range?.Holds(quantity) == false ? shape.Range.Refuse(quantity) : null);
    }

    private readonly Quantity? Incomplete(UnitKind kind, double? value, string? unit)
    {
        if (value is null)
        {
            _errors.NotComputableAt(QuantityShape.Value, "required", "value is required.");
        }

        if (unit is null)
        {
            _errors.NotComputableAt(QuantityShape.Unit, "required", $"unit is required; allowed: {Allowed(kind)}.");
        }

        return null;
    }

    private static string Allowed(UnitKind kind) => string.Join(", ", kind.Units.Select(unit => unit.Code));

    /// <summary>A value, and what is wrong with its size.</summary>
    private readonly object Ranged(object value, string? fault)
    {
        if (fault is not null)
        {
            _errors.OutOfRange(fault);
        }

        return value;
    }

    private readonly object? Refuse(string code, string detail)
    {
        _errors.NotComputable(code, detail);
        return null;
    }
}
