using System.Diagnostics;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>A start that ends by itself, and what it said.</summary>
public sealed record RefusedStart(int ExitCode, string Output, string Error)
{
    /// <summary>Starts the service with arguments and variables of the environment, and waits for its end.</summary>
    public static async Task<RefusedStart> RunAsync(IEnumerable<string> arguments, params IEnumerable<(string Name, string Value)> environment)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(ServiceHost).Assembly.Location, .. arguments])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromMinutes(2));
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(patience.Token);
            var error = await process.StandardError.ReadToEndAsync(patience.Token);
            await process.WaitForExitAsync(patience.Token);
            return new(process.ExitCode, await output, error);
        }
        finally
        {
            process.Kill();
        }
    }
}
