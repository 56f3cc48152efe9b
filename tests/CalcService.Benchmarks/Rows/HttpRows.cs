using CalcService.Benchmarks.Measuring;
using Microsoft.AspNetCore.Builder;

namespace CalcService.Benchmarks.Rows;

/// <summary>CPU of a pour plan of one end over HTTP against endpoints that only parse and write.</summary>
internal static class HttpRows
{
    private const string Path = "/v1/pour-plans";
    private const string FullPath = Path + "?detail=full";
    private const string Echo = "/echo";
    private const string FullEcho = "/echo-full";
    private const int InFlight = 8;

    public static async Task<IReadOnlyList<Row>> MeasureAsync()
    {
        var (answer, fullAnswer) = (Answer(full: false), Answer(full: true));
        await using var service = await Hosts.StartServiceAsync((Echo, answer), (FullEcho, fullAnswer));
        var port = Hosts.PortOf(service);
        var plan = await MeasureAsync(port, Path, Echo, answer);
        var full = await MeasureAsync(port, FullPath, FullEcho, fullAnswer);
        var (busy, fullBusy) = (MeasureBusy(port, Path, Echo), MeasureBusy(port, FullPath, FullEcho));
        return
        [
            new("pour plan of one end over HTTP, CPU against an endpoint of the service that only parses and writes",
                $"{plan.Endpoint:0.00} ×", "2.5 ×", plan.Endpoint / 2.5),
            new("the same with ?detail=full, against its own larger answer", $"{full.Endpoint:0.00} ×", "3 ×", full.Endpoint / 3),
            new($"the plan with {InFlight} requests in flight, so that threads wait and spin less (full: {fullBusy:0.00} ×)",
                $"{busy:0.00} ×", "3.0 ×", busy / 3),
            new("for comparison: against parsing and writing in a bare server without a log",
                $"{plan.Typed:0.00} ×; full {full.Typed:0.00} ×"),
            new("for comparison: against checking the JSON and copying bytes in a bare server",
                $"{plan.Plain:0.00} ×; full {full.Plain:0.00} ×"),
        ];
    }

    private static object Answer(bool full) => Work.Capability.Process(Work.Body, full, CancellationToken.None).Body;

    private static async Task<(double Endpoint, double Typed, double Plain)> MeasureAsync(int port, string path, string echoPath,
        object answer)
    {
        using var service = new RawClient(port, path, Work.Body);
        using var endpoint = new RawClient(port, echoPath, Work.Body);
        var bytes = service.Send().ToArray();
        await using WebApplication bare = await Hosts.StartEchoAsync(answer, bytes);
        using var typed = new RawClient(Hosts.PortOf(bare), "/typed", Work.Body);
        using var plain = new RawClient(Hosts.PortOf(bare), "/plain", Work.Body);
        // The service has ten times the code of the others: with fewer requests it was still on its way to optimised code when it was
        // measured.
        var found = Interleaved.Measure(warmUp: 50, rounds: 15, times: 400,
            [Of("service", [service]), Of("endpoint", [endpoint]), Of("typed", [typed]), Of("plain", [plain])]);
        return (1 / found[1].Ratio, 1 / found[2].Ratio, 1 / found[3].Ratio);
    }

    private static double MeasureBusy(int port, string path, string echoPath)
    {
        RawClient[] endpoint = Clients(echoPath), service = Clients(path);
        RawClient[] Clients(string to) => [.. Enumerable.Range(0, InFlight).Select(_ => new RawClient(port, to, Work.Body))];
        try
        {
            return Interleaved.Measure(warmUp: 10, rounds: 15, times: 400, [Of("endpoint", endpoint), Of("service", service)])[1].Ratio;
        }
        finally
        {
            foreach (var client in endpoint.Concat(service))
            {
                client.Dispose();
            }
        }
    }

    /// <summary>The process's CPU for a request, without that of the client's thread; as many in flight as there are clients.</summary>
    private static Contender Of(string name, RawClient[] clients) => new(name, times =>
    {
        var (process, thread) = (CpuClock.Process(), CpuClock.Thread());
        for (var i = 0; i < times; i += clients.Length)
        {
            foreach (var client in clients)
            {
                client.Begin();
            }

            foreach (var client in clients)
            {
                client.End();
            }
        }

        return (CpuClock.Process() - process - (CpuClock.Thread() - thread)) / times;
    });
}
