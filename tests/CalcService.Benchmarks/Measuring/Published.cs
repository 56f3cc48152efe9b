using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace CalcService.Benchmarks.Measuring;

/// <summary>The service as it is published, in a process of its own.</summary>
internal sealed class Published : IDisposable
{
    private readonly Process _process;

    private Published(Process process, int port, double secondsToReady) =>
        (_process, Port, SecondsToReady) = (process, port, secondsToReady);

    public int Port { get; }

    public double SecondsToReady { get; }

    /// <summary>Publishes the service into a folder, as the Dockerfile does.</summary>
    public static void Publish(string folder)
    {
        using var publish = Process.Start(new ProcessStartInfo("dotnet",
            ["publish", Path.Combine(Root(), "src/CalcService.Api"), "-c", "Release", "-r", "linux-x64", "--no-self-contained", "-o",
            folder])
        {
            RedirectStandardOutput = true,
        })!;
        var said = publish.StandardOutput.ReadToEnd();
        publish.WaitForExit();
        if (publish.ExitCode != 0)
        {
            throw new InvalidOperationException(said);
        }
    }

    /// <summary>Starts it and waits until /health/ready says 200.</summary>
    public static Published Start(string folder)
    {
        var port = FreePort();
        var start = new ProcessStartInfo("dotnet", [Path.Combine(folder, "CalcService.Api.dll"), "--urls", $"http://127.0.0.1:{port}"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = folder,
        };
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        var watch = Stopwatch.StartNew();
        var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        while (!IsReady(port))
        {
            Thread.Sleep(5);
            if (process.HasExited || watch.Elapsed > TimeSpan.FromMinutes(1))
            {
                throw new InvalidOperationException("The published service doesn't start.");
            }
        }

        return new(process, port, watch.Elapsed.TotalSeconds);
    }

    /// <summary>A size from the kernel's list, such as VmRSS or VmHWM, in MiB.</summary>
    public double MiB(string name)
    {
        var line = File.ReadLines($"/proc/{_process.Id}/status").First(line => line.StartsWith(name + ":", StringComparison.Ordinal));
        return double.Parse(line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    public void Dispose()
    {
        _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
    }

    private static bool IsReady(int port)
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            socket.Connect(IPAddress.Loopback, port);
            socket.Send("GET /health/ready HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"u8);
            var answer = new byte[64];
            return socket.Receive(answer) > 12 && answer.AsSpan().StartsWith("HTTP/1.1 200"u8);
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "CalcService.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("Run it from the repository.");
    }
}
