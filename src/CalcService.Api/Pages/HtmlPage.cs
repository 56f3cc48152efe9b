using System.Net;

namespace CalcService.Api.Pages;

/// <summary>The frame of every page of the documentation; it brings its own style and fetches nothing.</summary>
internal static class HtmlPage
{
    public const string Type = "text/html";
    public const string ContentType = Type + "; charset=utf-8";

    private const string Style = """
        body{font:16px/1.5 system-ui,sans-serif;max-width:46rem;margin:2rem auto;padding:0 1rem}
        h2{margin-top:2rem}
        code{background:#eee;padding:.1em .3em}
        pre{background:#eee;padding:.6rem;overflow-x:auto}
        pre code{padding:0}
        table{border-collapse:collapse}
        th,td{border:1px solid #999;padding:.2em .6em;text-align:left;vertical-align:top}
        """;

    /// <param name="title">The title, as text.</param>
    /// <param name="body">The content, as markup.</param>
    public static string Of(string title, string body) => $"""
        <!doctype html>
        <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
        <title>{WebUtility.HtmlEncode(title)}</title>
        <style>{Style}</style>
        </head><body>
        {body}
        </body></html>

        """;
}
