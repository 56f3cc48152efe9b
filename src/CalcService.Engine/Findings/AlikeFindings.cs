using System.Globalization;

namespace CalcService.Engine.Findings;

/// <summary>
/// One fact is one finding. What is found alike at several places of a list, at end after end, is one finding at the first
/// of them with the others as related members.
/// </summary>
internal static class AlikeFindings
{
    /// <summary>Names in a message beyond these are counted only.</summary>
    private const int MostNames = 3;

    /// <summary>Words that name the place itself: they may differ between findings that are alike.</summary>
    private static readonly string[] Names = ["end", "lot"];

    public static IEnumerable<Finding> Joined(IReadOnlyList<Finding> findings) =>
        findings.Count < 2 ? findings : findings.GroupBy(Fact, StringComparer.Ordinal).Select(Join);

    private static Finding Join(IGrouping<string, Finding> alike)
    {
        // Pointers of one shape differ in their numbers alone, so the shorter one comes first.
        Finding[] places =
            [.. alike.DistinctBy(finding => finding.Pointer).OrderBy(finding => finding.Pointer.Length)
            .ThenBy(finding => finding.Pointer, StringComparer.Ordinal)];
        var first = places[0];
        return places.Length == 1 ? first : first with
        {
            Related = [.. first.Related.Concat(places.Skip(1).Select(place => place.Pointer)).Distinct(StringComparer.Ordinal)],
            Words = [.. first.Words.Select(word => Names.Contains(word.Name) ? new FindingWord(word.Name, Named(places, word.Name))
                : word)],
        };
    }

    private static string Named(Finding[] places, string name)
    {
        var names = places.Select(place => place.Words.First(word => word.Name == name).Text!).Distinct(StringComparer.Ordinal).ToArray();
        var shown = string.Join(", ", names.Take(MostNames));
        return names.Length > MostNames ? string.Create(CultureInfo.InvariantCulture, $"{shown} and {names.Length - MostNames} more")
            : shown;
    }

    /// <summary>All that a finding says but its place.</summary>
    private static string Fact(Finding finding)
    {
        var words = finding.Words.Where(word => !Names.Contains(word.Name)).Select(word => $"{word.Name}={word.Text}{word.Value}");
        return string.Join('\n',
            [finding.Definition.Code, $"{finding.Severity}", Shape(finding.Pointer), $"{finding.Measured}", $"{finding.Limit}",
            $"{finding.Source}", .. words]);
    }

    /// <summary>A pointer without the numbers of its places.</summary>
    private static string Shape(string pointer) =>
        string.Join('/', pointer.Split('/').Select(part => part.Length > 0 && part.All(char.IsAsciiDigit) ? "*" : part));
}
