using System.Diagnostics;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Hosting;

/// <summary>Headers that every response carries.</summary>
public static class StandardHeaders
{
    // The documentation is the only thing here that a browser runs; its page styles elements inline.
    private const string DocumentationPolicy =
        "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; frame-ancestors 'none'";
    private const string AnswerPolicy = "default-src 'none'; frame-ancestors 'none'";

    /// <summary>A printable sheet brings its own style and nothing else.</summary>
    public const string SheetPolicy = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";

    public static IApplicationBuilder UseStandardHeaders(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        var headers = http.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers.XFrameOptions = "DENY";
        headers.ContentSecurityPolicy = OpenApiSetup.IsDocumentation(http) ? DocumentationPolicy : AnswerPolicy;
        headers.CacheControl = "no-store";
        if (Activity.Current is { } activity)
        {
            headers["Trace-Id"] = activity.TraceId.ToHexString();
        }

        return next(http);
    });
}
