using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

public sealed class HostingTests(Service service)
{
    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task Probe_of_a_started_service_answers_200(string path, string status)
    {
        var reply = await service.GetAsync(path);

        Assert.Equal(200, reply.Status);
        Assert.Equal(status, (string?)reply.Json["status"]);
    }

    [Fact]
    public async Task SelfTest_on_this_machine_passes_with_every_answer_inside_its_tolerance()
    {
        var report = (await service.GetAsync("/v1/self-test")).Json;

        Assert.True((bool)report["passed"]!);
        var answers = report["answers"]!.AsArray();
        Assert.NotEmpty(answers);
        Assert.All(answers, answer =>
        {
            Assert.True(Math.Abs((double)answer!["actual"]! - (double)answer["expected"]!) <= (double)answer["tolerance"]!,
                (string)answer["id"]!);
            Assert.NotEmpty((string)answer["source"]!["document"]!);
        });
    }

    [Theory]
    [InlineData("/v1/units", 200)]
    [InlineData("/nothing", 404)]
    [InlineData("/health/live", 200)]
    [InlineData("/docs/problems", 200)]
    [InlineData("/docs/findings/lot-expired", 200)]
    [InlineData("/docs/findings/no-such-code", 404)]
    public async Task Response_of_any_kind_carries_the_security_headers(string path, int status)
    {
        var reply = await service.GetAsync(path);

        Assert.Equal(status, reply.Status);
        Assert.Equal(["nosniff"], reply.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["DENY"], reply.Headers.GetValues("X-Frame-Options"));
        Assert.Equal(["no-referrer"], reply.Headers.GetValues("Referrer-Policy"));
        Assert.Contains("frame-ancestors 'none'", Assert.Single(reply.Headers.GetValues("Content-Security-Policy")),
            StringComparison.Ordinal);
        Assert.False(reply.Headers.Contains("Server"));
    }

    [Fact]
    public async Task Traceparent_of_the_caller_is_the_Trace_Id_of_the_response_and_of_the_problem()
    {
        // W3C Trace Context, the example of its section 3.2.3.
        const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
        var reply = await service.GetAsync("/nothing", ("traceparent", $"00-{Trace}-00f067aa0ba902b7-01"));

        Assert.Equal([Trace], reply.Headers.GetValues("Trace-Id"));
        Assert.Equal(Trace, (string?)reply.Json["traceId"]);
    }

    [Fact]
    public async Task Request_from_another_origin_gets_no_CORS_headers()
    {
        using var preflight = new HttpRequestMessage(HttpMethod.Options, Plans.Path);
        preflight.Headers.Add("Origin", "https://elsewhere.example");
        preflight.Headers.Add("Access-Control-Request-Method", "POST");
        var asked = await Reply.SendAsync(service.Client, preflight);
        var got = await service.GetAsync("/v1/units", ("Origin", "https://elsewhere.example"));

        Assert.NotEqual(2, asked.Status / 100);
        Assert.All([asked, got],
            reply => Assert.DoesNotContain(reply.Headers,
            header => header.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public async Task Address_that_is_none_is_a_404_problem()
    {
        ProblemAssert.IsProblem(await service.GetAsync("/v1/nothing"), 404);
        ProblemAssert.IsProblem(await service.GetAsync("/v1/rules/no-such-code"), 404);
    }

    [Fact]
    public async Task Method_that_an_address_does_not_take_is_405_with_Allow()
    {
        foreach (var path in await PathsAsync())
        {
            using var request = new HttpRequestMessage(HttpMethod.Delete, path);
            var reply = await Reply.SendAsync(service.Client, request);

            ProblemAssert.IsProblem(reply, 405);
            Assert.NotEmpty(reply.ContentHeaders.Allow);
        }
    }

    [Fact]
    public async Task Documentation_is_served_from_here_and_fetches_nothing_from_outside()
    {
        var page = await service.GetAsync("/docs/index.html");
        var problems = await service.GetAsync("/docs/problems");
        var finding = await service.GetAsync("/docs/findings/lot-expired");

        Assert.Equal("text/html", page.MediaType);
        Assert.All([page, problems, finding], reply =>
        {
            Assert.Equal(200, reply.Status);
            Assert.DoesNotMatch("(src|href)=[\"'](https?:)?//", reply.Text);
        });
        var sources = System.Text.RegularExpressions.Regex.Matches(page.Text, "(?:src|href)=\"([^\"]+)\"")
            .Select(match => match.Groups[1].Value).ToArray();
        Assert.NotEmpty(sources);
        foreach (var source in sources)
        {
            Assert.Equal(200, (await service.GetAsync(new Uri(new Uri(service.Address, "/docs/index.html"), source).PathAndQuery)).Status);
        }
    }

    [Fact]
    public async Task ProblemPage_has_a_heading_for_every_kind_of_problem()
    {
        var page = (await service.GetAsync("/docs/problems")).Text;

        Assert.All(Api.Problems.ProblemKinds.All, kind => Assert.Contains($"<h2 id=\"{kind.Code}\">", page, StringComparison.Ordinal));
    }

    private async Task<IEnumerable<string>> PathsAsync() =>
        (await ServedContract.ReadAsync(service)).Document["paths"]!.AsObject().Select(path => path.Key)
        .Where(path => !path.Contains('{', StringComparison.Ordinal));
}
