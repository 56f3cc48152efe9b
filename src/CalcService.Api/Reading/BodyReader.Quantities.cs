using System.Globalization;
using System.Text;
using CalcService.Api.Units;

namespace CalcService.Api.Reading;

/// <content>Quantities: {"value", "unit"}, both always there, in either order.</content>
public ref partial struct BodyReader
{
    private const string Value = "value";
    private const string Unit = "unit";

    private Quantity? ReadQuantity(UnitKind kind)
    {
        var errorsBefore = _errors.All.Count;
        if (!TakeOpen((byte)'{', (byte)'}', out var isEmpty))
        {
            return null;
        }

        double? value = null;
        string? unit = null;
        bool valueSeen = false, unitSeen = false;
        var more = !isEmpty;
        while (more && TakeName(out var raw, out var name))
        {
            name ??= raw.SequenceEqual("value"u8) ? Value : raw.SequenceEqual("unit"u8) ? Unit : Encoding.UTF8.GetString(raw);
            _errors.Enter(name);
            switch (name)
            {
                case Value when !valueSeen:
                    valueSeen = true;
                    value = ReadQuantityValue();
                    _errors.Leave();
                    break;
                case Unit when !unitSeen:
                    unitSeen = true;
                    unit = ReadQuantityUnit();
                    _errors.Leave();
                    break;
                default:
                    _errors.Leave();
                    ReportMember(name, [Value, Unit], isDuplicate: name is Value or Unit);
                    _cursor.Skip(_errors.Depth + 1);
                    break;
            }

            more = _cursor.TakeSeparator((byte)'}');
        }

        // Where something is wrong with it already, nothing more is asked for.
        if (_cursor.Failed || _errors.All.Count > errorsBefore)
        {
            return null;
        }

        return value is { } number && unit is { } code ? Convert(kind, number, code) : Incomplete(kind, value, unit);
    }

    private double? ReadQuantityValue()
    {
        switch (_cursor.Peek())
        {
            case (byte)'n':
                _cursor.TakeWord("null"u8);
                return null;
            case (byte)'-' or (>= (byte)'0' and <= (byte)'9'):
                break;
            default:
                WrongType("a number");
                return null;
        }

        if (!_cursor.TakeNumber(out var raw) || !double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            return null;
        }

        if (!double.IsFinite(value))
        {
            _errors.NotComputable("not-finite", "The number is too large.");
        }

        return value;
    }

    private string? ReadQuantityUnit()
    {
        switch (_cursor.Peek())
        {
            case (byte)'n':
                _cursor.TakeWord("null"u8);
                return null;
            case (byte)'"':
                return _cursor.TakeString(out var raw, out var escaped) ? JsonText.Decode(raw, escaped) ?? "\uFFFD" : null;
            default:
                WrongType("a text");
                return null;
        }
    }

    private readonly Quantity? Convert(UnitKind kind, double value, string code)
    {
        if (kind.Find(code) is not { } unit)
        {
            _errors.NotComputableAt(Unit, "unit", $"“{ReadErrors.Show(code)}” is no unit of {kind.Name}; allowed: {Allowed(kind)}.");
            return null;
        }

        var si = Rounding.ToDigits(unit.ToSi(value), Rounding.InputDigits);
        if (!double.IsFinite(si))
        {
            _errors.NotComputableAt(Value, "not-finite", "The number is too large.");
            return null;
        }

        return new Quantity { Value = value, Unit = unit.Code, Si = si };
    }

    private readonly Quantity? Incomplete(UnitKind kind, double? value, string? unit)
    {
        if (value is null)
        {
            _errors.NotComputableAt(Value, "required", "value is required.");
        }

        if (unit is null)
        {
            _errors.NotComputableAt(Unit, "required", $"unit is required; allowed: {Allowed(kind)}.");
        }

        return null;
    }

    private static string Allowed(UnitKind kind) => string.Join(", ", kind.Units.Select(unit => unit.Code));
}
