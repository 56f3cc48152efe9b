using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Audits;

/// <summary>What an audit says over HTTP.</summary>
public sealed class RecordAuditTests(Service service)
{
    /// <summary>Members that no decision needs, and times that only were to be later.</summary>
    private static readonly string[] Dispensable =
    [
        "/reference", "/socket/heatNumber", "/socket/basket/tolerance", "/socket/outerAtSmallEnd", "/socket/outerAtMouth", "/rope/finish",
            "/rope/grade", "/rope/construction", "/rope/core",
        "/times/inServiceAt", "/hardness/method",
    ];

    /// <summary>Every member and every item of a list of the whole record.</summary>
    public static TheoryData<string> Members => [.. TerminationRecords.Whole.Walk().Select(node => node.Pointer)
        .Where(pointer => pointer.Length > 0 && !pointer.EndsWith("/value", StringComparison.Ordinal)
        && !pointer.EndsWith("/unit", StringComparison.Ordinal)
            && !Dispensable.Contains(pointer) && !pointer.StartsWith("/conditions/air/series/", StringComparison.Ordinal)
            && !pointer.StartsWith("/socket/basket/", StringComparison.Ordinal))];

    [Theory]
    [InlineData("accepted", "acceptedWithRemarks", "proceedWithCare")]
    [InlineData("incomplete", "incomplete", "undetermined")]
    [InlineData("refused", "refused", "doNotProceed")]
    public async Task Example_has_its_standing_and_the_decision_that_belongs_to_it(string example, string standing, string decision)
    {
        var answer = await service.AnswerAsync(TerminationRecords.Path, TerminationRecords.Example(example));
        Assert.Equal((standing, decision), ((string?)answer.At("/result/standing"), (string?)answer["decision"]));
        Assert.Equal("demonstration", (string?)answer.At("/provenance/compound/profile"));
    }

    /// <summary>The demonstration compound is the only remark on the whole record.</summary>
    [Fact]
    public async Task Whole_record_has_nothing_wrong_but_its_compound() =>
        Assert.Equal(["compound-demonstration"], Plans.Codes(await service.AnswerAsync(TerminationRecords.Path, TerminationRecords.Whole)));

    [Theory]
    [MemberData(nameof(Members))]
    public async Task Whole_record_with_any_member_missing_has_a_finding_more(string pointer)
    {
        var body = TerminationRecords.Whole;
        var last = pointer[(pointer.LastIndexOf('/') + 1)..];
        if (body.At(pointer[..pointer.LastIndexOf('/')]) is JsonArray list)
        {
            list.RemoveAt(int.Parse(last, System.Globalization.CultureInfo.InvariantCulture));
        }
        else
        {
            body = body.Without(pointer);
        }

        var reply = await service.PostAsync(TerminationRecords.Path, body);
        if (reply.Status == 422)
        {
            // What the numbers can't exist without.
            return;
        }

        Assert.Contains(Plans.Codes(reply.Json), code => code != "compound-demonstration");
    }

    [Fact]
    public async Task Record_in_inches_is_the_same_record()
    {
        var metric = await service.AnswerAsync(TerminationRecords.Path, TerminationRecords.Whole);
        var inch = await service.AnswerAsync(TerminationRecords.Path,
            TerminationRecords.Whole.With("/units", "inch").With("/rope/diameter", NodeEdits.Quantity(20 / 25.4, "in")));
        Assert.Equal((string?)metric.At("/provenance/resultDigest"), (string?)inch.At("/provenance/resultDigest"));
        Assert.Equal("in3", (string?)inch.At("/result/recomputed/resinVolume/nominal/unit"));
    }

    [Theory]
    [InlineData("/mix/kits/0/kit", "\"bucket\"", "/mix/kits/0/kit")]
    [InlineData("/proof/asked", "\"no\"", "/proof/askedLoad")]
    [InlineData("/socket/outerAtMouth", """{"value":45,"unit":"mm"}""", "/socket/basket/largeEndDiameter")]
    [InlineData("/conditions/air/constant", """{"value":15,"unit":"degC"}""", "/conditions/air/series")]
    [InlineData("/mix/baskets", "0", "/mix/baskets")]
    [InlineData("/auditedOn", "null", "/auditedOn")]
    public async Task Record_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string at)
    {
        var reply = await service.PostAsync(TerminationRecords.Path, TerminationRecords.Whole.With(pointer, JsonNode.Parse(raw)));
        Assert.Equal(422, reply.Status);
        Assert.Contains(at, ProblemAssert.Pointers(reply.Json));
    }

    /// <summary>NIST/SEMATECH 6.3.2.2: ten flow rates, here as gel ratios of 50ths, so limits of 55.8041 and 45.8159.</summary>
    [Fact]
    public async Task Batch_ends_with_the_charts_of_lots_and_crews_that_the_handbook_prints()
    {
        double[] flows = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
        // At 20 °C the demonstration gels after 24 min: a ratio is its minutes over 24.
        var good = TerminationRecords.Whole.With("/conditions/air", JsonNode.Parse("""{"constant":{"value":20,"unit":"degC"}}"""))
            .With("/conditions/steelTemperature", NodeEdits.Quantity(20, "degC"))
            .With("/conditions/compoundTemperature", NodeEdits.Quantity(20, "degC"));
        var mixed = new DateTimeOffset(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1));
        var lines = flows.Select((flow, i) => good.With("/record/number", $"N{i % 9}").With("/times/gelAt",
            mixed.AddMinutes(24 * flow / 50).ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff", System.Globalization.CultureInfo.InvariantCulture)
            + "+01:00").ToJsonString());
        var body = string.Join('\n', lines.Append("{}")) + "\n";

        var reply = await service.PostAsync(TerminationRecords.Path + "/batch",
            BatchOutput.Content(Encoding.UTF8.GetBytes(body), encoding: null));
        var summary = BatchOutput.Parse(reply.Status, mode: null, reply.Text).Summary!;

        Assert.Equal((11, 10, 1), ((int)summary["lines"]!, (int)summary["answered"]!, (int)summary["rejected"]!));
        var statistics = summary["statistics"]!;
        Assert.Equal((10, 0), ((int)statistics["records"]!, (int)statistics["withoutRatio"]!));
        Assert.Equal(("N0", 10), ((string?)statistics.At("/numbers/first/0/number"), (int)statistics.At("/numbers/first/0/line")!));
        foreach (var group in new[] { statistics.At("/lots/0")!, statistics.At("/crews/0")! })
        {
            Assert.Equal(50.81 / 50, (double)group["mean"]!, 2e-5);
            Assert.Equal(55.8041 / 50, (double)group["upper"]!, 1e-4);
            Assert.Equal(45.8159 / 50, (double)group["lower"]!, 1e-4);
            Assert.Equal(2.9110, (double)group.At("/tolerance/factor")!, 1e-4);
            Assert.True((bool)group["provisional"]!);
        }

        Assert.Equal(("A-118", "R. Vos"), ((string?)statistics.At("/lots/0/name"), (string?)statistics.At("/crews/0/name")));
    }

    [Fact]
    public async Task Batch_of_another_calculation_has_no_statistics()
    {
        var reply = await service.PostAsync(Plans.Path + "/batch",
            BatchOutput.Content(Encoding.UTF8.GetBytes(Plans.Plan.ToJsonString() + "\n"), encoding: null));
        Assert.False(BatchOutput.Parse(reply.Status, mode: null, reply.Text).Summary!.ContainsKey("statistics"));
    }

    /// <summary>A line alone and in a batch get the same answer, statistics or not.</summary>
    [Fact]
    public async Task Line_of_a_batch_gets_the_answer_of_the_single_call()
    {
        var single = await service.AnswerAsync(TerminationRecords.Path, TerminationRecords.Example("refused"));
        var reply = await service.PostAsync(TerminationRecords.Path + "/batch",
            BatchOutput.Content(Encoding.UTF8.GetBytes(TerminationRecords.Example("refused").ToJsonString() + "\n"), encoding: null));
        var line = BatchOutput.Parse(reply.Status, mode: null, reply.Text).Lines[0]["answer"]!.AsObject();
        single["provenance"]!.AsObject().Remove("computedAt");
        line["provenance"]!.AsObject().Remove("computedAt");
        Assert.Equal(single.ToJsonString(), line.ToJsonString());
    }

    /// <summary>Wires count as steel: whatever hangs on the coldest steel hangs on them.</summary>
    [Theory]
    [InlineData(7.5)]
    [InlineData(10)]
    public async Task Cold_wires_are_cold_steel(double celsius)
    {
        static JsonObject Cold(double value) => new() { ["value"] = value, ["unit"] = "degC" };
        var dry = TerminationRecords.Whole.With("/conditions/relativeHumidity", new JsonObject { ["value"] = 30, ["unit"] = "%" });
        var wires = await service.AnswerAsync(TerminationRecords.Path, dry.With("/rope/temperature", Cold(celsius)));
        var steel = await service.AnswerAsync(TerminationRecords.Path, dry.With("/conditions/steelTemperature", Cold(celsius)));
        Assert.Equal(steel.At("/result/recomputed")!.ToJsonString(), wires.At("/result/recomputed")!.ToJsonString());
        Assert.NotEqual((await service.AnswerAsync(TerminationRecords.Path, dry)).At("/result/recomputed/loadFrom")!.ToJsonString(),
            wires.At("/result/recomputed/loadFrom")!.ToJsonString());
    }
}
