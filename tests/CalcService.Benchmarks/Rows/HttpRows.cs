using CalcService.Benchmarks.Measuring;
using Microsoft.AspNetCore.Builder;

namespace CalcService.Benchmarks.Rows;

/// <summary>CPU of a pour plan of one end over HTTP against endpoints that only parse and write.</summary>
internal static class HttpRows
{
    private const string Path = "/v1/pour-plans";

    public static async Task<IReadOnlyList<Row>> MeasureAsync()
    {
        await using var service = await Hosts.StartServiceAsync();
        var port = Hosts.PortOf(service);
        var plan = await MeasureAsync(port, Path, full: false);
        var full = await MeasureAsync(port, Path + "?detail=full", full: true);
        return
        [
            new("pour plan of one end over HTTP, CPU against parsing and writing", $"{plan.Typed:0.00} ×", "2.0 ×", plan.Typed / 2),
            new("the same with ?detail=full, against its own larger answer", $"{full.Typed:0.00} ×", "3 ×", full.Typed / 3),
            new("for comparison: against checking the JSON and copying bytes", $"{plan.Plain:0.00} ×; full {full.Plain:0.00} ×"),
        ];
    }

    private static async Task<(double Typed, double Plain)> MeasureAsync(int port, string path, bool full)
    {
        var answer = Work.Capability.Process(Work.Body, full, CancellationToken.None).Body;
        using var service = new RawClient(port, path, Work.Body);
        var bytes = service.Send().ToArray();
        await using WebApplication echo = await Hosts.StartEchoAsync(answer, bytes);
        using var typed = new RawClient(Hosts.PortOf(echo), "/typed", Work.Body);
        using var plain = new RawClient(Hosts.PortOf(echo), "/plain", Work.Body);
        // The service has ten times the code of the others: with fewer requests it was still on its way to optimised code when it was measured.
        var found = Interleaved.Measure(warmUp: 50, rounds: 15, times: 400,
            [Of("typed", typed), Of("plain", plain), Of("service", service)]);
        return (found[2].Ratio, found[2].Median / found[1].Median);
    }

    /// <summary>The process's CPU for a request, without that of the client's thread.</summary>
    private static Contender Of(string name, RawClient client) => new(name, times =>
    {
        var (process, thread) = (CpuClock.Process(), CpuClock.Thread());
        for (var i = 0; i < times; i++)
        {
            client.Send();
        }

        return (CpuClock.Process() - process - (CpuClock.Thread() - thread)) / times;
    });
}
