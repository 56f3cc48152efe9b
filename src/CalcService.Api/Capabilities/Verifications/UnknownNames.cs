using System.Text.Json;
using CalcService.Api.Reading;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Members of an archived object that the contract doesn't have.</summary>
internal static class UnknownNames
{
    /// <summary>Beyond so many in one object the object itself is named, so that what comes back stays in proportion.</summary>
    private const int MostNamed = 20;

    /// <summary>Where they stand. One whose name can't be shown stands for its object.</summary>
    public static IEnumerable<string> In(JsonElement archived, HashSet<string> known, string pointer)
    {
        var names = archived.EnumerateObject().Select(member => member.Name).Where(name => !known.Contains(name))
            .Take(MostNamed + 1).ToArray();
        return names.Length > MostNamed || !names.All(IsShown) ? [pointer] : names.Select(name => $"{pointer}/{Escape(name)}");
    }

    private static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private static bool IsShown(string name) => Texts.Fault(name, ShapeTable.TextLength) is null;
}
