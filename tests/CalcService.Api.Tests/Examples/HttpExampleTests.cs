using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Audits;
using CalcService.Api.Capabilities.Curing;
using CalcService.Api.Capabilities.Inspection;
using CalcService.Api.Capabilities.Matching;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Capabilities.Proof;
using CalcService.Api.Capabilities.Reuse;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Examples;

/// <summary>What a stranger sends first has to do what it says.</summary>
public sealed class HttpExampleTests(Service service)
{
    public static TheoryData<string, string> Titles
    {
        get
        {
            var titles = new TheoryData<string, string>();
            foreach (var example in HttpExample.All)
            {
                titles.Add(example.File, example.Title);
            }

            return titles;
        }
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public async Task HttpExample_gives_what_it_says(string file, string title)
    {
        var example = HttpExample.All.Single(known => known.File == file && known.Title == title);
        using var request = new HttpRequestMessage(new HttpMethod(example.Method), example.Path);
        if (example.Body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(example.Body));
            request.Content.Headers.TryAddWithoutValidation("Content-Type", example.ContentType);
        }

        var reply = await Reply.SendAsync(service.Client, request);

        Assert.True(reply.Status == example.Status, reply.Text);
        if (example.Word == "summary")
        {
            Assert.NotNull(BatchOutput.Parse(reply.Status, mode: null, reply.Text).Summary);
        }
        else if (example.Word is not null)
        {
            Assert.Equal(example.Word, (string?)reply.Json[reply.Status == 200 ? "decision" : "code"]);
        }
    }

    [Fact]
    public void HttpExamples_of_the_pour_plan_are_those_of_the_documentation() => AreDocumented("pour-plans.http", PourPlanExamples.All);

    [Fact]
    public void HttpExamples_of_the_match_are_those_of_the_documentation() => AreDocumented("termination-matches.http", TerminationMatchExamples.All);

    [Fact]
    public void HttpExamples_of_the_used_socket_are_those_of_the_documentation() => AreDocumented("reuse-assessments.http", ReuseAssessmentExamples.All);

    [Fact]
    public void HttpExamples_of_the_inspection_are_those_of_the_documentation() => AreDocumented("service-inspections.http", ServiceInspectionExamples.All);

    [Fact]
    public void HttpExamples_of_the_proof_load_are_those_of_the_documentation() => AreDocumented("proof-load-evaluations.http", ProofLoadEvaluationExamples.All);

    [Fact]
    public void HttpExamples_of_the_record_are_those_of_the_documentation() => AreDocumented("record-audits.http", RecordAuditExamples.All);

    [Fact]
    public void HttpExamples_of_the_verification_are_those_of_the_documentation() => AreDocumented("record-verifications.http", RecordVerificationExamples.All);

    private static void AreDocumented(string file, IReadOnlyList<RequestExample> all) => Assert.All(all, documented =>
    {
        var example = HttpExample.All.Single(known => known.File == file && known.Name == documented.Name);
        Assert.Equal(documented.Summary, example.Title);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(documented.Body), JsonNode.Parse(example.Body!)), documented.Name);
    });

    [Fact]
    public void HttpExamples_of_the_cure_schedule_are_those_of_the_documentation() => Assert.All(CureScheduleExamples.All, documented =>
    {
        var example = HttpExample.All.Single(known => known.File == "cure-schedules.http" && known.Name == documented.Name);
        Assert.Equal(documented.Summary, example.Title);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(documented.Body), JsonNode.Parse(example.Body!)), documented.Name);
    });

    [Fact]
    public async Task HttpExamples_of_every_calculation_have_success_caution_and_refusals()
    {
        foreach (var route in (await ServedContract.ReadAsync(service)).Answering)
        {
            var words = HttpExample.All.Where(example => example.Path.Split('?')[0] == route.Path).Select(example => $"{example.Status} {example.Word}").ToArray();

            Assert.Superset(
                new HashSet<string> { "200 proceedWithCare", "200 doNotProceed", "200 undetermined", "422 not-computable", "400 unreadable" }, words.ToHashSet());
        }
    }

    [Fact]
    public async Task HttpExamples_show_every_address()
    {
        var shown = HttpExample.All.Select(example => example.Path.Split('?')[0]).ToArray();
        var paths = (await ServedContract.ReadAsync(service)).Document["paths"]!.AsObject().Select(path => path.Key);

        Assert.All(paths, path => Assert.Contains(shown, address =>
            address == path || (path.EndsWith("/{code}", StringComparison.Ordinal) && address.StartsWith(path[..^"{code}".Length], StringComparison.Ordinal))));
    }
}
