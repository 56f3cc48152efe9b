using System.Text;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Answers;

/// <summary>Writes messages and formulas with their numbers in the units of the answer.</summary>
public static class AnswerText
{
    private const int MessageDigits = 4;
    private const string Up = " up";

    private static readonly Dictionary<string, string> Signs = new(StringComparer.Ordinal)
    {
        ["degC"] = " °C", ["degF"] = " °F", ["deg"] = "°", ["1"] = "", ["cm3"] = " cm³", ["in3"] = " in³", ["mm2"] = " mm²",
            ["in2"] = " in²",
        ["mg/m3"] = " mg/m³", ["mo"] = " months", ["%"] = " %", ["kg/m3"] = " kg/m³",
    };

    /// <summary>A measure as a person writes it.</summary>
    public static string Of(Measure measure, UnitSystem units, int digits) => Of(Quantity.From(measure, units), digits);

    /// <summary>A quantity as a person writes it.</summary>
    public static string Of(Quantity quantity, int digits) => Write(Rounding.ToDigits(quantity.Value, digits), quantity.Unit);

    /// <summary>A quantity that is a least one: what is printed is never less.</summary>
    public static string AtLeast(Quantity quantity, int digits) => Write(Rounding.UpToDigits(quantity.Value, digits), quantity.Unit);

    /// <summary>A quantity that is a most one: what is printed is never more.</summary>
    public static string AtMost(Quantity quantity, int digits) => Write(Rounding.DownToDigits(quantity.Value, digits), quantity.Unit);

    /// <summary>
    /// Fills a finding's template: {measured}, {limit} and its own words by name, rounded up where "up" follows the name.
    /// </summary>
    public static string Fill(string template, Finding finding, UnitSystem units) => Template.Of(template).Fill((finding, units),
        static (from, name) =>
        {
            var (finding, units) = from;
            var isLeast = name.EndsWith(Up, StringComparison.Ordinal);
            name = isLeast ? name[..^Up.Length] : name;
            var word = Find(finding.Words, name);
            var measure = name switch
            {
                "measured" => finding.Measured,
                "limit" => finding.Limit,
                _ => word.Value,
            };
            return word.Text
                ?? (isLeast && measure is { } least ? AtLeast(Quantity.From(least, units), MessageDigits) : Or(measure, units));
        });

    /// <summary>Fills a step's template with its numbers and words by name.</summary>
    public static string Fill(PlannedStep step, UnitSystem units) => Template.Of(step.Definition.Text).Fill((step, units),
        static (from, name) =>
        {
            var (step, units) = from;
            for (var i = 0; i < step.Values.Count; i++)
            {
                if (step.Values[i].Name == name)
                {
                    return Of(step.Values[i].Value, units, MessageDigits);
                }
            }

            var word = Find(step.Words, name);
            return word.Text ?? Or(word.Value, units);
        });

    private static string Write(double value, string unit) =>
        CanonicalNumber.Write(value) + (Signs.TryGetValue(unit, out var sign) ? sign : " " + unit);

    private static FindingWord Find(IReadOnlyList<FindingWord> words, string name)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i].Name == name)
            {
                return words[i];
            }
        }

        return default;
    }

    private static string Or(Measure? measure, UnitSystem units) => measure is { } value ? Of(value, units, MessageDigits) : "?";

    /// <summary>The expression with each symbol replaced by its number and unit.</summary>
    public static string Substitute(TraceStep step, UnitSystem units)
    {
        var expression = step.Formula.Expression;
        var text = new StringBuilder();
        for (var i = 0; i < expression.Length;)
        {
            var end = i;
            while (end < expression.Length
                && (char.IsLetter(expression[end]) || (end > i && (char.IsAsciiDigit(expression[end]) || expression[end] == '_'))))
            {
                end++;
            }

            if (end == i)
            {
                text.Append(expression[i++]);
                continue;
            }

            var symbol = expression[i..end];
            var known = step.Substitutions.FirstOrDefault(substitution => substitution.Symbol == symbol);
            text.Append(known.Symbol is null ? symbol : Bracketed(Of(known, units)));
            i = end;
        }

        return text.ToString();
    }

    private static string Of(Substitution known, UnitSystem units) => known.Unit is { } unit
        ? $"{CanonicalNumber.Write(Rounding.ToDigits(known.Value.Si, Rounding.AnswerDigits))} {unit}"
        : Of(known.Value, units, Rounding.AnswerDigits);

    /// <summary>A number with a unit is bracketed, so that a power or a minus before it says what it means.</summary>
    private static string Bracketed(string number) => number.Contains(' ', StringComparison.Ordinal) || number[0] == '-' ? $"({number})"
        : number;
}
