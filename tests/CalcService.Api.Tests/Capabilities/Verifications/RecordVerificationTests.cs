using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>An archived answer is what its request gives, or it isn't.</summary>
public sealed class RecordVerificationTests(Service service)
{
    private const string Path = ArchivedAnswers.Path;

    [Theory]
    [InlineData("match", "match", "proceed", null)]
    [InlineData("care", "match", "proceedWithCare", null)]
    [InlineData("differs", "differs", "doNotProceed", "/answer/decision")]
    [InlineData("cannotVerify", "cannotVerify", "undetermined", "/answer/provenance/engine")]
    public async Task Example_has_its_outcome_and_the_decision_that_belongs_to_it(string example, string outcome, string decision,
        string? pointer)
    {
        var answer = await service.AnswerAsync(Path, ArchivedAnswers.Example(example));
        Assert.Equal((outcome, decision, pointer),
            ((string?)answer.At("/result/outcome"), (string?)answer["decision"], (string?)answer.At("/result/pointer")));
        Assert.Equal(outcome == "match", answer.At("/result/reason") is null);
        Assert.Equal("absent", (string?)answer.At("/result/signature"));
    }

    [Fact]
    public async Task Every_calculation_but_this_one_can_be_verified()
    {
        var served = (await ServedContract.ReadAsync(service)).Answering.Select(route => route.Path["/v1/".Length..])
            .Where(operation => operation != "record-verifications");
        Assert.Equal(served.Order(StringComparer.Ordinal), service.Services.GetRequiredService<Recomputation>().Operations);
    }

    /// <summary>Every example of every calculation, in full and in both systems of units, comes back as a match.</summary>
    [Fact]
    public async Task Answer_of_every_example_is_what_its_request_gives()
    {
        foreach (var (path, request, answer) in await ArchiveAsync())
        {
            foreach (var (sent, archived) in new[]
            {
                (request, answer),
                (request, await service.AnswerAsync(path + "?detail=full", request)),
                (request.With("/units", "inch"), await service.AnswerAsync(path, request.With("/units", "inch"))),
            })
            {
                Assert.Equal(("match", null), Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(path, sent, archived))));
            }
        }
    }

    /// <summary>Numbers are told to six digits and times to the minute: as much as the last of them may be off.</summary>
    [Theory]
    [InlineData(0.00001, true)]
    [InlineData(-0.00001, true)]
    [InlineData(0.00002, false)]
    public async Task Number_may_be_off_by_one_unit_of_its_sixth_digit(double relative, bool isMatch)
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);
        const string Volume = "/result/ends/0/basketVolume/value";
        // 93.9598 cm³: one unit of the sixth digit is 0.0001.
        var archived = (double)answer.At(Volume)!;
        Assert.Equal(93.9598, archived, 4);
        var changed = answer.With(Volume, Math.Round(archived + (relative * 10), 4));
        Assert.Equal(isMatch ? "match" : "differs",
            Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, changed))).Outcome);
    }

    [Theory]
    [InlineData(60, "match", "proceedWithCare")]
    [InlineData(-60, "match", "proceedWithCare")]
    [InlineData(61, "differs", "doNotProceed")]
    [InlineData(0, "match", "proceed")]
    public async Task Time_may_be_off_by_a_minute_and_is_said(int seconds, string outcome, string decision)
    {
        var request = TerminationRecords.Whole;
        var answer = await service.AnswerAsync(TerminationRecords.Path, request);
        const string From = "/result/recomputed/loadFrom";
        var changed = answer.With(From,
            DateTimeOffset.Parse((string)answer.At(From)!, CultureInfo.InvariantCulture).AddSeconds(seconds)
            .ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));
        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(TerminationRecords.Path, request, changed));
        Assert.Equal((outcome, decision), (Outcome(verified).Outcome, (string?)verified["decision"]));
    }

    [Theory]
    [InlineData("/provenance/engine", "\"0\"", "/answer/provenance/engine")]
    [InlineData("/provenance/engine", "7", "/answer/provenance/engine")]
    [InlineData("/provenance/rules", "\"1999-01\"", "/answer/provenance/rules")]
    [InlineData("/provenance", "[]", "/answer/provenance/engine")]
    [InlineData("/result", "null", "/answer/result")]
    public async Task Answer_that_can_not_be_computed_again_here_is_not_verified(string pointer, string raw, string at)
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan)).With(pointer, JsonNode.Parse(raw));
        Assert.Equal(("cannotVerify", at), Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer))));
    }

    /// <summary>The sheet is part of the input: only where both digests are others did the profile have another sheet.</summary>
    [Fact]
    public async Task Answer_by_another_sheet_of_the_same_profile_is_not_verified()
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan)).With("/provenance/compound/digest", "sha256:other")
            .With("/provenance/inputDigest", "sha256:other");
        Assert.Equal(("cannotVerify", "/answer/provenance/compound/digest"),
            Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer))));
    }

    [Theory]
    [InlineData("/provenance/compound/digest")]
    [InlineData("/provenance/compound/profile")]
    [InlineData("/provenance/resultDigest")]
    [InlineData("/provenance/recordId")]
    [InlineData("/provenance/inputDigest")]
    [InlineData("/provenance/operation")]
    public async Task Answer_of_another_record_differs(string pointer)
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan)).With(pointer, "sha256:other");
        Assert.Equal(("differs", "/answer" + pointer),
            Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer))));
    }

    [Fact]
    public async Task Request_that_was_changed_after_it_was_archived_differs()
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);
        // A reference changes no number, but the record is another one.
        var changed = Plans.Plan.With("/reference", "JOB-0418");
        Assert.Equal(("differs", "/answer/provenance/recordId"),
            Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, changed, answer))));
    }

    [Fact]
    public async Task Answer_that_lacks_a_member_differs_there()
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan)).Without("/result/totals/mixed");
        Assert.Equal(("differs", "/answer/result/totals/mixed"),
            Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer))));
    }

    /// <summary>
    /// Words of a stop that are not those computed, notes that are gone, an approval that nobody computed: each alone keeps an
    /// archived stop from a plain match.
    /// </summary>
    [Theory]
    [InlineData("/findings/0/message", "\"OK to pour\"", "differs", "doNotProceed")]
    [InlineData("/findings/0/action", "\"Go ahead.\"", "differs", "doNotProceed")]
    [InlineData("/safetyNotes", "[]", "match", "proceedWithCare")]
    [InlineData("/findings/0/approval", "\"the maker\"", "match", "proceedWithCare")]
    [InlineData("/findings/0/source/document", "\"a letter\"", "match", "proceedWithCare")]
    [InlineData("/provenance/signature", "\"e30..AA\"", "match", "proceedWithCare")]
    [InlineData("/provenance/computedAt", "\"approved\"", "match", "proceedWithCare")]
    [InlineData("/provenance/computedAt", "\"2031-01-01T00:00:00Z\"", "match", "proceed")]
    public async Task Forged_stop_is_no_plain_match(string pointer, string raw, string outcome, string decision)
    {
        var request = Plans.Example("stop");
        var answer = await service.AnswerAsync(Plans.Path, request);
        Assert.Equal("stop", (string?)answer.At("/findings/0/severity"));
        var forged = answer.With(pointer, JsonNode.Parse(raw));
        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, request, forged));
        Assert.Equal((outcome, decision), (Outcome(verified).Outcome, (string?)verified["decision"]));
    }

    /// <summary>
    /// Words of a caution in a language that isn't at hand can't be compared. That it is another is a caution, or it would open every word
    /// to a forger.
    /// </summary>
    [Fact]
    public async Task Words_of_another_language_are_unchecked()
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan))
            .With("/provenance/language", "xx").With("/findings/0/message", "OK to pour");
        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer));
        Assert.Equal(("match", "proceedWithCare"), (Outcome(verified).Outcome, (string?)verified["decision"]));
        Assert.Equal("/answer/findings/0/message", (string?)Assert.Single(verified.At("/result/unchecked")!.AsArray()));
        Assert.Equal("/answer/provenance/language", (string?)verified.At("/findings/0/pointer"));
    }

    /// <summary>A stop keeps its words, whatever language or contract the answer claims, and whether they are changed or gone.</summary>
    [Theory]
    [InlineData("/provenance/language", "\"de\"")]
    [InlineData("/provenance/language", "null")]
    [InlineData("/provenance/contract", "\"0.8\"")]
    public async Task Words_of_a_stop_are_checked_in_any_language(string pointer, string raw)
    {
        const string Message = "/findings/0/message";
        var request = Plans.Example("stop");
        var answer = (await service.AnswerAsync(Plans.Path, request)).With(pointer, JsonNode.Parse(raw));
        Assert.Equal("match", Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, request, answer))).Outcome);
        foreach (var forged in new[] { answer.With(Message, "OK to pour"), answer.Without(Message) })
        {
            Assert.Equal(("differs", "/answer" + Message),
                Outcome(await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, request, forged))));
        }
    }

    /// <summary>A number that another machine rounded otherwise has another digest, which then proves nothing.</summary>
    [Fact]
    public async Task Digest_of_a_rounded_result_is_unchecked()
    {
        const string Volume = "/result/ends/0/basketVolume/value";
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);
        var changed = answer.With(Volume, Math.Round((double)answer.At(Volume)! + 0.0001, 4))
            .With("/provenance/resultDigest", "sha256:other");
        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, changed));
        Assert.Equal(("match", "proceed"), (Outcome(verified).Outcome, (string?)verified["decision"]));
        Assert.Equal("/answer/provenance/resultDigest", (string?)Assert.Single(verified.At("/result/unchecked")!.AsArray()));
    }

    /// <summary>What comes back stays in proportion, and a name that can't be shown stands for its object.</summary>
    [Theory]
    [InlineData(20, "n", 20)]
    [InlineData(21, "n", 1)]
    [InlineData(1, "\u0007", 1)]
    public async Task Many_unknown_members_are_named_by_their_object(int count, string name, int named)
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);
        foreach (var i in Enumerable.Range(0, count))
        {
            answer["result"]![$"{name}{i}"] = i;
        }

        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer));
        var listed = verified.At("/result/unchecked")!.AsArray();
        Assert.Equal((named, named == 20 ? "/answer/result/n0" : "/answer/result"), (listed.Count, (string?)listed[0]));
    }

    /// <summary>The archived request is read as strictly as when it was sent; its errors point into it.</summary>
    [Theory]
    [InlineData("/pourAt", "\"yesterday\"", "/request/pourAt")]
    [InlineData("/ends/0/rope/diameter/value", "-1", "/request/ends/0/rope/diameter")]
    [InlineData("/unknown", "1", "/request/unknown")]
    [InlineData("/rules", "\"1999-01\"", "/request/rules")]
    public async Task Archived_request_that_can_not_be_computed_is_refused_where_it_stands(string pointer, string raw, string at)
    {
        var answer = await service.AnswerAsync(Plans.Path, Plans.Plan);
        var reply = await service.PostAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan.With(pointer, JsonNode.Parse(raw)), answer));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Contains(at, ProblemAssert.Pointers(reply.Json));
    }

    [Theory]
    [InlineData("\"operation\":\"pour-plan\"", 422, "/operation")]
    [InlineData("\"operation\":\"record-verifications\"", 422, "/operation")]
    [InlineData("\"answer\":[]", 400, "/answer")]
    [InlineData("\"answer\":{\"a\":1,\"a\":2}", 400, "/answer/a")]
    [InlineData("\"answer\":{\"a\":\"\\ud800\"}", 400, "/answer/a")]
    [InlineData("\"answer\":{\"a\":1e400}", 422, "/answer/a")]
    [InlineData("\"request\":7", 400, "/request")]
    public async Task Verification_that_can_not_be_read_is_refused_where_it_can_not(string member, int status, string at)
    {
        var members = new[] { "\"operation\":\"pour-plans\"", "\"request\":{}",
            "\"answer\":{}" }.Where(one => one.Split(':')[0] != member.Split(':')[0]).Append(member);
        var reply = await service.PostAsync(Path, $"{{{string.Join(',', members)}}}");
        ProblemAssert.IsProblem(reply, status);
        Assert.Contains(at, ProblemAssert.Pointers(reply.Json));
    }

    [Fact]
    public async Task Batch_verifies_line_by_line()
    {
        var body = string.Join('\n',
            new[] { "match", "differs", "cannotVerify" }.Select(name => ArchivedAnswers.Example(name).ToJsonString())) + "\n";
        var reply = await service.PostAsync(Path + "/batch", BatchOutput.Content(Encoding.UTF8.GetBytes(body), encoding: null));
        var batch = BatchOutput.Parse(reply.Status, mode: null, reply.Text);
        Assert.Equal(["match", "differs", "cannotVerify"], batch.Lines.Select(line => (string)line.At("/answer/result/outcome")!));
        Assert.NotNull(batch.Summary);
    }

    [Fact]
    public async Task Answer_of_more_than_a_mebibyte_is_taken()
    {
        var answer = (await service.AnswerAsync(Plans.Path, Plans.Plan)).With("/of-tomorrow", new string('x', 3 << 20));
        var verified = await service.AnswerAsync(Path, ArchivedAnswers.Of(Plans.Path, Plans.Plan, answer));
        Assert.Equal(("match", null), Outcome(verified));
        Assert.Equal("/answer/of-tomorrow", (string?)Assert.Single(verified.At("/result/unchecked")!.AsArray()));
    }

    /// <summary>The examples of all other calculations with what they got.</summary>
    private async Task<IReadOnlyList<(string Path, JsonObject Request, JsonObject Answer)>> ArchiveAsync()
    {
        var archive = new List<(string, JsonObject, JsonObject)>();
        foreach (var route in (await ServedContract.ReadAsync(service)).Answering.Where(route => route.Path != Path))
        {
            foreach (var (_, body) in route.Examples)
            {
                archive.Add((route.Path, body, await service.AnswerAsync(route.Path, body)));
            }
        }

        return archive;
    }

    private static (string? Outcome, string? Pointer) Outcome(JsonObject answer) =>
        ((string?)answer.At("/result/outcome"), (string?)answer.At("/result/pointer"));
}
