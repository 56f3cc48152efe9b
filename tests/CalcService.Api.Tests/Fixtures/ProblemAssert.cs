using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>What every refusal has to look like (RFC 9457 and the members of our own).</summary>
public static class ProblemAssert
{
    private static readonly string[] Insides = ["Exception", "System.", "CalcService.", "Microsoft.", "   at ", "Nullable", "`1"];

    public static void IsProblem(Reply reply, int status)
    {
        Assert.True(reply.Status == status, $"{reply.Status} instead of {status}: {reply.Text}");
        Assert.Equal("application/problem+json", reply.MediaType);
        Assert.True(reply.Headers.CacheControl!.NoStore);
        IsProblem(reply.Json, status);
    }

    public static void IsProblem(JsonObject problem, int status)
    {
        Assert.Equal(["type", "title", "status", "detail", "code", "traceId", "errors"], problem.Select(member => member.Key));
        Assert.Equal("/docs/problems#" + (string)problem["code"]!, (string)problem["type"]!);
        Assert.Equal(status, (int)problem["status"]!);
        Assert.NotEmpty((string)problem["title"]!);
        Assert.NotEmpty((string)problem["detail"]!);
        Assert.Matches("^[0-9a-f]{32}$", (string)problem["traceId"]!);
        foreach (var error in problem["errors"]!.AsArray())
        {
            Assert.Equal(["pointer", "code", "detail"], error!.AsObject().Select(member => member.Key));
            Assert.Matches("^(/[^/]*)*$", (string)error!["pointer"]!);
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", (string)error["code"]!);
            Assert.NotEmpty((string)error["detail"]!);
        }

        var text = problem.ToJsonString();
        Assert.All(Insides, inside => Assert.DoesNotContain(inside, text, StringComparison.Ordinal));
    }

    /// <summary>Pointers of the errors, each once.</summary>
    public static IReadOnlyList<string> Pointers(JsonObject problem) =>
        [.. problem["errors"]!.AsArray().Select(error => (string)error!["pointer"]!).Distinct()];

    /// <summary>"pointer code" of each error.</summary>
    public static IReadOnlyList<string> Errors(JsonObject problem) =>
        [.. problem["errors"]!.AsArray().Select(error => $"{error!["pointer"]} {error["code"]}")];
}
