using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Inspection;

/// <summary>What an inspection says over HTTP.</summary>
public sealed class ServiceInspectionTests(Service service)
{
    private const string End = "/inspection";

    [Theory]
    [InlineData("serve", "proceedWithCare", "serve")]
    [InlineData("care", "proceedWithCare", "serveWithCare")]
    [InlineData("withdraw", "doNotProceed", "withdraw")]
    [InlineData("hold", "undetermined", "hold")]
    [InlineData("overdue", "doNotProceed", "withdraw")]
    public async Task Example_decides_and_disposes_as_it_says(string example, string decision, string disposition)
    {
        var answer = await service.AnswerAsync(Inspections.Path, Inspections.Example(example));
        Assert.Equal((decision, disposition), ((string?)answer["decision"], (string?)answer.At("/result/disposition")));
    }

    [Theory]
    [InlineData(End + "/brokenWires/0/count", "6", "doNotProceed", "broken-wires-reject")]
    [InlineData(End + "/brokenWires", "null", "undetermined", "not-looked-at")]
    [InlineData(End + "/cracks", "\"yes\"", "doNotProceed", "end-cracked")]
    [InlineData(End + "/cracks", "\"unknown\"", "undetermined", "not-looked-at")]
    [InlineData(End + "/coneMovement", "\"yes\"", "doNotProceed", "cone-moved")]
    [InlineData(End + "/corrosion", "\"light\"", "proceedWithCare", "end-corroded-on-the-surface")]
    [InlineData(End + "/highestTemperature/value", "90", "doNotProceed", "overheated")]
    [InlineData(End, "null", "undetermined", "not-looked-at")]
    [InlineData("/ruleSet", "null", "undetermined", "rule-set-missing")]
    [InlineData("/compound", "null", "proceedWithCare", "compound-not-known")]
    [InlineData("/rope/measuredDiameter/value", "18.9", "doNotProceed", "diameter-reduced")]
    [InlineData("/rope/function", "\"rotationResistant\"", "doNotProceed", "broken-wires-reject")]
    public async Task Inspection_with_one_thing_changed_decides_by_it(string pointer, string raw, string decision, string code)
    {
        var answer = await service.AnswerAsync(Inspections.Path, Inspections.Serve.With(pointer, JsonNode.Parse(raw)));
        Assert.Contains(code, Plans.Codes(answer));
        Assert.Equal(decision, (string?)answer["decision"]);
    }

    /// <summary>
    /// 29 CFR 1926.1413(a)(2)(ii)(A)(3): two at an end connection; US Navy Towing Manual, appendix B: one within one lay of a fitting. Cut:
    /// TM 5-3810-288-12, NAVFAC MO-118, 3 ft.
    /// </summary>
    [Fact]
    public async Task Wires_at_the_socket_of_a_pendant_are_judged_by_the_rule_set_that_is_named()
    {
        var one = Inspections.Example("withdraw").With(End + "/brokenWires/0/count", 1);
        Assert.Equal("proceedWithCare", (string?)(await service.AnswerAsync(Inspections.Path, one))["decision"]);
        Assert.Equal("doNotProceed", (string?)(await service.AnswerAsync(Inspections.Path, one.With("/ruleSet", "naval")))["decision"]);

        var two = await service.AnswerAsync(Inspections.Path, Inspections.Example("withdraw"));
        var check = two.At("/result/strictest")!;
        Assert.Equal(("fail", "29 CFR 1926.1413", "law"),
            ((string?)check["outcome"], (string?)check.At("/source/document"), (string?)check.At("/source/basis")));
        Assert.Equal(914.4, (double)two.At("/result/cutFrom/value")!, 1e-9);
        Assert.Equal("yes", (string?)two.At("/result/ropeLeft/enough"));
        Assert.Equal("broken-wires-standing-end", (string?)two.At("/result/strictest/id"));
    }

    /// <summary>
    /// A limit that is exceeded never passes: not one of another rule set, not one that is counted over the lay at the mouth.
    /// </summary>
    [Theory]
    [InlineData("mine-hoist", "running", 200, "lay", 3.5, "undetermined", "limit-of-another-rule-set")]
    [InlineData("platform", "running", 200, "lay", 3.5, "undetermined", "limit-of-another-rule-set")]
    [InlineData("naval", "running", 200, "lay", 3.5, "doNotProceed", "broken-wires-reject")]
    [InlineData("construction-crane", "running", 5, "mouth", null, "undetermined", "limit-of-another-rule-set")]
    [InlineData("mine-hoist", "running", 200, "unknown", null, "undetermined", "broken-wires-not-placed")]
    [InlineData("platform", "running", 1, "unknown", null, "undetermined", "broken-wires-not-placed")]
    public async Task Broken_wires_beyond_a_limit_of_any_rule_set_never_pass(string ruleSet, string function, int count, string place,
        double? fromMouth, string decision, string code)
    {
        var group = new JsonObject { ["count"] = count, ["place"] = place, ["inOneStrand"] = 1 };
        if (fromMouth is { } from)
        {
            group["fromMouth"] = NodeEdits.Quantity(from, "m");
        }

        var answer = await service.AnswerAsync(Inspections.Path,
            Inspections.Serve.With("/ruleSet", ruleSet).With("/rope/function", function).With(End + "/brokenWires", new JsonArray(group)));
        Assert.Equal(decision, (string?)answer["decision"]);
        Assert.Contains(code, Plans.Codes(answer));
        Assert.NotEqual("serveWithCare", (string?)answer.At("/result/disposition"));
    }

    /// <summary>29 CFR 1926.1413(a)(2)(ii)(A)(3): more than one in a lay at an end connection; the lay is 180 mm.</summary>
    [Theory]
    [InlineData(60, "doNotProceed")]
    [InlineData(181, "proceedWithCare")]
    public async Task Wire_within_the_lay_at_a_pendants_socket_counts_with_the_one_at_its_mouth(double fromMouth, string decision)
    {
        var second = new JsonObject { ["count"] = 1, ["place"] = "lay", ["fromMouth"] = NodeEdits.Quantity(fromMouth, "mm"),
            ["inOneStrand"] = 1 };
        var first = new JsonObject { ["count"] = 1, ["place"] = "mouth", ["inOneStrand"] = 1 };
        Assert.Equal(decision,
            (string?)(await service.AnswerAsync(Inspections.Path,
            Inspections.Example("care").With(End + "/brokenWires", new JsonArray(first, second))))["decision"]);
    }

    [Fact]
    public async Task Platform_is_told_the_day_by_which_it_is_socketed_again() =>
        // WAC 296-870-30025(1): 24 months after 11 March 2024.
        Assert.Equal("2026-03-11",
            (string?)(await service.AnswerAsync(Inspections.Path, Inspections.Example("overdue"))).At("/result/nextDue/on"));

    [Fact]
    public async Task Number_that_means_nothing_is_null()
    {
        var result = (await service.AnswerAsync(Inspections.Path, Inspections.Serve))["result"]!;
        Assert.Null(result["cutFrom"]);
        Assert.Null(result["nextDue"]);
        Assert.Null(result.At("/ropeLeft/drumTurns"));
    }

    /// <summary>Every limit of an answer stands at /v1/rules/{code} of some finding.</summary>
    [Theory]
    [MemberData(nameof(Inspections.Names), MemberType = typeof(Inspections))]
    public async Task Limit_of_a_check_can_be_looked_up(string example)
    {
        var known = (await service.GetAsync("/v1/rules")).Json["rules"]!.AsArray()
            .SelectMany(rule => rule!["limits"]!.AsArray().OfType<JsonNode>())
            .Select(limit => ((string?)limit["ruleSet"], (string?)limit["text"])).ToHashSet();
        Assert.All((await service.AnswerAsync(Inspections.Path, Inspections.Example(example))).At("/result/checks")!.AsArray()
            .OfType<JsonNode>(), check =>
            Assert.True((string?)check.At("/source/basis") == "dataSheet"
            || known.Contains(((string?)check["ruleSet"], (string?)check["rule"])), (string?)check["rule"]));
    }

    [Theory]
    [MemberData(nameof(Inspections.Names), MemberType = typeof(Inspections))]
    public async Task Canonical_request_gives_the_same_record(string example)
    {
        var full = await service.AnswerAsync(Inspections.Path + "?detail=full", Inspections.Example(example));
        var again = await service.AnswerAsync(Inspections.Path, full["input"]!.AsObject());
        Assert.Equal(Plans.Provenance(full, "recordId"), Plans.Provenance(again, "recordId"));
        Assert.Equal(Plans.Provenance(full, "resultDigest"), Plans.Provenance(again, "resultDigest"));
    }

    [Fact]
    public async Task Units_of_the_answer_change_no_digest_and_no_verdict()
    {
        var (metric, inch) = (await service.AnswerAsync(Inspections.Path, Inspections.Example("withdraw")),
            await service.AnswerAsync(Inspections.Path, Inspections.Example("withdraw").With("/units", "inch")));
        Assert.Equal(Plans.Provenance(metric, "resultDigest"), Plans.Provenance(inch, "resultDigest"));
        Assert.Equal("in", (string?)inch.At("/result/cutFrom/unit"));
    }

    /// <summary>Pointer, value in its place, pointers of the errors.</summary>
    public static TheoryData<string, string, string[]> Edits => new()
    {
        { "/ruleSet", "\"crane\"", ["/ruleSet"] },
        { End + "/socketedOn", "\"2026-03-13\"", [End + "/socketedOn", "/assessedOn"] },
        { End + "/brokenWires/0/count", "0", [End + "/brokenWires/0/count", End + "/brokenWires/0/inOneStrand"] },
        { End + "/brokenWires/0/inOneStrand", "3", [End + "/brokenWires/0/inOneStrand", End + "/brokenWires/0/count"] },
        { End + "/brokenWires/0/fromMouth/value", "-1", [End + "/brokenWires/0/fromMouth"] },
        { End + "/strengthLoss", """{"value":101,"unit":"%"}""", [End + "/strengthLoss"] },
        { End + "/chemicals", """[""]""", [End + "/chemicals/0"] },
        { "/rope/layLength/value", "1", ["/rope/layLength"] },
        { "/compound", """{"profile":"nothing"}""", ["/compound/profile"] },
        { "/assessedOn", "null", ["/assessedOn"] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public async Task Inspection_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected)
    {
        var reply = await service.PostAsync(Inspections.Path, Inspections.Serve.With(pointer, JsonNode.Parse(raw)));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Superset(expected.ToHashSet(), ProblemAssert.Pointers(reply.Json).Append(expected[^1]).ToHashSet());
        Assert.Subset(expected.ToHashSet(), ProblemAssert.Pointers(reply.Json).ToHashSet());
    }
}
