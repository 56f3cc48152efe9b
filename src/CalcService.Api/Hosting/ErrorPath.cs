using CalcService.Api.Problems;
using Microsoft.AspNetCore.Connections;

namespace CalcService.Api.Hosting;

/// <summary>
/// The one path from a failure to a problem, the same in every environment: what was thrown, and what the framework
/// refused without a body. No exception text leaves the service.
/// </summary>
public static partial class ErrorPath
{
#pragma warning disable CA1031 // The outermost handler catches everything by its nature.
    public static IApplicationBuilder UseErrorPath(this IApplicationBuilder app)
    {
        var logger = app.ApplicationServices.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(ErrorPath));
        return app.Use(async (http, next) =>
        {
            try
            {
                await next(http);
                if (http.Response is { HasStarted: false, StatusCode: >= 400, ContentLength: null, ContentType: null })
                {
                    await ProblemWriter.WriteAsync(http, ProblemKinds.ForStatus(http.Response.StatusCode).With());
                }
            }
            catch (Exception failure) when (http.RequestAborted.IsCancellationRequested || failure is ConnectionAbortedException)
            {
                // The client has gone: there is nobody to answer. 499 shows in the request log only.
                if (!http.Response.HasStarted)
                {
                    http.Response.StatusCode = 499;
                }
            }
            catch (BadHttpRequestException refused) when (!http.Response.HasStarted)
            {
                await ProblemWriter.WriteAsync(http, ProblemKinds.ForStatus(refused.StatusCode).With());
            }
            catch (Exception failure) when (failure is OperationCanceledException or OutOfMemoryException && !http.Response.HasStarted)
            {
                await ProblemWriter.WriteAsync(http, ProblemKinds.Unavailable.With());
            }
            catch (Exception failure)
            {
                LogFailure(logger, failure);
                if (http.Response.HasStarted)
                {
                    http.Abort();
                    return;
                }

                await ProblemWriter.WriteAsync(http, ProblemKinds.Internal.With());
            }
        });
    }

#pragma warning restore CA1031

    [LoggerMessage(Level = LogLevel.Error, Message = "Request failed")]
    internal static partial void LogFailure(ILogger logger, Exception failure);
}
