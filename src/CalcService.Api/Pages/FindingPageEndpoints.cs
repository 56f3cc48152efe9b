using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Pages;

/// <summary>The pages of findings below /docs, with ETags.</summary>
public static class FindingPageEndpoints
{
    private const string Address = "/docs/findings";

    public static void AddFindingPages(this IServiceCollection services) => services.AddSingleton<FindingPages>();

    public static void MapFindingPages(this IEndpointRouteBuilder app)
    {
        app.MapRead(Address, HtmlPage.Type, (HttpContext http, FindingPages pages, Readiness readiness) =>
            SendAsync(http, FindingPages.Index, null, pages, readiness)).ExcludeFromDescription();
        app.MapRead(Address + "/{code}", HtmlPage.Type, (HttpContext http, string code, string? edition, FindingPages pages,
            Readiness readiness) =>
            SendAsync(http, code, edition, pages, readiness), RuleCatalogue.Query).ExcludeFromDescription();
    }

    private static async Task SendAsync(HttpContext http, string code, string? edition, FindingPages pages, Readiness readiness)
    {
        if (pages.EditionOf(edition) is not { } book)
        {
            await ProblemWriter.WriteAsync(http, RuleCatalogue.Unknown(pages.Editions));
        }
        else if (!pages.Has(code, book))
        {
            await ProblemWriter.WriteAsync(http, ProblemKinds.NotFound.With("No finding has this code; /docs/findings lists them."));
        }
        else if (http.LeadsToPage())
        {
            return;
        }
        else if (!readiness.ComputesRight)
        {
            await ProblemWriter.WriteAsync(http, ProblemKinds.Unavailable.With());
        }
        else
        {
            var page = await pages.GetAsync(code, book, http.RequestAborted);
            await page.WriteAsync(http);
        }
    }
}
