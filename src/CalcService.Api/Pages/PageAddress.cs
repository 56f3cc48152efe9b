using System.Text.RegularExpressions;

namespace CalcService.Api.Pages;

/// <summary>Addresses below /docs.</summary>
internal static partial class PageAddress
{
    /// <summary>
    /// Makes every address of a page that stands in the text of some markup a link. It is relative, so that it works behind
    /// the prefix of a gateway, and the address stays there to read, in print too.
    /// </summary>
    /// <param name="markup">What is sent.</param>
    /// <param name="root">The way from its own address to that of the service, such as ../.</param>
    public static string Linked(string markup, string root) => InText().Replace(markup, $"<a href=\"{root}${{to}}\">/${{to}}</a>");

    /// <summary>Sends who asked with a slash at the end to the page: its links are relative to the address without one.</summary>
    public static bool LeadsToPage(this HttpContext http)
    {
        var path = http.Request.Path.Value!;
        if (path.EndsWith('/'))
        {
            http.Response.Redirect("../" + path.TrimEnd('/').Split('/')[^1] + http.Request.QueryString, permanent: true);
        }

        return path.EndsWith('/');
    }

    [GeneratedRegex(@"(?<=[>\s(])/(?<to>docs(/[a-z0-9-]+)*(#[a-z0-9-]+)?)(?![\w/{#-])")]
    private static partial Regex InText();
}
