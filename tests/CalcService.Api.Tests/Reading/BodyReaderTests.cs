using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Reading;

/// <summary>Everything that is wrong is said at once, with its place.</summary>
public sealed class BodyReaderTests(Service service)
{
    [Fact]
    public async Task Body_with_five_unlike_errors_reports_all_five_where_they_stand()
    {
        var body = Plans.Plan
            .With("/ends/0/rope/colour", "red")
            .With("/conditions/airTemperature", "cold")
            .Without("/ends/0/socket/basket/length")
            .With("/pourAt", "2026-02-30T08:30:00Z")
            .With("/stock/0/count", 1.5);

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 400);
        Assert.Equal(
            ["/conditions/airTemperature type", "/ends/0/rope/colour unknown-member", "/ends/0/socket/basket/length required",
            "/pourAt date-time", "/stock/0/count not-integer"],
            ProblemAssert.Errors(reply.Json).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Body_without_an_unreadable_error_is_422()
    {
        var body = Plans.Plan.Without("/ends/0/socket/basket/length").With("/pourAt", "2026-02-30T08:30:00Z").With("/stock/0/count", 1.5)
            .With("/objective", "cheap");

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(
            ["/ends/0/socket/basket/length required", "/objective enum", "/pourAt date-time", "/stock/0/count not-integer"],
            ProblemAssert.Errors(reply.Json).Order(StringComparer.Ordinal));
    }

    /// <summary>What could be read is held against its range and against the rest, whatever else is wrong.</summary>
    [Fact]
    public async Task Body_with_an_unreadable_member_reports_ranges_and_contradictions_too()
    {
        var body = Plans.Plan
            .With("/colour", "red")
            .With("/ends/0/rope/diameter/value", 900)
            .With("/ends/0/socket/basket/largeEndDiameter/value", 20)
            .With("/stock/0/count", -1);

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 400);
        Assert.Equal(
            ["/colour unknown-member", "/ends/0/rope/diameter range", "/ends/0/socket/basket/largeEndDiameter contradiction",
                "/ends/0/socket/basket/smallEndDiameter contradiction", "/stock/0/count range"],
            ProblemAssert.Errors(reply.Json).Order(StringComparer.Ordinal));
    }

    /// <summary>Of an object that wasn't read whole nobody knows whether it contradicts itself.</summary>
    [Fact]
    public async Task Object_with_an_unreadable_member_is_not_held_against_itself()
    {
        var body = Plans.Plan.With("/compound", new JsonObject { ["profil"] = "demonstration" });

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 400);
        Assert.Equal(["/compound/profil unknown-member"], ProblemAssert.Errors(reply.Json));
    }

    [Fact]
    public async Task Body_cut_off_reports_what_was_wrong_before_the_cut()
    {
        var text = Plans.Plan.With("/pourAt", "tomorrow").ToJsonString();

        var reply = await service.PostAsync(Plans.Path, text[..^1]);

        ProblemAssert.IsProblem(reply, 400);
        Assert.Contains("/pourAt date-time", ProblemAssert.Errors(reply.Json));
        Assert.Contains(" syntax", ProblemAssert.Errors(reply.Json));
        // What comes after the cut isn't known to be missing.
        Assert.DoesNotContain(ProblemAssert.Errors(reply.Json), error => error.EndsWith("required", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(99, false, 422, 99)]
    [InlineData(100, false, 422, 100)]
    [InlineData(101, false, 422, 101)]
    [InlineData(500, false, 422, 101)]
    [InlineData(99, true, 400, 100)]
    [InlineData(100, true, 400, 101)]
    [InlineData(500, true, 400, 101)]
    public async Task Body_with_many_errors_says_when_there_are_more_than_it_lists(int errors, bool unknownMemberAtTheEnd, int status,
        int listed)
    {
        var lots =
            new JsonArray([.. Enumerable.Range(0, errors)
            .Select(_ => (JsonNode)new JsonObject { ["lot"] = "L", ["kit"] = "small", ["count"] = 1.5 })]);
        var body = Plans.Plan.With("/stock", lots);
        body = unknownMemberAtTheEnd ? body.With("/zzz", 1) : body;

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, status);
        var found = ProblemAssert.Errors(reply.Json);
        Assert.Equal(listed, found.Count);
        Assert.Equal(errors + (unknownMemberAtTheEnd ? 1 : 0) > 100, found.Contains(" too-many-errors"));
    }

    [Fact]
    public async Task Body_with_200_unknown_members_says_that_there_are_more_than_it_lists()
    {
        var body = Plans.Plan;
        for (var i = 0; i < 200; i++)
        {
            body[$"x{i}"] = i;
        }

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 400);
        Assert.Equal(101, ProblemAssert.Errors(reply.Json).Count);
        Assert.Contains(" too-many-errors", ProblemAssert.Errors(reply.Json));
    }

    [Fact]
    public async Task Body_with_null_for_every_optional_member_is_the_same_question_as_without_them()
    {
        var bare = new JsonObject
        {
            ["pourAt"] = Plans.Plan["pourAt"]!.DeepClone(),
            ["compound"] = Plans.Plan["compound"]!.DeepClone(),
            ["ends"] = Plans.Plan["ends"]!.DeepClone(),
        };
        var nulls = bare.With("/conditions", null).With("/stock", null).With("/crew", null).With("/allowance", null)
            .With("/objective", null)
            .With("/units", null).With("/rules", null).With("/reference", null).With("/compound/sheet", null)
            .With("/ends/0/rope/certificate", null);

        var (without, with) = (await service.AnswerAsync(Plans.Path, bare), await service.AnswerAsync(Plans.Path, nulls));

        Assert.Equal(Plans.Provenance(without, "recordId"), Plans.Provenance(with, "recordId"));
        Assert.Equal(Plans.Provenance(without, "resultDigest"), Plans.Provenance(with, "resultDigest"));
    }

    [Theory]
    [InlineData("6")]
    [InlineData("6.0")]
    [InlineData("6e0")]
    [InlineData("0.6E+1")]
    [InlineData("600e-2")]
    public async Task Integer_written_in_any_way_is_the_same_number(string token)
    {
        var reply = await service.PostAsync(Plans.Path, Plans.Plan.WithRaw("/ends/0/quantity", token));

        Assert.Equal(200, reply.Status);
        Assert.Equal(Plans.Provenance(await service.AnswerAsync(Plans.Path, Plans.Plan), "recordId"),
            Plans.Provenance(reply.Json, "recordId"));
    }

    [Fact]
    public async Task Name_with_escapes_is_the_same_name()
    {
        var reply = await service.PostAsync(Plans.Path,
            Plans.Plan.ToJsonString().Replace("\"pourAt\"", "\"p\\u006furAt\"", StringComparison.Ordinal));

        Assert.Equal(200, reply.Status);
        Assert.Equal(Plans.Provenance(await service.AnswerAsync(Plans.Path, Plans.Plan), "recordId"),
            Plans.Provenance(reply.Json, "recordId"));
    }

    [Fact]
    public async Task Text_of_a_client_comes_back_escaped_in_problems()
    {
        var reply = await service.PostAsync(Plans.Path,
            Plans.Plan.With("/objective", "<b>\u202E\n\u0007\"x").With("/\u0007\u2066member", 1));

        ProblemAssert.IsProblem(reply, 400);
        Assert.All(reply.Json.Walk().Select(found => found.Value).OfType<JsonValue>()
            .Where(value => value.GetValueKind() == System.Text.Json.JsonValueKind.String), value =>
            Assert.All((string)value!, c => Assert.False(char.IsControl(c) || c is '\u202E' or '\u2066')));
    }
}
