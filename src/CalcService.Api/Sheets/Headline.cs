using CalcService.Engine.Findings;

namespace CalcService.Api.Sheets;

/// <summary>The word that a sheet says largest, where nobody may take it for a go.</summary>
internal static class Headline
{
    private static readonly Dictionary<string, string> Plan = Of("PLAN ONLY", "PLAN ONLY, WITH CARE"),
        Quote = Of("QUOTE ONLY", "QUOTE ONLY, WITH CARE");

    /// <summary>Work that lies ahead, or is only quoted, is no permission; null for work that is done now.</summary>
    public static IReadOnlyDictionary<string, string>? For(Purpose? purpose) =>
        purpose switch { Purpose.Plan => Plan, Purpose.Quote => Quote, _ => null };

    /// <summary>Other words for a go, with care and without.</summary>
    public static Dictionary<string, string> Of(string go, string care, string unknown = "NOT DETERMINED") =>
        new(StringComparer.Ordinal) { ["proceed"] = go, ["proceedWithCare"] = care, ["undetermined"] = unknown };
}
