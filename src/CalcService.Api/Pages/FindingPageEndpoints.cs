using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Engine.Findings;

namespace CalcService.Api.Pages;

/// <summary>The pages of findings below /docs, with ETags.</summary>
public static class FindingPageEndpoints
{
    private const string Address = "/docs/findings";

    public static void AddFindingPages(this IServiceCollection services, IReadOnlyList<FindingDefinition> findings) =>
        services.AddSingleton(provider => new FindingPages(
            findings, provider.GetServices<ICapability>(), provider.GetRequiredService<WorkConditions>()));

    public static void MapFindingPages(this IEndpointRouteBuilder app)
    {
        app.MapRead(Address, HtmlPage.Type, (HttpContext http, FindingPages pages, Readiness readiness) =>
            SendAsync(http, FindingPages.Index, pages, readiness)).ExcludeFromDescription();
        app.MapRead(Address + "/{code}", HtmlPage.Type, (HttpContext http, string code, FindingPages pages, Readiness readiness) =>
            SendAsync(http, code, pages, readiness)).ExcludeFromDescription();
    }

    private static async Task SendAsync(HttpContext http, string code, FindingPages pages, Readiness readiness)
    {
        if (!pages.Has(code))
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
            var page = await pages.GetAsync(code, http.RequestAborted);
            await page.WriteAsync(http);
        }
    }
}
