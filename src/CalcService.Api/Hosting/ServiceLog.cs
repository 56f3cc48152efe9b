using Serilog;
using Serilog.AspNetCore;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace CalcService.Api.Hosting;

/// <summary>Compact JSON lines on standard output, one for each request, never a body.</summary>
public static class ServiceLog
{
    /// <summary>The least that is logged.</summary>
    public const string Key = "Log:Level";

    /// <exception cref="StartRefusedException">What stands there is no level.</exception>
    public static void AddServiceLog(this IServiceCollection services, IConfiguration configuration)
    {
        var level = Level(configuration);
        services.AddSerilog(log => log
            .MinimumLevel.Is(level)
            .MinimumLevel.Override("Microsoft.AspNetCore", LogEventLevel.Warning)
            // A start that failed is told once, on standard error.
            .Filter.ByExcluding(entry => entry.MessageTemplate.Text == "Hosting failed to start")
            .Enrich.FromLogContext()
            .WriteTo.Console(new CompactJsonFormatter()));
    }

    public static void Requests(RequestLoggingOptions options)
    {
        options.MessageTemplate = "{RequestMethod} {RequestPath} {StatusCode} in {Elapsed:0.000} ms";
        // Who is told to come back (503) is no failure, and probes would drown everything else.
        options.GetLevel = (http, _, failure) =>
            failure is not null || http.Response.StatusCode is >= 500 and not 503 ? LogEventLevel.Error
            : http.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal) ? LogEventLevel.Verbose : LogEventLevel.Information;
    }

    private static LogEventLevel Level(IConfiguration configuration)
    {
        var names = Enum.GetNames<LogEventLevel>();
        return configuration[Key] is not { } text ? LogEventLevel.Information
            : Array.FindIndex(names, name => name.Equals(text, StringComparison.OrdinalIgnoreCase)) is var level and >= 0
            ? Enum.GetValues<LogEventLevel>()[level]
            : throw new StartRefusedException($"{Key} is \"{text}\"; one of {string.Join(", ", names)} is expected.");
    }
}
