using System.Net;
using System.Text;
using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>The page that the type of a problem leads to.</summary>
public static class ProblemPage
{
    public static void MapProblemPage(this IEndpointRouteBuilder app)
    {
        var page = Encoding.UTF8.GetBytes(Write());
        app.MapRead("/docs/problems", "text/html", (async Task (HttpContext http) =>
        {
            http.Response.ContentType = "text/html; charset=utf-8";
            http.Response.ContentLength = page.Length;
            await http.Response.Body.WriteAsync(page, http.RequestAborted);
        })).ExcludeFromDescription();
    }

    private static string Write()
    {
        var html = new StringBuilder("""
            <!doctype html>
            <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Problems</title>
            <style>body{font:16px/1.5 system-ui,sans-serif;max-width:46rem;margin:2rem auto;padding:0 1rem}h2{margin-top:2rem}code{background:#eee;padding:.1em .3em}</style>
            </head><body><h1>Problems</h1>
            <p>Every refusal is <code>application/problem+json</code> (RFC 9457). <code>errors</code> lists everything that is wrong, each with a JSON Pointer.</p>
            """);
        foreach (var kind in ProblemKinds.All)
        {
            html.Append(System.Globalization.CultureInfo.InvariantCulture,
                $"\n<h2 id=\"{kind.Code}\">{kind.Status} {kind.Code}</h2>\n<p><strong>{WebUtility.HtmlEncode(kind.Title)}.</strong> {WebUtility.HtmlEncode(kind.Advice)}</p>");
        }

        return html.Append("\n</body></html>\n").ToString();
    }
}
