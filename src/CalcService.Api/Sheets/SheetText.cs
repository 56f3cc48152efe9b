using System.Globalization;
using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Units;

namespace CalcService.Api.Sheets;

/// <summary>Words of a printed sheet.</summary>
internal static class SheetText
{
    public const string NotKnown = "not known";

    private const int Digits = 3;

    public static string Or(Quantity? quantity, int digits = Digits) => quantity is null ? NotKnown : AnswerText.Of(quantity, digits);

    /// <summary>A limit that is a least one, rounded up.</summary>
    public static string Least(Quantity? quantity, int digits = Digits) => quantity is null ? NotKnown
        : AnswerText.AtLeast(quantity, digits);

    /// <summary>A limit that is a most one, rounded down.</summary>
    public static string Most(Quantity? quantity, int digits = Digits) => quantity is null ? NotKnown : AnswerText.AtMost(quantity, digits);

    /// <summary>Where a number or a rule comes from.</summary>
    public static string From(AnswerSource source) => source.Clause.Length == 0 ? source.Document : $"{source.Document}, {source.Clause}";

    public static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    public static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    public static string Moment(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>cutAndOpen as cut and open.</summary>
    public static string Words(string name) =>
        string.Concat(name.Select(letter => char.IsAsciiLetterUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter.ToString()));
}
