using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests;

/// <summary>max_line_length of .editorconfig, which the compiler doesn't ask for.</summary>
public sealed class LineLengthTests
{
    private const int Most = 140;

    /// <summary>Rows of tests may be longer: JSON on one line reads best in a table.</summary>
    [Fact]
    public void Line_of_code_is_at_most_140_characters_long()
    {
        var files = Directory.GetFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories);
        var longer = files.SelectMany(file => File.ReadLines(file)
            .Select((line, i) => (line.Length, At: $"{Path.GetRelativePath(Repository.Root, file)}:{i + 1}"))
            .Where(line => line.Length > Most)).ToArray();

        Assert.NotEmpty(files);
        Assert.True(longer.Length == 0, $"{longer.Length} lines: {string.Join("\n", longer.Take(20).Select(line => line.At))}");
    }
}
