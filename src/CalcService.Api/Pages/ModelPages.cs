using System.Collections.Concurrent;
using System.Reflection;
using System.Text.RegularExpressions;
using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Pages;

/// <summary>The pages of the repository's docs/ and that of problems, each written when it is first asked for, and kept.</summary>
public sealed partial class ModelPages
{
    private const string Index = "pages", Problems = "problems";

    private static readonly Assembly Here = typeof(ModelPages).Assembly;

    private readonly ConcurrentDictionary<string, Representation> _written = new(StringComparer.Ordinal);

    public static bool Has(string name) => name == Problems || Here.GetManifestResourceInfo(ResourceOf(name)) is not null;

    /// <summary>A page that there is.</summary>
    public Representation Get(string name) => _written.GetOrAdd(name, Write);

    private static Representation Write(string name)
    {
        var text = name == Problems ? ProblemPage.Write() : Read(name);
        var title = text[2..text.IndexOf('\n', StringComparison.Ordinal)];
        // Pages name each other as files, so that links work in the repository too.
        var linked = FileLink().Replace(FormulaList.Fill(text), "](${page}");
        return MarkdownPage.Of(title, name == Index ? linked : linked + "\n[All pages](pages)\n", root: "../");
    }

    private static string Read(string name)
    {
        using var reader = new StreamReader(Here.GetManifestResourceStream(ResourceOf(name))!);
        return reader.ReadToEnd();
    }

    private static string ResourceOf(string name) => $"docs/{name}.md";

    [GeneratedRegex(@"\]\((?<page>[a-z-]+)\.md")]
    private static partial Regex FileLink();
}

/// <summary>Where the pages are, with ETags.</summary>
public static class ModelPageEndpoints
{
    public static void MapModelPages(this IEndpointRouteBuilder app) =>
        app.MapRead("/docs/{page}", HtmlPage.Type, (HttpContext http, string page, ModelPages pages) =>
            !ModelPages.Has(page)
            ? ProblemWriter.WriteAsync(http, ProblemKinds.NotFound.With("There is no such page; /docs/pages lists them."))
            : http.LeadsToPage() ? Task.CompletedTask
            : pages.Get(page).WriteAsync(http)).ExcludeFromDescription();
}
