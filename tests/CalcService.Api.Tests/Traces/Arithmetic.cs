using System.Globalization;
using CalcService.Api.Units;

namespace CalcService.Api.Tests.Traces;

/// <summary>
/// Works out a formula as an answer shows it, numbers with their units in place of the symbols: sums, products, powers, roots, a few
/// functions, and what it defines behind a comma. It knows nothing of how the service computes.
/// </summary>
/// <param name="shown">The formula.</param>
/// <param name="inItsUnits">An empirical formula takes its numbers in the units they are shown in; any other takes SI.</param>
/// <param name="moved">Which of the shown numbers is half a unit of its last digit larger, to see what its rounding does; −1 for
/// none.</param>
/// <param name="isLimit">Whether the formula is 0/0 where it stands, such as (1 − exp(−x))/x at 0: then each number is moved a
/// little.</param>
internal sealed class Arithmetic(string shown, bool inItsUnits, int moved = -1, bool isLimit = false)
{
    /// <summary>CODATA 2018, J/(mol·K).</summary>
    private const double GasConstant = 8.31446261815324;

    private static readonly Dictionary<string, double> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = 1e-3, ["in"] = .0254, ["mm²"] = 1e-6, ["in²"] = .0254 * .0254, ["cm³"] = 1e-6, ["in³"] = .0254 * .0254 * .0254,
        ["g/mL"] = 1e3, ["kN"] = 1e3, ["lbf"] = .45359237 * 9.80665, ["MPa"] = 1e6, ["psi"] = .45359237 * 9.80665 / (.0254 * .0254),
        ["min"] = 60, ["d"] = 86400, ["%"] = .01, ["ppm"] = 1e-6, ["mg/m³"] = 1e-6, ["kJ/kg"] = 1e3, ["kJ/mol"] = 1e3, ["1/h"] = 1 / 3600.0,
        ["mg/s"] = 1e-6, ["lb"] = .45359237, ["L/mol"] = 1e-3, ["g/mol"] = 1e-3, ["kg/m"] = 1, ["kg/m³"] = 1, ["K"] = 1, ["J/K"] = 1,
            ["1/K"] = 1, ["kg"] = 1,
        ["m/s"] = 1, ["W/(m.K)"] = 1, ["J/(kg.K)"] = 1, ["torr"] = 101325.0 / 760, ["ft/min"] = .3048 / 60, ["cm²"] = 1e-4, ["cm"] = .01,
            ["atm"] = 101325,
    };

    private readonly Dictionary<string, (string Parameter, string Text)> _defined = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _known = new(StringComparer.Ordinal) { ["π"] = Math.PI, ["R"] = GasConstant };
    private string _text = "";
    private int _at;

    /// <summary>How many numbers were read.</summary>
    public int Numbers { get; private set; }

    public double Value()
    {
        var parts = shown.Split(", ");
        // A comma inside brackets parts two arguments, not two formulas.
        var main = parts.TakeWhile((_, i) => i == 0 || !parts[i].Contains(" = ", StringComparison.Ordinal)).Count();
        foreach (var part in parts[main..])
        {
            var (name, text) = (part.Split(" = ")[0], part.Split(" = ")[1]);
            var parameter = name.Contains('(', StringComparison.Ordinal) ? name.Split('(', ')')[1] : "";
            _defined[name.Split('(')[0]] = (parameter, text);
        }

        return Of(string.Join(", ", parts[..main]));
    }

    private double Of(string text)
    {
        var outer = (_text, _at);
        (_text, _at) = (text, 0);
        var value = Sum();
        Assert.True(_at == _text.Length, $"{_text[_at..]} of {_text} can't be read.");
        (_text, _at) = outer;
        return value;
    }

    private double Sum()
    {
        var sum = Product();
        while (true)
        {
            if (Takes(" + "))
            {
                sum += Product();
            }
            else if (Takes(" − "))
            {
                sum -= Product();
            }
            else
            {
                return sum;
            }
        }
    }

    private double Product()
    {
        var product = Signed();
        while (true)
        {
            if (Takes("·"))
            {
                product *= Signed();
            }
            else if (Takes("/"))
            {
                product /= Signed();
            }
            else
            {
                return product;
            }
        }
    }

    private double Signed() => Takes("−") || Takes("-") ? -Signed() : Power();

    private double Power()
    {
        var power = Takes("√") ? Math.Sqrt(Plain()) : Plain();
        return Takes("²") ? power * power : Takes("³") ? power * power * power : Takes("^") ? Math.Pow(power, Plain()) : power;
    }

    private double Plain()
    {
        if (_at < _text.Length && char.IsAsciiDigit(_text[_at]))
        {
            return Number();
        }

        if (Takes("("))
        {
            return Closed(Sum());
        }

        var from = _at;
        while (_at < _text.Length && (char.IsLetter(_text[_at]) || (_at > from && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '_'))))
        {
            _at++;
        }

        var name = _text[from.._at];
        return Takes("(") ? Function(name)
            : _known.TryGetValue(name, out var value) ? value
            : _defined.TryGetValue(name, out var defined) ? Of(defined.Text)
            : throw new FormatException($"'{name}' of {_text} is no number.");
    }

    private double Function(string name)
    {
        var first = Sum();
        double? second = Takes(", ") ? Sum() : null;
        Closed(first);
        if (_defined.TryGetValue(name, out var defined))
        {
            _known[defined.Parameter] = first;
            return Of(defined.Text);
        }

        return (name, second) switch
        {
            ("exp", null) => Math.Exp(first),
            ("ln", null) => Math.Log(first),
            ("tan", null) => Math.Tan(first),
            ("arctan", null) => Math.Atan(first),
            // A number of pieces that the shown digits leave whole is whole.
            ("ceil", null) => Math.Ceiling(Math.Round(first, 4)),
            ("min", { } other) => Math.Min(first, other),
            ("max", { } other) => Math.Max(first, other),
            _ => throw new FormatException($"'{name}' of {_text} is no function."),
        };
    }

    private double Closed(double value) => Takes(")") ? value : throw new FormatException($"A bracket of {_text} isn't closed at {_at}.");

    private double Number()
    {
        var from = _at;
        while (_at < _text.Length
            && (char.IsAsciiDigit(_text[_at]) || _text[_at] is '.' or 'e' || (_text[_at] == '-' && _text[_at - 1] == 'e')))
        {
            _at++;
        }

        var value = double.Parse(_text[from.._at], CultureInfo.InvariantCulture);
        value += (Numbers == moved ? HalfDigit(value) : 0) + (isLimit ? 1e-7 * (Numbers + 1) : 0);
        Numbers++;

        return Takes("°") ? value * Math.PI / 180 : InUnit(value);
    }

    private double InUnit(double value)
    {
        var end = _text.IndexOf(')', _at) is var closing && closing < 0 ? _text.Length : closing;
        // W/(m.K) has a bracket of its own.
        end = _text[_at..end].Contains('(', StringComparison.Ordinal) ? end + 1 : end;
        if (_at >= end || _text[_at] != ' ')
        {
            return value;
        }

        var unit = _text[(_at + 1)..end];
        if (unit is "°C" or "°F")
        {
            _at = end;
            return inItsUnits ? value : Kelvins(value, unit);
        }

        if (!Units.TryGetValue(unit, out var si))
        {
            return value;
        }

        _at = end;
        return inItsUnits ? value : value * si;
    }

    /// <summary>A quantity of an answer in SI; its unit is a code of the contract.</summary>
    public static double Si(double value, string code) => code switch
    {
        "degC" or "degF" => Kelvins(value, "°" + code[^1]),
        "deg" => value * Math.PI / 180,
        "1" => value,
        _ => value * Units[code.Replace("2", "²", StringComparison.Ordinal).Replace("3", "³", StringComparison.Ordinal)],
    };

    private static double Kelvins(double value, string unit) => unit == "°C" ? value + 273.15 : (value + 459.67) / 1.8;

    /// <summary>Half a unit of the last digit that an answer shows.</summary>
    public static double HalfDigit(double value) => value == 0 ? 0
        : .5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - Rounding.AnswerDigits + 1);

    private bool Takes(string next)
    {
        if (string.CompareOrdinal(_text, _at, next, 0, next.Length) != 0)
        {
            return false;
        }

        _at += next.Length;
        return true;
    }
}
