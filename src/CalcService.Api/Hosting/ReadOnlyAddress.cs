using CalcService.Api.Calculations;
using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>Marks an address that is only read: it has one representation and takes no query, or a single parameter.</summary>
/// <param name="MediaType">Of the representation.</param>
/// <param name="Query">Name of the parameter.</param>
public sealed record ReadOnlyMetadata(string MediaType, string? Query = null);

/// <summary>
/// Catalogues, probes and documents refuse as strictly as calculations do: a query that nobody heeds would be a silent default.
/// </summary>
public static class ReadOnlyAddress
{
    /// <summary>Statuses of the problems that each of them can answer.</summary>
    public static IReadOnlyList<int> Refusals { get; } = [400, 406, 500];

    private static readonly string[] Methods = [HttpMethods.Get, HttpMethods.Head];

    /// <summary>Maps GET, and HEAD, whose body the server leaves out.</summary>
    public static RouteHandlerBuilder MapRead(this IEndpointRouteBuilder app, string path, string mediaType, Delegate handler,
        string? query = null) =>
        app.MapMethods(path, Methods, handler).ReadOnly(mediaType, query);

    public static TBuilder ReadOnly<TBuilder>(this TBuilder endpoint, string mediaType, string? query = null)
        where TBuilder : IEndpointConventionBuilder =>
        endpoint.WithMetadata(new ReadOnlyMetadata(mediaType, query));

    /// <summary>Refuses a query that isn't taken, and an Accept header that excludes the one representation.</summary>
    public static IApplicationBuilder UseReadOnly(this IApplicationBuilder app) => app.Use((http, next) =>
        http.GetEndpoint()?.Metadata.GetMetadata<ReadOnlyMetadata>() is { } address && Refusal(http.Request, address) is { } refused
            ? ProblemWriter.WriteAsync(http, refused)
            : next(http));

    private static Problem? Refusal(HttpRequest request, ReadOnlyMetadata address) =>
        request.Query.All(given => given.Key == address.Query && given.Value.Count == 1)
            ? RequestHead.CheckAccept(request, address.MediaType)
            : ProblemKinds.UnknownQuery.With(address.Query is { } known ? $"This address takes {known}, once, and no other query parameter."
                : "This address takes no query parameters.");
}
