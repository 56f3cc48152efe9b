using Serilog;
using Serilog.AspNetCore;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace CalcService.Api.Hosting;

/// <summary>Compact JSON lines on standard output, one for each request, never a body.</summary>
public static class ServiceLog
{
    public static void AddServiceLog(this IServiceCollection services, IConfiguration configuration) =>
        services.AddSerilog(log => log
            .MinimumLevel.Is(Enum.TryParse<LogEventLevel>(configuration["Log:Level"], ignoreCase: true, out var level) ? level
            : LogEventLevel.Information)
            .MinimumLevel.Override("Microsoft.AspNetCore", LogEventLevel.Warning)
            .Enrich.FromLogContext()
            .WriteTo.Console(new CompactJsonFormatter()));

    public static void Requests(RequestLoggingOptions options)
    {
        options.MessageTemplate = "{RequestMethod} {RequestPath} {StatusCode} in {Elapsed:0.000} ms";
        // Probes would drown everything else.
        options.GetLevel = (http, _, failure) => failure is not null || http.Response.StatusCode >= 500 ? LogEventLevel.Error
            : http.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal) ? LogEventLevel.Verbose : LogEventLevel.Information;
    }
}
