using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Findings;

/// <summary>Every finding has its page, and no page says otherwise than the catalogue and the service.</summary>
public sealed class FindingPageTests(Service service)
{
    private static readonly string Folder = Repository.PathOf("docs", "findings");

    [Fact]
    public async Task Pages_are_those_that_catalogue_and_examples_give()
    {
        var expected = new Dictionary<string, string>(StringComparer.Ordinal) { ["README.md"] = FindingIndex.Write(Listed) };
        foreach (var definition in Listed)
        {
            expected[definition.Code + ".md"] = await FindingPage.WriteAsync(definition, service);
        }

        if (Repository.Accepts)
        {
            Replace(expected);
        }

        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(expected, page => Assert.Equal(page.Value, File.ReadAllText(Path.Combine(Folder, page.Key)).ReplaceLineEndings("\n")));
    }

    [Fact]
    public void Finding_of_the_catalogue_has_an_example_in_each_of_its_severities()
    {
        var known = Listed.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}")).ToArray();
        var shown = OperationExamples.All.SelectMany(operation => operation.Examples).Select(example => $"{example.Code} {example.Severity}").ToArray();

        Assert.Empty(known.Except(shown));
        Assert.Empty(shown.Except(known));
    }

    [Fact]
    public async Task Calculation_that_is_served_has_examples_of_its_findings() => Assert.Equal(
        (await ServedContract.ReadAsync(service)).Answering.Select(route => route.Path).Order(StringComparer.Ordinal),
        OperationExamples.All.Select(operation => operation.Path).Order(StringComparer.Ordinal));

    private static IReadOnlyList<Engine.Findings.FindingDefinition> Listed =>
        [.. ServiceHost.Findings.OrderBy(definition => definition.Code, StringComparer.Ordinal)];

    private static void Replace(Dictionary<string, string> pages)
    {
        Directory.CreateDirectory(Folder);
        foreach (var left in Directory.GetFiles(Folder).Where(file => !pages.ContainsKey(Path.GetFileName(file))))
        {
            File.Delete(left);
        }

        foreach (var (name, text) in pages)
        {
            File.WriteAllText(Path.Combine(Folder, name), text);
        }
    }
}
