using System.Text.Json;
using CalcService.Api.Hosting;

namespace CalcService.Api.Problems;

/// <summary>Writes a problem, the same way in every environment.</summary>
public static class ProblemWriter
{
    public const string MediaType = "application/problem+json";

    public static async Task WriteAsync(HttpContext http, Problem problem)
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(problem, ApiJson.Options);
        http.Response.StatusCode = problem.Status;
        http.Response.ContentType = MediaType;
        http.Response.ContentLength = body.Length;
        http.Response.Headers.CacheControl = "no-store";
        if (problem.Status == 503 && http.Response.Headers.RetryAfter.Count == 0)
        {
            http.Response.Headers.RetryAfter = "5";
        }

        if (problem.Status == 408 && HttpProtocol.IsHttp11(http.Request.Protocol))
        {
            // What is still to come of the body would be read as the next request (RFC 9110, section 15.5.9).
            http.Response.Headers.Connection = "close";
        }

        if (!HttpMethods.IsHead(http.Request.Method))
        {
            await http.Response.Body.WriteAsync(body, http.RequestAborted);
        }
    }
}
