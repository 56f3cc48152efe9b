using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Matching;

/// <summary>What a match says over HTTP.</summary>
public sealed class TerminationMatchTests(Service service)
{
    /// <summary>The cone of an independent collocation (SciPy), to the digits that it prints.</summary>
    [Fact]
    public async Task Cone_over_http_has_the_numbers_of_an_independent_collocation()
    {
        var cone = (await service.AnswerAsync(Matches.Path, Matches.Checked)).At("/result/loadTransfer/cases/0")!;

        Assert.Equal(40.955, Value(cone, "/shares/lower"), .0005);
        Assert.Equal(32.322, Value(cone, "/shares/middle"), .0005);
        Assert.Equal(26.723, Value(cone, "/shares/upper"), .0005);
        Assert.Equal(2.41958, Value(cone, "/seatingAtSmallEnd"), .00001);
        Assert.Equal(2.05640, Value(cone, "/seatingAtMouth"), .00001);
        Assert.Equal(156.045, Value(cone, "/profile/0/pressure"), .001);
        // 105047.7 N, answered with six digits.
        Assert.Equal(105.048, Value(cone, "/profile/6/forceLeft"), 1e-9);
        Assert.Equal(50, Value(cone, "/profile/6/fromSmallEnd"), 1e-9);
        Assert.Equal(100, Value(cone, "/contactTo"), 1e-9);
    }

    [Fact]
    public async Task Match_of_the_example_has_the_loads_worked_out_by_hand()
    {
        var loads = (await service.AnswerAsync(Matches.Path, Matches.Match)).At("/result/loads")!;
        // 252 kN at a design factor of 5; twice the rated load for a sling (DOE-STD-1090-96; NAVEDTRA 14080).
        Assert.Equal(50.4, Value(loads, "/workingLoadLimit"), 1e-9);
        Assert.Equal(45 / 50.4 * 100, Value(loads, "/utilisation"), 1e-4);
        Assert.Equal(90, Value(loads, "/proofLoad"), 1e-9);
    }

    [Theory]
    [InlineData("/socket/breakingForce/value", "252", "doNotProceed", "socket-weaker-than-rope")]
    [InlineData("/socket/breakingForce", "null", "undetermined", "socket-strength-unknown")]
    [InlineData("/duty", "null", "undetermined", "duty-missing")]
    [InlineData("/duty/use", "\"unknown\"", "undetermined", "duty-missing")]
    [InlineData("/duty/load/value", "51", "doNotProceed", "load-above-working-limit")]
    [InlineData("/service", "null", "undetermined", "service-temperature-missing")]
    [InlineData("/service/highest/value", "86", "doNotProceed", "service-outside-sheet")]
    [InlineData("/service/chemicals", """["Acetone"]""", "undetermined", "chemical-not-on-sheet")]
    [InlineData("/preparation/cleaner", "\"flux\"", "doNotProceed", "cleaner-forbidden")]
    [InlineData("/preparation/plasticLeftIn", "\"yes\"", "doNotProceed", "left-in-broom")]
    [InlineData("/rope/diameter/value", "23", "doNotProceed", "rope-does-not-enter")]
    [InlineData("/socket/standard", "null", "proceedWithCare", "socket-standard-missing")]
    public async Task Match_with_one_thing_changed_decides_by_it(string pointer, string raw, string decision, string code)
    {
        var answer = await service.AnswerAsync(Matches.Path, Matches.Match.With(pointer, JsonNode.Parse(raw)));
        Assert.Contains(code, Plans.Codes(answer));
        Assert.Equal(decision, (string?)answer["decision"]);
    }

    /// <summary>29 CFR 1926.1414(e)(2): a rotation resistant hoist rope with 3.5 never passes on what nobody said.</summary>
    [Theory]
    [InlineData("{}", "undetermined")]
    [InlineData("""{"rotationResistance":"typeI","makersApproval":"no"}""", "doNotProceed")]
    [InlineData("""{"rotationResistance":"typeI","makersApproval":"yes"}""", "proceedWithCare")]
    [InlineData("""{"rotationResistance":"typeII","dutyCycle":"yes"}""", "doNotProceed")]
    [InlineData("""{"rotationResistance":"typeIII","dutyCycle":"no"}""", "undetermined")]
    public async Task Rotation_resistant_hoist_rope_needs_more_than_a_factor_of_three_and_a_half(string facts, string decision)
    {
        var duty = JsonNode.Parse(facts)!.AsObject();
        duty["use"] = "hoistRope";
        duty["load"] = NodeEdits.Quantity(45, "kN");
        duty["designFactor"] = NodeEdits.Quantity(3.5, "1");
        duty["typeTested"] = "yes";
        var answer = await service.AnswerAsync(Matches.Path, Matches.Match.With("/rope/function", "rotationResistant").With("/duty", duty));
        Assert.Equal(decision, (string?)answer["decision"]);
    }

    /// <summary>Half is half in pounds as in kilonewtons.</summary>
    [Theory]
    [InlineData(40_000, 20_000, "lbf", false)]
    [InlineData(40_100, 20_050, "lbf", false)]
    [InlineData(40_000, 20_010, "lbf", true)]
    public async Task Proof_load_of_half_the_breaking_force_is_not_above_it(double breaking, double proof, string unit, bool isAbove)
    {
        var match = Matches.Match.With("/rope/certificate/breakingForce", NodeEdits.Quantity(breaking, unit))
            .With("/duty/proofLoad", NodeEdits.Quantity(proof, unit))
            .With("/duty/load", NodeEdits.Quantity(5, "kN"));
        Assert.Equal(isAbove, Plans.Codes(await service.AnswerAsync(Matches.Path, match)).Contains("proof-above-half-breaking"));
    }

    [Fact]
    public async Task Chemical_is_looked_up_on_the_sheet_that_came_with_the_request()
    {
        var answer = await service.AnswerAsync(Matches.Path, Matches.Checked.With("/service/chemicals", new JsonArray("Diesel")));
        var found = Plans.Find(answer, "chemical-attacks");
        Assert.Equal("/service/chemicals/0", (string?)found["pointer"]);
        Assert.Equal("stop", (string?)found["severity"]);
    }

    [Fact]
    public async Task Number_that_means_nothing_is_null()
    {
        var answer = await service.AnswerAsync(Matches.Path, Matches.Match
            .With("/rope", JsonNode.Parse("""{ "diameter": { "value": 20, "unit": "mm" }, "construction": "locked coil" }""")).Without("/socket/outerAtMouth"));
        Assert.Null(answer.At("/result/loadTransfer"));
        Assert.Null(answer.At("/result/strengthRatio"));
        Assert.Null(answer.At("/result/loads/workingLoadLimit"));
        Assert.Equal("unknown", (string?)answer.At("/result/core"));

        var wall = await service.AnswerAsync(Matches.Path, Matches.Match.Without("/socket/outerAtMouth"));
        Assert.All(wall.At("/result/loadTransfer/cases")!.AsArray(), one => Assert.Null(one!["hoopStress"]));
    }

    [Theory]
    [MemberData(nameof(Matches.Names), MemberType = typeof(Matches))]
    public async Task Canonical_request_gives_the_same_record(string example)
    {
        var full = await service.AnswerAsync(Matches.Path + "?detail=full", Matches.Example(example));
        Assert.NotEmpty(full["trace"]!.AsArray());
        var again = await service.AnswerAsync(Matches.Path, full["input"]!.AsObject());
        Assert.Equal(Plans.Provenance(full, "recordId"), Plans.Provenance(again, "recordId"));
        Assert.Equal(Plans.Provenance(full, "resultDigest"), Plans.Provenance(again, "resultDigest"));
    }

    [Fact]
    public async Task Units_of_the_answer_change_no_digest_and_no_verdict()
    {
        var (metric, inch) = (await service.AnswerAsync(Matches.Path, Matches.Match),
            await service.AnswerAsync(Matches.Path, Matches.Match.With("/units", "inch")));
        Assert.Equal(Plans.Provenance(metric, "recordId"), Plans.Provenance(inch, "recordId"));
        Assert.Equal(Plans.Provenance(metric, "resultDigest"), Plans.Provenance(inch, "resultDigest"));
        Assert.Equal((string?)metric["decision"], (string?)inch["decision"]);
        Assert.Equal("lbf", (string?)inch.At("/result/loadTransfer/cases/0/load/unit"));
    }

    [Fact]
    public async Task Batch_of_matches_answers_as_each_alone()
    {
        var requests = Matches.Names.Select(row => Matches.Example(row.Data)).ToArray();
        var body = string.Join('\n', requests.Select(request => request.ToJsonString()));
        var reply = await service.PostAsync(Matches.Path + "/batch",
            Batches.BatchOutput.Content(System.Text.Encoding.UTF8.GetBytes(body), encoding: null));
        var batch = Batches.BatchOutput.Parse(reply.Status, mode: null, reply.Text);

        Assert.Equal(requests.Length, batch.Lines.Count);
        for (var i = 0; i < requests.Length; i++)
        {
            var alone = await service.AnswerAsync(Matches.Path, requests[i]);
            Assert.Equal(Plans.Provenance(alone, "resultDigest"), Plans.Provenance(batch.Lines[i]["answer"]!.AsObject(), "resultDigest"));
        }
    }

    private static double Value(JsonNode owner, string pointer) => (double)owner.At(pointer + "/value")!;
}
