using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>What is only read refuses as strictly as calculations do, and gives the same to HEAD and to odd tags.</summary>
public sealed class BadReadTests(Service service, DocumentedRoutes routes) : IClassFixture<DocumentedRoutes>
{
    public static TheoryData<string> Names => [.. BadRead.All.Keys];

    /// <summary>Values of If-None-Match that name nothing that anybody has.</summary>
    public static TheoryData<string> OddTags =>
        ["", "x", "\"", "\"\"", "\"x", "W/", "W/x", "W/\"x\"", "\"a\" \"b\"", ",,,", "\"*\"", new string('"', 2000),
        $"\"{new string('x', 20_000)}\""];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task BadRead_of_every_address_is_refused_and_the_next_request_served(string name)
    {
        var row = BadRead.All[name];
        using var client = service.CreateClient();
        foreach (var path in routes.Reads)
        {
            using var request = row.Make(path);
            var reply = await Reply.SendAsync(client, request);

            ProblemAssert.IsProblem(reply, row.Status);
            if (row.Status == 405)
            {
                Assert.Equal(["GET", "HEAD"], reply.ContentHeaders.Allow);
            }

            using var good = new HttpRequestMessage(HttpMethod.Get, path);
            Assert.Equal(200, (await Reply.SendAsync(client, good)).Status);
        }
    }

    /// <summary>RFC 9110, section 9.3.2: what GET would give, without the body.</summary>
    [Fact]
    public async Task Head_of_every_address_gives_the_headers_of_get_and_no_body()
    {
        foreach (var path in routes.Reads)
        {
            var got = await service.GetAsync(path);
            using var request = new HttpRequestMessage(HttpMethod.Head, path);
            var head = await Reply.SendAsync(service.Client, request);

            Assert.Equal(200, head.Status);
            Assert.Empty(head.Text);
            Assert.Equal(got.ContentHeaders.ContentType, head.ContentHeaders.ContentType);
            // What is written in chunks says no length.
            Assert.True(Length(got) is not { } length || Length(head) == length, path);
            Assert.Equal(got.Headers.ETag, head.Headers.ETag);
        }
    }

    [Fact]
    public async Task Head_that_is_refused_has_the_status_of_get_and_no_body()
    {
        foreach (var (path, status) in new[] { ("/v1/units?x=1", 400), ("/v1/nothing", 404), ("/v1/rules/no-such-code", 404),
            (Plans.Path, 405), ("/docs/problems?x", 400), ("/docs/findings/no-such-code", 404) })
        {
            using var request = new HttpRequestMessage(HttpMethod.Head, path);
            var head = await Reply.SendAsync(service.Client, request);

            Assert.Equal(status, head.Status);
            Assert.Equal("application/problem+json", head.MediaType);
            Assert.Empty(head.Text);
        }
    }

    [Theory]
    [MemberData(nameof(OddTags))]
    public async Task Tag_that_is_none_gets_the_whole_content(string tag)
    {
        foreach (var path in routes.Reads)
        {
            var reply = await service.GetAsync(path, ("If-None-Match", tag));

            Assert.Equal(200, reply.Status);
            Assert.NotEmpty(reply.Text);
        }
    }

    [Theory]
    [InlineData("LOT-EXPIRED")]
    [InlineData("lot-expired%20")]
    [InlineData("lot-expired%2F")]
    [InlineData("lot-expired%5C")]
    [InlineData("lot-expired;v=1")]
    [InlineData("%2E%2E%2Funits")]
    [InlineData("%E2%80%AElot-expired")]
    [InlineData("%EF%BC%8D")]
    [InlineData("%3Cscript%3Ealert(1)%3C%2Fscript%3E")]
    [InlineData("%0D%0ASet-Cookie:%20a=b")]
    [InlineData("%FF%FE")]
    [InlineData("%C0%AF")]
    [InlineData("%ED%A0%80")]
    [InlineData("%")]
    [InlineData("%zz")]
    [InlineData("%u0041")]
    [InlineData("{code}")]
    [InlineData("'%20OR%201=1--")]
    [InlineData("*")]
    [InlineData("lot-expired/limits")]
    public async Task Code_that_is_none_is_a_404_that_does_not_repeat_it(string code) => await AssertNoneAsync(code);

    [Fact]
    public async Task Code_of_7_000_characters_is_a_404() => await AssertNoneAsync(new string('x', 7_000));

    private async Task AssertNoneAsync(string code)
    {
        await AssertNoneAsync("/v1/rules/", code);
        await AssertNoneAsync("/docs/findings/", code);
    }

    private async Task AssertNoneAsync(string below, string code)
    {
        // HttpClient would tidy the address up.
        using var connection = new RawConnection(service.Address);
        await connection.SendAsync($"GET {below}{code} HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        var reply = await connection.ReadToEndAsync();

        Assert.Equal(404, reply.Status);
        Assert.Contains("Content-Type: application/problem+json", reply.Head, StringComparison.Ordinal);
        ProblemAssert.IsProblem(JsonNode.Parse(reply.Text)!.AsObject(), 404);
        Assert.DoesNotContain("Set-Cookie", reply.Head, StringComparison.Ordinal);
        Assert.DoesNotContain("script", reply.Text, StringComparison.Ordinal);
    }

    private static string? Length(Reply reply) => reply.ContentHeaders.TryGetValues("Content-Length", out var length) ? length.Single()
        : null;
}
