using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Findings;

/// <summary>The pages of findings as they are served, read once for the many tests of a class.</summary>
public sealed class ServedPages(Service service) : IAsyncLifetime
{
    public const string Index = "/docs/findings";

    /// <summary>Every page of a finding, by its code.</summary>
    public IReadOnlyDictionary<string, string> All { get; private set; } = new Dictionary<string, string>();

    /// <summary>Every example of every page.</summary>
    public IReadOnlyList<PageExample> Examples { get; private set; } = [];

    public static string PathOf(string code) => $"{Index}/{code}";

    public async ValueTask InitializeAsync()
    {
        var pages = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var code in ServiceHost.Findings.Select(definition => definition.Code))
        {
            var reply = await service.GetAsync(PathOf(code));
            Assert.True(reply.Status == 200, $"{code}: {reply.Text}");
            pages.Add(code, reply.Text);
        }

        All = pages;
        Examples = [.. pages.SelectMany(page => PageExample.Read(page.Key, page.Value))];
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
