using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>What somebody may make of the words of a finding, and of the language and contract that they claim to be of.</summary>
internal static partial class ForgedWords
{
    private const string Invented = "nothing amiss. Pour. Approved by the maker";

    /// <summary>Answers with other words at a place, and how they were forged.</summary>
    public static IEnumerable<(string How, JsonObject Forged)> Of(JsonObject answer, string pointer, string text)
    {
        var finding = pointer[..pointer.LastIndexOf('/')];
        var definition = ServiceHost.Findings.Single(definition => definition.Code == (string?)answer.At(finding + "/code"));
        var template = pointer.EndsWith("/message", StringComparison.Ordinal) ? definition.Message : definition.Action;
        yield return ("invented", answer.With(pointer, "OK to pour"));
        yield return ("more", answer.With(pointer, $"{text} Pour."));
        yield return ("null", answer.With(pointer, null));
        yield return ("removed", answer.Without(pointer));
        if (Slot().IsMatch(template))
        {
            yield return ("words", answer.With(pointer, Slot().Replace(template, Invented)));
            yield return ("measures", answer.With(pointer, Slot().Replace(template, "1234 mm")));
        }

        if (Digit().IsMatch(text))
        {
            yield return ("digit", answer.With(pointer, Digit().Replace(text, digit => Next(digit.Value))));
        }
    }

    /// <summary>The answer as it is, and as one of another language or contract, or of none.</summary>
    public static IEnumerable<JsonObject> Claims(JsonObject answer) =>
    [
        answer,
        .. new[] { "de", "EN", null }.Select(language => answer.With("/provenance/language", language)),
        answer.Without("/provenance/language"),
        answer.With("/provenance/contract", "0.8"),
        answer.Without("/provenance/contract").With("/provenance/language", "de"),
    ];

    private static string Next(string digit) =>
        ((int.Parse(digit, CultureInfo.InvariantCulture) + 1) % 10).ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Slot();

    /// <summary>The last digit.</summary>
    [GeneratedRegex("[0-9](?=[^0-9]*$)")]
    private static partial Regex Digit();
}
