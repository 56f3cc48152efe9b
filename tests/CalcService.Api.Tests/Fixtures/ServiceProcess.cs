using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Threading.Channels;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The service in a process of its own, to be stopped, killed or squeezed. It finds its own free port and says which.</summary>
public sealed class ServiceProcess : IAsyncDisposable
{
    /// <summary>Longer than any busy machine takes; what hangs for ever still ends.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private readonly Process _process;
    private readonly Channel<string> _log = Channel.CreateUnbounded<string>();

    private ServiceProcess(Process process)
    {
        _process = process;
        process.OutputDataReceived += (_, said) => _log.Writer.TryWrite(said.Data ?? "");
        process.ErrorDataReceived += (_, said) => _log.Writer.TryWrite(said.Data ?? "");
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    public Uri Address { get; private set; } = null!;

    public HttpClient Client { get; private set; } = null!;

    /// <summary>Starts it with settings of the service and variables of the environment, and waits until it listens.</summary>
    public static async Task<ServiceProcess> StartAsync(IEnumerable<(string Key, string Value)> settings,
        params IEnumerable<(string Name, string Value)> environment)
    {
        var start = new ProcessStartInfo("dotnet",
            [Path.Combine(AppContext.BaseDirectory, "CalcService.Api.dll"), "--urls", "http://127.0.0.1:0",
            .. settings.Select(setting => $"--{setting.Key}={setting.Value}")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        var service = new ServiceProcess(Process.Start(start)!);
        await service.FindAddressAsync();
        return service;
    }

    /// <summary>SIGTERM, as whoever runs it stops it.</summary>
    public async Task TerminateAsync()
    {
        using var kill = Process.Start("kill", ["-TERM", _process.Id.ToString(CultureInfo.InvariantCulture)]);
        await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>SIGKILL, as nobody can prepare for.</summary>
    public void Kill() => _process.Kill();

    /// <summary>Waits for its end and gives the exit code.</summary>
    public async Task<int> ExitAsync()
    {
        using var patience = new CancellationTokenSource(Patience);
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    /// <summary>Asks until the status is there; null stands for a connection that is refused.</summary>
    public async Task<int?> UntilAsync(string path, params int?[] statuses)
    {
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed < Patience)
        {
            var status = await AskAsync(path);
            if (statuses.Contains(status))
            {
                return status;
            }
        }

        throw new TimeoutException($"{path} never gave {string.Join(" or ", statuses)}.");
    }

    /// <summary>The most memory that it ever had resident, in MiB, as the kernel counts it.</summary>
    public async Task<double> PeakMiBAsync()
    {
        var lines = await File.ReadAllLinesAsync($"/proc/{_process.Id}/status", TestContext.Current.CancellationToken);
        var peak = lines.Single(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
        return double.Parse(peak.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    /// <summary>Waits for a line of the log.</summary>
    public async Task<JsonObject> LogLineAsync(Predicate<JsonObject> isIt)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (true)
        {
            var line = await _log.Reader.ReadAsync(patience.Token);
            if (line.StartsWith('{') && JsonNode.Parse(line)!.AsObject() is var entry && isIt(entry))
            {
                return entry;
            }
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
        Client?.Dispose();
    }

    private async Task FindAddressAsync()
    {
        var said = new List<string>();
        using var patience = new CancellationTokenSource(Patience);
        while (true)
        {
            var line = await _log.Reader.ReadAsync(patience.Token);
            said.Add(line);
            Assert.False(_process.HasExited, string.Join('\n', said));
            if (line.StartsWith('{') && (string?)JsonNode.Parse(line)!["address"] is { } address)
            {
                Address = new Uri(address);
                Client = new HttpClient { BaseAddress = Address, Timeout = Patience };
                return;
            }
        }
    }

    private async Task<int?> AskAsync(string path)
    {
        try
        {
            using var response = await Client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);
            return (int)response.StatusCode;
        }
        catch (HttpRequestException)
        {
            return null;
        }
    }
}
