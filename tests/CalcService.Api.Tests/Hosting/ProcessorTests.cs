using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Tests.Examples;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>
/// The same answer on any processor. The runtime and the C library are told not to use what this one has: a service in a process of its
/// own, since both look once, when it starts.
/// </summary>
public sealed class ProcessorTests(Service service)
{
    private const string NoAvx2 = "DOTNET_EnableAVX2=0";
    private const string NoIntrinsics = "DOTNET_EnableHWIntrinsic=0";
    private const string PlainLibrary = "GLIBC_TUNABLES=glibc.cpu.hwcaps=-AVX2,-FMA";

    /// <summary>Every named request that is answered, in full detail too where there is any.</summary>
    private static readonly (string Path, string Body)[] Requests =
    [
        .. HttpExample.All.Where(example => example is { Name: not null, Status: 200, ContentType: CalculationEndpoint.MediaType })
            .SelectMany(example => new[] { (example.Path, example.Body!), (example.Path + "?detail=full", example.Body!) }),
    ];

    public static TheoryData<string> Switches => [NoAvx2, NoIntrinsics, PlainLibrary, $"{NoAvx2} {NoIntrinsics} {PlainLibrary}"];

    [Theory]
    [MemberData(nameof(Switches))]
    public async Task Answer_of_every_example_is_the_same_bytes_where_the_processor_can_do_less(string switches)
    {
        Assert.InRange(Requests.Length, 60, 200);
        await using var less = await ServiceProcess.StartAsync([], Environment(switches));
        await using var whole = await ServiceProcess.StartAsync([]);
        foreach (var (path, body) in Requests)
        {
            var (found, expected) = (await PostAsync(less, path, body), await PostAsync(whole, path, body));

            Assert.Equal((200, 200), (found.Status, expected.Status));
            Assert.True(found.Lasting == expected.Lasting, $"{path} under {switches}: {FirstDifference(found, expected)}");
        }
    }

    [Fact]
    public async Task Answer_of_a_processor_that_can_do_less_matches_here()
    {
        await using var less = await ServiceProcess.StartAsync([], Environment(Switches.Last().Data));
        foreach (var (path, body) in Requests.Where(request => !request.Path.StartsWith(ArchivedAnswers.Path, StringComparison.Ordinal)))
        {
            var archived = await PostAsync(less, path, body);
            var verified = await service.AnswerAsync(ArchivedAnswers.Path,
                ArchivedAnswers.Of(path.Split('?')[0], JsonNode.Parse(body)!, archived.Json));

            Assert.Equal(("match", "proceed"), ((string?)verified["result"]!["outcome"], (string?)verified["decision"]));
        }
    }

    /// <summary>Otherwise the tests above would compare a processor with itself.</summary>
    [Theory]
    [InlineData(NoAvx2, "avx2")]
    [InlineData(NoIntrinsics, "avx")]
    public async Task Build_lacks_what_the_runtime_was_told_not_to_use(string switches, string set)
    {
        var here = (await service.GetAsync("/v1/build")).Json["processor"]!;
        Assert.SkipUnless(Sets(here).Contains(set), "This processor doesn't have it.");
        await using var less = await ServiceProcess.StartAsync([], Environment(switches));
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/build");
        var there = (await Reply.SendAsync(less.Client, request)).Json["processor"]!;

        Assert.Equal((string?)here["architecture"], (string?)there["architecture"]);
        Assert.DoesNotContain(set, Sets(there));
    }

    private static string[] Sets(JsonNode processor) =>
        [.. processor["instructionSets"]!.AsArray().Select(set => (string)set!)];

    private static IEnumerable<(string Name, string Value)> Environment(string switches) =>
        switches.Split(' ').Select(one => one.Split('=', 2)).Select(parts => (parts[0], parts[1]));

    private static async Task<Reply> PostAsync(ServiceProcess service, string path, string body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path)
        {
            Content = new StringContent(body, Encoding.UTF8, CalculationEndpoint.MediaType),
        };
        return await Reply.SendAsync(service.Client, request);
    }

    private static string FirstDifference(Reply found, Reply expected)
    {
        var at = found.Lasting.Zip(expected.Lasting).TakeWhile(pair => pair.First == pair.Second).Count();
        string Around(Reply reply) => reply.Lasting[Math.Max(0, at - 80)..Math.Min(reply.Lasting.Length, at + 20)];
        return $"{Around(found)} is not {Around(expected)}";
    }
}
