using System.Text.Json;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Files of others; Data/README.md names their source and licence.</summary>
public static class OtherData
{
    /// <summary>Texts that a JSON parser takes (y_), refuses (n_) or does either with (i_), by name.</summary>
    public static IReadOnlyDictionary<string, string> JsonTexts { get; } = Read<Dictionary<string, string>>("json-test-suite.json");

    /// <summary>Strings that have done harm elsewhere.</summary>
    public static IReadOnlyList<string> NaughtyStrings { get; } = [.. Read<string[]>("naughty-strings.json").Distinct()];

    private static T Read<T>(string file) =>
        JsonSerializer.Deserialize<T>(File.ReadAllBytes(Repository.PathOf("tests", "CalcService.Api.Tests", "Data", file)))!;
}
