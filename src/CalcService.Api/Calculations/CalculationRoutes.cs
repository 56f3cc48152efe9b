using CalcService.Api.Batches;
using CalcService.Api.Hosting;
using CalcService.Api.OpenApi;
using CalcService.Api.Sheets;
using CalcService.Api.Validation;

namespace CalcService.Api.Calculations;

/// <summary>Maps a capability to its paths.</summary>
public static class CalculationRoutes
{
    private const string Tag = "Calculations";
    private static readonly int[] Refusals = [400, 406, 408, 413, 415, 422, 429, 500, 503];
    private static readonly int[] BatchRefusals = [400, 406, 408, 415, 429, 500, 503];

    /// <summary>Registers a calculation.</summary>
    public static IServiceCollection AddCapability<TCapability>(this IServiceCollection services)
        where TCapability : class, ICapability =>
        services.AddSingleton<TCapability>().AddSingleton<ICapability>(provider => provider.GetRequiredService<TCapability>());

    /// <summary>Registers a calculation, also among those whose archived answers can be computed again.</summary>
    public static IServiceCollection AddCalculation<TCapability>(this IServiceCollection services)
        where TCapability : class, IRecomputable =>
        services.AddCapability<TCapability>().AddSingleton<IRecomputable>(provider => provider.GetRequiredService<TCapability>());

    /// <param name="app">The application.</param>
    /// <param name="id">Operation id in the OpenAPI document, such as planPour.</param>
    /// <param name="summary">What it answers.</param>
    /// <param name="description">More about it.</param>
    /// <param name="examples">Requests that run as they stand.</param>
    /// <param name="sheet">Writes the printable form.</param>
    public static void MapCalculation<TCapability>(
        this IEndpointRouteBuilder app, string id, string summary, string description, IReadOnlyList<RequestExample> examples, SheetWriter sheet)
        where TCapability : ICapability
    {
        var capability = app.ServiceProvider.GetRequiredService<TCapability>();
        ValidatorCheck.Run(app.ServiceProvider, capability.RequestType);
        app.MapPost($"/v1/{capability.Operation}", (HttpContext http, Readiness readiness) => CalculationEndpoint.HandleAsync(http, capability, readiness))
            .Describe(id, summary, Tag)
            .WithDescription(description)
            .Accepts(capability.RequestType, CalculationEndpoint.MediaType)
            .Produces(200, capability.AnswerType, CalculationEndpoint.MediaType)
            .ProducesProblems(Refusals)
            .WithMetadata(new CalculationMetadata(IsBatch: false, examples));
        app.MapPost($"/v1/{capability.Operation}/batch", (HttpContext http, Readiness readiness) => BatchEndpoint.HandleAsync(http, capability, readiness))
            .Describe(id + "Batch", summary + ", many at once", Tag)
            .WithDescription("Takes one request a line and answers line by line, in order. Up to 8 MiB the service reads everything before it writes; above, "
                + "the header Batch-Mode says streaming and the client must read while it sends.")
            .Produces<string>(200, BatchEndpoint.MediaType)
            .ProducesProblems(BatchRefusals)
            .WithMetadata(new CalculationMetadata(IsBatch: true, examples));
        app.MapPost($"/v1/{capability.Operation}/sheet", (HttpContext http, Readiness readiness) => SheetEndpoint.HandleAsync(http, capability, sheet, readiness))
            .Describe(id + "Sheet", summary + ", to print", Tag)
            .WithDescription("The same request as for the single calculation; a page to print, or its picture where Accept asks for image/svg+xml.")
            .Accepts(capability.RequestType, CalculationEndpoint.MediaType)
            .Produces<string>(200, SheetEndpoint.PageType, SheetEndpoint.PictureType)
            .ProducesProblems(Refusals)
            .WithMetadata(new CalculationMetadata(IsBatch: false, examples, HasDetail: false));
    }
}
