using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Proof;

/// <summary>What a proof load evaluation says over HTTP.</summary>
public sealed class ProofLoadEvaluationTests(Service service)
{
    [Theory]
    [InlineData("before", "proceedWithCare", "passWithCare", "before")]
    [InlineData("after", "proceedWithCare", "passWithCare", "after")]
    [InlineData("plan", "proceedWithCare", "passWithCare", "before")]
    [InlineData("creep", "doNotProceed", "reject", "after")]
    [InlineData("missing", "undetermined", "hold", "before")]
    public async Task Verdict_is_one_to_one_with_the_decision(string example, string decision, string verdict, string phase)
    {
        var answer = await service.AnswerAsync(Proofs.Path, Proofs.Example(example));
        Assert.Equal((decision, verdict, phase),
            ((string?)answer["decision"], (string?)answer.At("/result/verdict"), (string?)answer.At("/result/phase")));
    }

    /// <summary>DOE-STD-1090-96, NAVEDTRA 14080: twice the rated load of 45 kN; DOE-STD-1090-96: -5 %, +0 %.</summary>
    [Fact]
    public async Task Proof_load_of_a_sling_is_that_of_the_standard()
    {
        var result = (await service.AnswerAsync(Proofs.Path, Proofs.Example("before")))["result"]!;
        Assert.Equal((90, 85.5, 90),
            ((double)result.At("/proofLoad/value")!, (double)result.At("/leastTestLoad/value")!,
            (double)result.At("/mostTestLoad/value")!));
        Assert.Equal(4, result["steps"]!.AsArray().Count);
        Assert.True((double)result.At("/expectedSeating/low/value")! < (double)result.At("/expectedSeating/high/value")!);
        Assert.Equal("mouth", (string?)result["seatingReadAt"]);
    }

    [Theory]
    [InlineData("/measured/wireSlip", "\"yes\"", "doNotProceed", "wire-slipped")]
    [InlineData("/measured/cracks", "\"yes\"", "doNotProceed", "cracked-under-proof")]
    [InlineData("/measured/asymmetry", "\"yes\"", "doNotProceed", "seated-askew")]
    [InlineData("/measured/creepUnderHold", "\"unknown\"", "undetermined", "facts-not-stated")]
    [InlineData("/measured/steps", "null", "undetermined", "facts-not-stated")]
    [InlineData("/measured/steps/2/load/value", "80", "doNotProceed", "test-load-short")]
    [InlineData("/measured/steps/2/seating/value", "0.1", "undetermined", "seating-contradicts")]
    [InlineData("/socket/proofRating/value", "85", "doNotProceed", "proof-above-socket-rating")]
    [InlineData("/test/proofLoadFrom", "\"2026-03-12T13:00:01Z\"", "doNotProceed", "not-cured-for-proof")]
    [InlineData("/test", "null", "undetermined", "rated-load-missing")]
    [InlineData("/measured/creepUnderHold", "null", "undetermined", "facts-not-stated")]
    [InlineData("/test/proofLoadFrom", "null", "undetermined", "facts-not-stated")]
    [InlineData("/socket/proofRating", "null", "undetermined", "facts-not-stated")]
    [InlineData("/test/exclusionZone", "\"no\"", "doNotProceed", "no-exclusion-zone")]
    public async Task Test_with_one_thing_changed_decides_by_it(string pointer, string raw, string decision, string code)
    {
        var answer = await service.AnswerAsync(Proofs.Path, Proofs.Example("after").With(pointer, JsonNode.Parse(raw)));
        Assert.Contains(code, Plans.Codes(answer));
        Assert.Equal(decision, (string?)answer["decision"]);
    }

    /// <summary>All that nobody stated is one finding; for a plan it is care, a quote asks for none of it.</summary>
    [Theory]
    [InlineData("pour", "undetermined", 1)]
    [InlineData("plan", "proceedWithCare", 1)]
    [InlineData("quote", "proceedWithCare", 0)]
    public async Task Purpose_decides_which_facts_have_to_be_stated(string purpose, string decision, int count)
    {
        var answer = await service.AnswerAsync(Proofs.Path, Proofs.Example("after").With("/purpose", purpose).Without("/measured")
            .Without("/test/proofLoadFrom").Without("/socket/proofRating").Without("/test/exclusionZone").Without("/rope/certificate")
            .Without("/rope/grade"));
        Assert.Equal(decision, (string?)answer["decision"]);
        var facts = answer["findings"]!.AsArray().Where(finding => (string?)finding!["code"] == "facts-not-stated").ToArray();
        Assert.Equal(count, facts.Length);
        Assert.All(facts, finding => Assert.Equal(3, finding!["related"]!.AsArray().Count));
    }

    /// <summary>40,000 lbf of breaking force and 20,000 lbf of proof load are just the half, as 40,100 and 20,050 are.</summary>
    [Theory]
    [InlineData(40_000, 20_000, false)]
    [InlineData(40_100, 20_050, false)]
    [InlineData(40_000, 20_001, true)]
    public async Task Half_of_the_breaking_force_is_allowed_in_pounds_too(double breaking, double proof, bool isAbove)
    {
        static JsonObject Pounds(double value) => new() { ["value"] = value, ["unit"] = "lbf" };
        var answer = await service.AnswerAsync(Proofs.Path, Proofs.Example("before").With("/ruleSet", "general")
            .With("/rope/certificate/breakingForce", Pounds(breaking)).With("/test/proofLoad", Pounds(proof)));
        Assert.Equal(isAbove, Plans.Codes(answer).Contains("proof-above-half-breaking"));
    }

    [Fact]
    public async Task Number_that_means_nothing_is_null()
    {
        var result = (await service.AnswerAsync(Proofs.Path, Proofs.Example("missing")))["result"]!;
        Assert.Null(result["proofLoad"]);
        Assert.Null(result["expectedSeating"]);
        Assert.Empty(result["steps"]!.AsArray());
    }

    /// <summary>The inch is 25.4 mm and a pound-force 4.4482216152605 N by definition; the order of members means nothing.</summary>
    [Theory]
    [MemberData(nameof(Proofs.Names), MemberType = typeof(Proofs))]
    public async Task Request_in_inches_and_pounds_and_turned_round_is_the_same_test(string example)
    {
        var body = new JsonObject(Proofs.Example(example).Reverse().Select(member => KeyValuePair.Create(member.Key,
            member.Value?.DeepClone())));
        foreach (var quantity in body.Walk().Select(node => node.Value).OfType<JsonObject>().Where(node => node.ContainsKey("unit"))
            .ToArray())
        {
            var (value, unit) = ((double)quantity["value"]!, (string)quantity["unit"]!);
            (quantity["value"], quantity["unit"]) = unit == "mm" ? (value / 25.4, "in") : unit == "kN"
                ? (value * 1e3 / 4.4482216152605, "lbf") : (value, unit);
        }

        var (metric, inch) = (await service.AnswerAsync(Proofs.Path, Proofs.Example(example)),
            await service.AnswerAsync(Proofs.Path, body.With("/units", "inch")));
        Assert.Equal(Plans.Provenance(metric, "recordId"), Plans.Provenance(inch, "recordId"));
        Assert.Equal(Plans.Provenance(metric, "resultDigest"), Plans.Provenance(inch, "resultDigest"));
    }

    [Theory]
    [MemberData(nameof(Proofs.Names), MemberType = typeof(Proofs))]
    public async Task Canonical_request_gives_the_same_record(string example)
    {
        var full = await service.AnswerAsync(Proofs.Path + "?detail=full", Proofs.Example(example));
        var again = await service.AnswerAsync(Proofs.Path, full["input"]!.AsObject());
        Assert.Equal(Plans.Provenance(full, "recordId"), Plans.Provenance(again, "recordId"));
        Assert.Equal(Plans.Provenance(full, "resultDigest"), Plans.Provenance(again, "resultDigest"));
    }

    [Theory]
    [InlineData("/ruleSet", "\"slings\"", "/ruleSet")]
    [InlineData("/measured/steps", "[]", "/measured/steps")]
    [InlineData("/measured/steps/0/load/value", "0", "/measured/steps/0/load")]
    [InlineData("/socket/outerAtMouth/value", "45", "/socket/outerAtMouth")]
    [InlineData("/test/friction", """{"value":0,"unit":"1"}""", "/test/friction")]
    public async Task Test_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string expected)
    {
        var reply = await service.PostAsync(Proofs.Path, Proofs.Example("after").With(pointer, JsonNode.Parse(raw)));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Contains(expected, ProblemAssert.Pointers(reply.Json));
    }
}
