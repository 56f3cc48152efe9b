using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Problems;
using CalcService.Api.Telemetry;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Telemetry;

public sealed class MeasurementsTests
{
    /// <summary>W3C Trace Context, the example of its section 3.2.3.</summary>
    private const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
    private const string Parent = $"00-{Trace}-00f067aa0ba902b7-01";

    [Fact]
    public async Task Answer_is_measured_by_operation_and_decision()
    {
        await using var service = new Service();
        using var collected = new Collected(service);
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);

        var measured = Assert.Single(collected.Measurements);
        Assert.Equal(Measurements.Duration, measured.Instrument);
        Assert.InRange(measured.Value, double.Epsilon, double.MaxValue);
        Assert.Equal("pour-plans", measured.Tags[Measurements.OperationTag]);
        Assert.Equal((string?)answer["decision"], measured.Tags[Measurements.DecisionTag]);
        Assert.DoesNotContain(Measurements.ErrorTag, measured.Tags);
    }

    [Fact]
    public async Task Refusal_is_measured_by_operation_and_problem()
    {
        await using var service = new Service();
        using var collected = new Collected(service);
        await service.PostAsync(Plans.Path, "{}");

        var measured = Assert.Single(collected.Measurements);
        Assert.Equal(ProblemKinds.NotComputable.Code, measured.Tags[Measurements.ErrorTag]);
        Assert.DoesNotContain(Measurements.DecisionTag, measured.Tags);
    }

    [Fact]
    public async Task Lines_of_a_batch_are_counted_by_status_and_measured_one_by_one()
    {
        await using var service = new Service();
        using var collected = new Collected(service);
        var line = Plans.Plan.ToJsonString();
        await service.PostAsync(Plans.Path + "/batch",
            new StringContent($"{line}\nno JSON\n\n{line}\n", Encoding.UTF8, "application/x-ndjson"));

        var lines = collected.Measurements.Where(measured => measured.Instrument == Measurements.Lines).ToArray();
        Assert.All(lines, counted => Assert.Equal("pour-plans", counted.Tags[Measurements.OperationTag]));
        Assert.Equal([200, 400, 200], lines.Select(counted => counted.Tags[Measurements.StatusTag]));
        Assert.Equal(3, collected.Measurements.Count(measured => measured.Instrument == Measurements.Duration));
    }

    [Fact]
    public async Task Calculation_is_an_activity_in_the_trace_of_the_caller_and_a_line_is_none()
    {
        await using var service = new Service();
        using var collected = new Collected(service);
        var line = Plans.Plan.ToJsonString();
        var reply = await SendAsync(service, Plans.Path, line, "application/json");
        await SendAsync(service, Plans.Path + "/batch", line + "\n", "application/x-ndjson");

        // Listeners hear other services of this process too; the trace is this test's own.
        var activity = Assert.Single(collected.Activities, activity => activity.TraceId.ToHexString() == Trace);
        Assert.Equal("calculate pour-plans", activity.OperationName);
        Assert.Equal(reply.Decision, activity.GetTagItem(Measurements.DecisionTag));
        Assert.Equal([Trace], reply.Headers.GetValues("Trace-Id"));
        Assert.DoesNotContain(Trace, reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_is_the_same_whether_somebody_listens_or_not()
    {
        await using var service = new Service();
        var unheard = Digest(await service.AnswerAsync(Plans.Path, Plans.Plan));
        using var collected = new Collected(service);

        Assert.Equal(unheard, Digest(await service.AnswerAsync(Plans.Path, Plans.Plan)));
        Assert.NotEmpty(collected.Measurements);
    }

    private static string Digest(JsonObject answer) => Plans.Provenance(answer, "resultDigest");

    private static async Task<Reply> SendAsync(Service service, string path, string body, string type)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, type) };
        request.Headers.Add("traceparent", Parent);
        return await Reply.SendAsync(service.Client, request);
    }
}
