using CalcService.Api.Problems;

namespace CalcService.Api.Hosting;

/// <summary>Words to describe an endpoint to the OpenAPI document.</summary>
public static class EndpointDescription
{
    public static RouteHandlerBuilder Describe<T>(this RouteHandlerBuilder endpoint, string id, string summary, string tag) =>
        endpoint.Describe(id, summary, tag).Produces<T>(200, "application/json");

    public static RouteHandlerBuilder Describe(this RouteHandlerBuilder endpoint, string id, string summary, string tag) =>
        endpoint.WithName(id).WithSummary(summary).WithTags(tag);

    public static RouteHandlerBuilder ProducesProblems(this RouteHandlerBuilder endpoint, params IEnumerable<int> statuses)
    {
        foreach (var status in statuses)
        {
            endpoint.Produces<Problem>(status, ProblemWriter.MediaType);
        }

        return endpoint;
    }
}
