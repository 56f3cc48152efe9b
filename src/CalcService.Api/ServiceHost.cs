using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Audits;
using CalcService.Api.Capabilities.Curing;
using CalcService.Api.Capabilities.Inspection;
using CalcService.Api.Capabilities.Matching;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Capabilities.Proof;
using CalcService.Api.Capabilities.Reuse;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.OpenApi;
using CalcService.Api.Pages;
using CalcService.Api.Telemetry;
using CalcService.Api.Validation;
using CalcService.Engine.Audits;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Proof;
using CalcService.Engine.Reuse;
using CalcService.Engine.Rules;
using CalcService.Engine.Verifications;
using Serilog;

namespace CalcService.Api;

/// <summary>The whole pipeline, used by the program, the tests and the benchmarks alike.</summary>
public static class ServiceHost
{
    /// <summary>Every finding that any calculation can raise. What they share is there once.</summary>
    public static IReadOnlyList<FindingDefinition> Findings { get; } =
    [
        .. PouringFindings.All
            .Union(CuringFindings.All)
            .Union(MatchingFindings.All)
            .Union(ReuseFindings.All)
            .Union(InspectionFindings.All)
            .Union(ProofFindings.All)
            .Union(AuditFindings.All)
            .Union(VerificationFindings.All)
            .OrderBy(definition => definition.Code, StringComparer.Ordinal),
    ];

    /// <summary>Builds the service without starting it.</summary>
    /// <exception cref="StartRefusedException">The configuration has something that can't be used.</exception>
    public static WebApplication Create(string[] args)
    {
        // Without it the framework takes a gzip or br body that was cut off for one that has ended.
        AppContext.SetSwitch("System.IO.Compression.UseStrictValidation", true);
        // Calculations keep a thread for each core; sockets and probes need others before the pool notices by itself.
        ThreadPool.GetMinThreads(out _, out var completion);
        ThreadPool.SetMinThreads((2 * Environment.ProcessorCount) + 2, completion);
        var builder = WebApplication.CreateBuilder(args);
        SettingNames.Check(builder.Configuration);
        var settings = new ServiceSettings(builder.Configuration);
        var origins = CrossOrigin.Origins(builder.Configuration);
        builder.WebHost.ConfigureKestrel(kestrel => ServerLimits.Apply(kestrel, settings));
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = Drain.Longest(settings));
        builder.Services.AddServiceLog(builder.Configuration);
        builder.Services.AddMeasurements(builder.Configuration);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton(Findings).AddSingleton(Editions.Known);
        builder.Services.AddSingleton(CompoundCatalogue.Load(builder.Configuration[CompoundFolder.Key]));
        builder.Services.AddSingleton(settings);
        builder.Services.AddSingleton<Lanes>().AddSingleton<HeldBytes>().AddSingleton<WorkConditions>();
        builder.Services.AddSingleton<Drain>().AddHostedService(services => services.GetRequiredService<Drain>());
        builder.Services.AddSingleton<Readiness>().AddHostedService(services => services.GetRequiredService<Readiness>());
        builder.Services.AddAdmission(settings, HeaderName.Of(Admission.ClientHeaderKey, builder.Configuration));
        builder.Services.AddBatchCompression();
        builder.Services.AddCrossOrigin(origins);
        builder.Services.AddSingleton<ObjectChecks>().AddSingleton<Resolver>();
        builder.Services.AddPouring();
        builder.Services.AddCuring();
        builder.Services.AddMatching();
        builder.Services.AddReuse();
        builder.Services.AddInspection();
        builder.Services.AddProof();
        builder.Services.AddAudits();
        builder.Services.AddVerifications();
        builder.Services.AddFindingPages();
        builder.Services.AddSingleton<ModelPages>();
        builder.Services.AddOpenApiDocument();

        var app = builder.Build();
        app.UseSerilogRequestLogging(ServiceLog.Requests);
        app.UseStandardHeaders();
        app.UseErrorPath();
        app.UseDocumentation();
        app.UseRouting();
        if (origins.Count > 0)
        {
            app.UseCors();
        }

        app.UseReadOnly();
        app.UseRateLimiter();
        app.UseResponseCompression();
        app.MapPouring();
        app.MapCuring();
        app.MapMatching();
        app.MapReuse();
        app.MapInspection();
        app.MapProof();
        app.MapAudits();
        app.MapVerifications();
        app.MapCatalogues();
        app.MapHealth();
        app.MapFindingPages();
        app.MapModelPages();
        app.MapOpenApiDocument();
        return app;
    }
}
