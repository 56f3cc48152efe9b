using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>
/// The parsers' test files as bodies, as values and as lines: what is JSON is never called none, what is none always is, and whoever sent it
/// goes on over the same connection.
/// </summary>
public sealed class JsonTestSuiteTests(Service service)
{
    private const int LineBytes = 64 << 10;
    private static readonly string[] Paths = [Plans.Path, Plans.Path + "/sheet"];

    /// <summary>
    /// Files that aren't UTF-8 lost it on the way, and with it what made them no JSON; SyntaxTests send such bytes.
    /// </summary>
    private static readonly KeyValuePair<string, string>[] Texts =
        [.. OtherData.JsonTexts.Where(text => !text.Value.Contains('\uFFFD', StringComparison.Ordinal))];

    [Fact]
    public void Suite_is_there() => Assert.InRange(Texts.Length, 280, 400);

    [Fact]
    public Task Body_is_called_JSON_where_it_is() => JudgeAsync(text => text);

    [Fact]
    public Task Value_of_a_member_is_called_JSON_where_it_is() => JudgeAsync(text => $"{{\"reference\":{text}}}");

    [Fact]
    public async Task Line_of_a_batch_is_called_JSON_where_it_is()
    {
        var lines = Texts.Where(text => !string.IsNullOrWhiteSpace(text.Value) && text.Value.AsSpan().IndexOfAny('\n', '\r') < 0
            && Encoding.UTF8.GetByteCount(text.Value) < LineBytes).ToArray();
        var output = await BatchOutput.PostAsync(service, string.Concat(lines.Select(text => text.Value + "\n")));

        Assert.Equal(lines.Length, output.Lines.Count);
        for (var i = 0; i < lines.Length; i++)
        {
            var problem = output.Lines[i]["problem"];
            Assert.True(problem is not null, $"{lines[i].Key}: {output.Lines[i]}");
            Judge(lines[i].Key, (int)problem["status"]!, problem);
        }
    }

    private async Task JudgeAsync(Func<string, string> wrap)
    {
        var connections = 0;
        using var client = new HttpClient(new SocketsHttpHandler
        {
            MaxConnectionsPerServer = 1,
            ConnectCallback = async (context, cancellation) =>
            {
                connections++;
                var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
                await socket.ConnectAsync(context.DnsEndPoint, cancellation);
                return new NetworkStream(socket, ownsSocket: true);
            },
        }) { BaseAddress = service.Address, DefaultRequestVersion = HttpVersion.Version11 };
        foreach (var (name, text) in Texts)
        {
            foreach (var path in Paths)
            {
                using var request = new HttpRequestMessage(HttpMethod.Post, path)
                {
                    Content = new StringContent(wrap(text), Encoding.UTF8, "application/json"),
                };
                var reply = await Reply.SendAsync(client, request);
                Judge(name, reply.Status, reply.Json);
            }
        }

        Assert.Equal(1, connections);
        Assert.Empty(service.Escaped);
    }

    /// <summary>None of them is a plan: what is JSON is refused for another reason.</summary>
    private static void Judge(string name, int status, JsonNode problem)
    {
        Assert.True(status is 400 or 422, $"{name}: {problem}");
        var isCalledNone = problem["errors"]!.AsArray().Any(error => (string)error!["code"]! == "syntax");
        Assert.True(name[0] switch { 'y' => !isCalledNone, 'n' => isCalledNone && status == 400, _ => true }, $"{name}: {problem}");
    }
}
