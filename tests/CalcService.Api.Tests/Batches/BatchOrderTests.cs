using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Telemetry;
using CalcService.Api.Tests.Fixtures;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Batches;

/// <summary>Lines are in work side by side; what comes out must not show it.</summary>
public sealed class BatchOrderTests(Service service)
{
    /// <summary>Examples of unlike weight, and lines that are refused at once.</summary>
    [Fact]
    public async Task Lines_of_every_batch_come_out_in_order_with_their_own_answers()
    {
        var contract = await ServedContract.ReadAsync(service);
        Assert.NotEmpty(contract.Batches);
        foreach (var route in contract.Answering)
        {
            string[] bodies = [.. route.Examples.Select(example => example.Body.ToJsonString()), "{}", "["];
            var alone = new List<string>();
            foreach (var body in bodies)
            {
                alone.Add(Shown((await service.PostAsync(route.Path, body)).Json));
            }

            var order = Enumerable.Range(0, 3 * bodies.Length).Select(i => i * 7 % bodies.Length).ToArray();
            var input = Encoding.UTF8.GetBytes(string.Concat(order.Select(i => bodies[i] + "\n")));
            var reply = await service.PostAsync(route.Path + "/batch", BatchOutput.Content(input, null));
            var batch = BatchOutput.Parse(reply.Status, null, reply.Text);

            Assert.Equal(order.Select(i => alone[i]), batch.Lines.Select(line => Shown((line["answer"] ?? line["problem"])!.AsObject())));
            batch.AssertSummary(order.Length, order.Count(i => i < bodies.Length - 2), input);
        }
    }

    [Theory]
    [InlineData("gzip", true)]
    [InlineData("br, gzip;q=0.5", true)]
    [InlineData("gzip;q=0", false)]
    [InlineData("identity", false)]
    public async Task Output_is_packed_where_the_client_takes_gzip(string accepts, bool isPacked)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Plans.Path + "/batch")
        {
            Content = BatchOutput.Content(Encoding.UTF8.GetBytes(Plans.Plan.ToJsonString() + "\n{}\n"), null),
        };
        request.Headers.TryAddWithoutValidation("Accept-Encoding", accepts);
        using var response = await service.Client.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(isPacked ? ["gzip"] : [], response.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", response.Headers.Vary);
        await using var body = await response.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);
        using var reader = new StreamReader(isPacked ? new GZipStream(body, CompressionMode.Decompress) : body);
        var batch = BatchOutput.Parse(200, null, await reader.ReadToEndAsync(TestContext.Current.CancellationToken));
        Assert.Equal([200, 422], batch.Lines.Select(line => (int)line["status"]!));
    }

    /// <summary>What would be a defect of the service costs its own line only; so does a line that takes too long.</summary>
    [Theory]
    [InlineData("fails", 500)]
    [InlineData("hangs", 503)]
    public async Task Line_that_can_not_be_answered_leaves_its_neighbours_alone(string line, int status)
    {
        var settings =
            new ServiceSettings(new ConfigurationBuilder().AddInMemoryCollection([new(ServiceSettings.CalculationSeconds.Key, "1")])
            .Build());
        using var drain = new Drain(settings, TimeProvider.System);
        using var lanes = new Lanes(settings);
        await using var services = new ServiceCollection().AddLogging()
            .AddSingleton(new WorkConditions(settings, lanes, new(settings), drain, service.Services.GetRequiredService<Measurements>()))
            .BuildServiceProvider();
        using var output = new MemoryStream();
        using var request = new Activity("request").Start();
        var http = new DefaultHttpContext { RequestServices = services };
        http.Request.ContentType = BatchEndpoint.MediaType;
        http.Request.Body = new MemoryStream(Encoding.UTF8.GetBytes($"good\n{line}\ngood\n"));
        http.Response.Body = output;

        await BatchEndpoint.HandleAsync(http, new Moody(), service.Services.GetRequiredService<Readiness>());

        var batch = BatchOutput.Parse(200, null, Encoding.UTF8.GetString(output.ToArray()));
        Assert.Equal([422, status, 422], batch.Lines.Select(one => (int)one["status"]!));
        ProblemAssert.IsProblem(batch.Lines[1]["problem"]!.AsObject(), status);
        Assert.Equal((3, 0), ((int)batch.Summary!["lines"]!, (int)batch.Summary["answered"]!));
    }

    private static string Shown(JsonObject answerOrProblem)
    {
        (answerOrProblem["provenance"] as JsonObject)?.Remove("computedAt");
        answerOrProblem.Remove("traceId");
        return answerOrProblem.ToJsonString();
    }

    /// <summary>Does what the line says.</summary>
    private sealed class Moody : ICapability
    {
        public string Operation => "moods";

        public Type RequestType => typeof(object);

        public Type AnswerType => typeof(object);

        public Processed Process(ReadOnlySpan<byte> body, bool full, AsOf? asOf, CancellationToken cancellationToken)
        {
            switch (Encoding.UTF8.GetString(body))
            {
                case "fails":
                    throw new InvalidOperationException("A defect.");
                case "hangs":
                    cancellationToken.WaitHandle.WaitOne();
                    cancellationToken.ThrowIfCancellationRequested();
                    break;
            }

            return new(422, ProblemKinds.NotComputable.With(), null);
        }
    }
}
