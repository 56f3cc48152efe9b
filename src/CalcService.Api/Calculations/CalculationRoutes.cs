using CalcService.Api.Batches;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.OpenApi;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine;
using CalcService.Engine.Rules;

namespace CalcService.Api.Calculations;

/// <summary>Maps a capability to its paths.</summary>
public static class CalculationRoutes
{
    private const string Tag = "Calculations";
    private static readonly int[] Refusals = [400, 406, 408, 413, 415, 422, 429, 500, 503];
    private static readonly int[] BatchRefusals = [400, 406, 408, 415, 429, 500, 503];

    /// <summary>Registers a calculation.</summary>
    /// <param name="services">The services.</param>
    /// <param name="operation">Its name, as in its path.</param>
    /// <param name="calculate">Computes what a resolved request asks.</param>
    /// <param name="toContract">Maps the numbers to a system of units.</param>
    /// <param name="collector">Makes what gathers the lines of a batch by the current rules; null where each line stands alone.</param>
    public static void AddCalculation<TRequest, TResult, TOutcome>(
        this IServiceCollection services,
        string operation,
        Func<Resolved<TRequest>, Budget, CancellationToken, Outcome<TOutcome>> calculate,
        Func<Resolved<TRequest>, TOutcome, UnitSystem, TResult> toContract,
        Func<RuleBook, ISummaryCollector>? collector = null)
        where TRequest : class, ICalculationRequest
        where TResult : class =>
        services.AddSingleton<ICapability>(provider => new Capability<TRequest, TResult, TOutcome>(
            operation, calculate, toContract, provider.GetRequiredService<Resolver>(), provider.GetRequiredService<TimeProvider>())
        {
            Collector = collector is null ? null : () => collector(provider.GetRequiredService<Editions>().Current),
        });

    /// <summary>The calculation of this name.</summary>
    public static ICapability Calculation(this IServiceProvider services, string operation) =>
        services.GetServices<ICapability>().Single(capability => capability.Operation == operation);

    /// <param name="app">The application.</param>
    /// <param name="operation">Name of the calculation.</param>
    /// <param name="id">Operation id in the OpenAPI document, such as planPour.</param>
    /// <param name="summary">What it answers.</param>
    /// <param name="description">More about it.</param>
    /// <param name="sheet">Writes the printable form.</param>
    public static void MapCalculation(
        this IEndpointRouteBuilder app, string operation, string id, string summary, string description, SheetWriter sheet)
    {
        var (capability, examples) = (app.ServiceProvider.Calculation(operation), RequestExamples.Of(operation));
        app.MapPost($"/v1/{operation}",
            (HttpContext http, Readiness readiness) => CalculationEndpoint.HandleAsync(http, capability, readiness))
            .Describe(id, summary, Tag)
            .WithDescription(description)
            .Accepts(capability.RequestType, CalculationEndpoint.MediaType)
            .Produces(200, capability.AnswerType, CalculationEndpoint.MediaType)
            .ProducesProblems(Refusals)
            .WithMetadata(new CalculationMetadata(IsBatch: false, examples));
        app.MapPost($"/v1/{operation}/batch",
            (HttpContext http, Readiness readiness) => BatchEndpoint.HandleAsync(http, capability, readiness))
            .Describe(id + "Batch", summary + ", many at once", Tag)
            .WithDescription("Takes one request a line and answers line by line, in order. Up to 8 MiB the service reads everything "
                + "before it writes; above, the header Batch-Mode says streaming and the client must read while it sends.")
            .Produces<string>(200, BatchEndpoint.MediaType)
            .ProducesProblems(BatchRefusals)
            .WithMetadata(new CalculationMetadata(IsBatch: true, examples));
        app.MapPost($"/v1/{operation}/sheet",
            (HttpContext http, Readiness readiness) => SheetEndpoint.HandleAsync(http, capability, sheet, readiness))
            .Describe(id + "Sheet", summary + ", to print", Tag)
            .WithDescription(
            "The same request as for the single calculation; a page to print, or its picture where Accept asks for image/svg+xml.")
            .Accepts(capability.RequestType, CalculationEndpoint.MediaType)
            .Produces<string>(200, SheetEndpoint.PageType, SheetEndpoint.PictureType)
            .ProducesProblems(Refusals)
            .WithMetadata(new CalculationMetadata(IsBatch: false, examples, HasDetail: false));
    }
}
