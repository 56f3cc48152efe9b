using System.Net;
using System.Text;
using CalcService.Api.Pages;
using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>The page that the type of a problem leads to.</summary>
public static class ProblemPage
{
    public static void MapProblemPage(this IEndpointRouteBuilder app)
    {
        var page = Encoding.UTF8.GetBytes(Write());
        app.MapRead("/docs/problems", HtmlPage.Type, (async Task (HttpContext http) =>
        {
            http.Response.ContentType = HtmlPage.ContentType;
            http.Response.ContentLength = page.Length;
            await http.Response.Body.WriteAsync(page, http.RequestAborted);
        })).ExcludeFromDescription();
    }

    private static string Write()
    {
        var html = new StringBuilder("""
            <h1>Problems</h1>
            <p>Every refusal is <code>application/problem+json</code> (RFC 9457). <code>errors</code> lists everything that is wrong, each with a JSON Pointer.</p>
            """);
        foreach (var kind in ProblemKinds.All)
        {
            html.Append(System.Globalization.CultureInfo.InvariantCulture,
                $"\n<h2 id=\"{kind.Code}\">{kind.Status} {kind.Code}</h2>\n<p><strong>{WebUtility.HtmlEncode(kind.Title)}.</strong> {WebUtility.HtmlEncode(kind.Advice)}</p>");
        }

        return HtmlPage.Of("Problems", html.ToString());
    }
}
