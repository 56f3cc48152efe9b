using System.Collections.Concurrent;
using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

[assembly: AssemblyFixture(typeof(Service))]

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The whole service on real sockets, one for all tests: what a client sees is what is tested.</summary>
public sealed class Service : WebApplicationFactory<Program>
{
    private readonly (string Key, string? Value)[] _settings;
    private readonly Action<IServiceCollection> _services;

    public Service()
        : this([])
    {
    }

    /// <summary>The service with a folder of compound sheets.</summary>
    internal Service(string sheets)
        : this((CompoundFolder.Key, sheets))
    {
    }

    /// <summary>The service with settings of its own.</summary>
    internal Service(params (string Key, string? Value)[] settings)
        : this(_ => { }, settings)
    {
    }

    /// <summary>The service with something else in the place of what it is made of.</summary>
    internal Service(Action<IServiceCollection> services, params (string Key, string? Value)[] settings)
    {
        (_settings, _services) = (settings, services);
        UseKestrel(0);
        StartServer();
        Client = CreateClient();
    }

    /// <summary>A client of the running service.</summary>
    public HttpClient Client { get; }

    public Uri Address => Client.BaseAddress!;

    /// <summary>Every calculation, from bytes to answer without HTTP.</summary>
    public IReadOnlyList<ICapability> Capabilities => [.. Services.GetServices<ICapability>()];

    /// <summary>Exceptions that left the pipeline: the error path must keep them all.</summary>
    public ConcurrentQueue<Exception> Escaped { get; } = new();

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        // A test never fails because its machine is busy.
        (string Key, string? Value)[] patient =
        [
            ("Log:Level", "Fatal"), (ServiceSettings.CalculationSeconds.Key, "600"), (ServiceSettings.HeaderSeconds.Key, "600"),
                (ServiceSettings.BodySeconds.Key, "600"), (ServiceSettings.WaitSeconds.Key, "600"),
            (ServiceSettings.BytesPerSecond.Key, "1"), (ServiceSettings.Batches.Key, "1000"), (ServiceSettings.UnreadySeconds.Key, "0"),
        ];
        foreach (var (key, value) in patient.Concat(_settings))
        {
            builder.UseSetting(key, value);
        }

        builder.ConfigureTestServices(services =>
            services.AddSingleton<IStartupFilter>(new EscapeWatch(Escaped))).ConfigureTestServices(_services);
    }
}

/// <summary>Stands outside of the whole pipeline and notes what gets out.</summary>
internal sealed class EscapeWatch(ConcurrentQueue<Exception> escaped) : IStartupFilter
{
    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
    {
        app.Use(async (http, following) =>
        {
            try
            {
                await following(http);
            }
            catch (Exception failure)
            {
                escaped.Enqueue(failure);
                throw;
            }
        });
        next(app);
    };
}
