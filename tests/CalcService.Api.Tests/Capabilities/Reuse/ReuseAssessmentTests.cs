using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Reuse;

/// <summary>What an assessment says over HTTP.</summary>
public sealed class ReuseAssessmentTests(Service service)
{
    /// <summary>
    /// Members that no decision needs: names, what the room needs only for a comparison, and a temperature that "cold" already says.
    /// </summary>
    private static readonly string[] Dispensable =
    [
        "/reference", "/ruleSet", "/coneRemoval/maximumTemperature", "/intended", "/socket/pin", "/socket/proofRating",
            "/socket/breakingForce",
        // No pit was found, so nobody asks how deep one may be.
        "/limits/pitDepth",
    ];

    /// <summary>What the drawing or nothing stands in for, until somebody has looked.</summary>
    private static readonly string[] Taken = ["/socket/material/kind", "/socket/measured/earWidth", "/socket/measured/earEndDistance"];

    private static readonly Dictionary<string, string> Decisions = new()
    {
        ["reuse"] = "proceed", ["reuseAfterWork"] = "proceedWithCare", ["hold"] = "undetermined", ["withdraw"] = "doNotProceed",
    };

    /// <summary>Every member and every item of a list of the sound socket.</summary>
    public static TheoryData<string> Members => [.. Reuses.Sound.Walk().Select(node => node.Pointer)
        .Where(pointer => pointer.Length > 0 && !pointer.EndsWith("/value", StringComparison.Ordinal)
        && !pointer.EndsWith("/unit", StringComparison.Ordinal))];

    [Theory]
    [InlineData("reuse", "reuse")]
    [InlineData("work", "reuseAfterWork")]
    [InlineData("hold", "hold")]
    [InlineData("withdraw", "withdraw")]
    public async Task Example_has_its_disposition_and_the_decision_that_belongs_to_it(string example, string disposition)
    {
        var answer = await service.AnswerAsync(Reuses.Path, Reuses.Example(example));
        Assert.Equal(disposition, (string?)answer.At("/result/disposition"));
        Assert.Equal(Decisions[disposition], (string?)answer["decision"]);
        Assert.Equal(disposition is "reuseAfterWork", answer.At("/result/work")!.AsArray().Count > 0);
        Assert.Null(answer.At("/provenance/compound"));
    }

    [Theory]
    [MemberData(nameof(Members))]
    public async Task Sound_socket_with_any_member_missing_is_never_reused(string pointer)
    {
        var body = Reuses.Sound;
        var last = pointer[(pointer.LastIndexOf('/') + 1)..];
        if (body.At(pointer[..pointer.LastIndexOf('/')]) is JsonArray list)
        {
            list.RemoveAt(int.Parse(last, System.Globalization.CultureInfo.InvariantCulture));
        }
        else
        {
            body = body.Without(pointer);
        }

        var reply = await service.PostAsync(Reuses.Path, body);
        if (reply.Status == 422)
        {
            // What the numbers can't exist without.
            return;
        }

        Assert.Equal(200, reply.Status);
        var expected = Dispensable.Any(one => pointer == one || pointer.StartsWith(one + "/", StringComparison.Ordinal)) ? "reuse"
            : Taken.Contains(pointer) ? "reuseAfterWork" : "hold";
        Assert.Equal(expected, (string?)reply.Json.At("/result/disposition"));
        if (expected == "hold")
        {
            var missing = reply.Json.At("/result/checks")!.AsArray().SelectMany(check => check!["missing"]!.AsArray())
                .Select(name => (string)name!).ToArray();
            // The check names the member itself, one below it, or the list or object that it belongs to.
            Assert.Contains(missing, name => name.StartsWith(pointer, StringComparison.Ordinal)
                || pointer.StartsWith(name, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("/socket/history/welded", "\"yes\"", "withdraw", "socket-welded")]
    [InlineData("/socket/history/arcStruck", "\"yes\"", "withdraw", "socket-arc-struck")]
    [InlineData("/socket/history/straightened", "\"yes\"", "withdraw", "socket-straightened")]
    [InlineData("/socket/history/overloaded", "\"yes\"", "withdraw", "socket-overloaded")]
    [InlineData("/inspection/visual/cracks", "\"yes\"", "withdraw", "socket-cracked")]
    [InlineData("/inspection/indications", """[{"place":"pinHoles","kind":"linear"}]""", "withdraw", "socket-cracked")]
    [InlineData("/inspection/indications", """[{}]""", "hold", "indication-unclear")]
    [InlineData("/inspection/visual/surface", "\"oldResin\"", "hold", "socket-surface-covered")]
    [InlineData("/coneRemoval/method", "\"burntOut\"", "withdraw", "cone-burnt-out")]
    [InlineData("/socket/material", """{"known":"no"}""", "hold", "socket-steel-unknown")]
    [InlineData("/socket/type", "\"closed\"", "hold", "bail-not-computed")]
    [InlineData("/socket/measured/stations/0/diameters/0/value", "23.5", "withdraw", "bore-worn")]
    [InlineData("/limits", "null", "hold", "worn-without-limit")]
    [InlineData("/socket/measured/earThickness/value", "12.8", "hold", "worn-without-limit")]
    [InlineData("/socket/measured/pinDiameter/value", "33", "hold", "worn-without-limit")]
    [InlineData("/socket/measured/earThickness/value", "5.3", "withdraw", "half-worn-away")]
    [InlineData("/socket/measured/earThickness/value", "0.2", "withdraw", "half-worn-away")]
    [InlineData("/socket/measured/pitDepth/value", "7.96", "withdraw", "half-worn-away")]
    [InlineData("/socket/measured/outerDiameter/value", "45.1", "withdraw", "half-worn-away")]
    [InlineData("/socket/measured/pinHoleDiameters/1/value", "79", "withdraw", "half-worn-away")]
    [InlineData("/socket/measured/stations/0/diameters/0/value", "30", "withdraw", "bore-worn")]
    [InlineData("/socket/measured/stations/0/diameters/0/value", "16", "withdraw", "bore-oval")]
    [InlineData("/socket/measured/earThickness/value", "40", "hold", "size-not-as-drawn")]
    public async Task Sound_socket_with_one_thing_changed_is_disposed_of_by_it(string pointer, string raw, string disposition, string code)
    {
        var answer = await service.AnswerAsync(Reuses.Path, Reuses.Sound.With(pointer, JsonNode.Parse(raw)));
        Assert.Contains(code, Plans.Codes(answer));
        Assert.Equal(disposition, (string?)answer.At("/result/disposition"));
        Assert.Equal(Decisions[disposition], (string?)answer["decision"]);
    }

    /// <summary>A sound socket too small for this rope, or for this load, is a sound socket: the job stops, the socket is reused.</summary>
    [Theory]
    [InlineData("/socket/breakingForce", """{"value":252,"unit":"kN"}""", "socket-weaker-than-rope")]
    [InlineData("/intended/rope/certificate/breakingForce", """{"value":330,"unit":"kN"}""", "socket-weaker-than-rope")]
    [InlineData("/intended/rope/diameter", """{"value":26,"unit":"mm"}""", "rope-does-not-enter")]
    [InlineData("/intended/ratedLoad", """{"value":60,"unit":"kN"}""", "intended-load-above-rating")]
    [InlineData("/intended/proofLoad", """{"value":130,"unit":"kN"}""", "proof-above-socket-rating")]
    public async Task Sound_socket_that_is_not_for_this_job_stays_sound(string pointer, string raw, string code)
    {
        var answer = await service.AnswerAsync(Reuses.Path, Reuses.Sound.With(pointer, JsonNode.Parse(raw)));
        Assert.Contains(code, Plans.Codes(answer));
        Assert.Equal(("reuse", "doNotProceed"), ((string?)answer.At("/result/disposition"), (string?)answer["decision"]));
    }

    [Fact]
    public async Task Wear_limit_in_a_check_is_that_of_the_request_with_its_source()
    {
        var check = Reuses.Check(await service.AnswerAsync(Reuses.Path, Reuses.Sound), "bore-growth");
        Assert.Equal(2, (double)check.At("/limit/value")!);
        // 23.2 over 23 mm.
        Assert.Equal(.2 / 23 * 100, (double)check.At("/measured/value")!, 1e-5);
        Assert.Equal(("operator's rule 7", "dataSheet"), ((string?)check.At("/source/document"), (string?)check.At("/source/basis")));
    }

    [Theory]
    [MemberData(nameof(Reuses.Names), MemberType = typeof(Reuses))]
    public async Task Rule_of_every_check_and_finding_can_be_looked_up(string example)
    {
        var answer = await service.AnswerAsync(Reuses.Path, Reuses.Example(example));
        var checks = answer.At("/result/checks")!.AsArray();
        Assert.NotEmpty(checks);
        foreach (var code in checks.Select(check => (string)check!["rule"]!).Union(Plans.Codes(answer)))
        {
            Assert.Equal(200, (await service.GetAsync("/v1/rules/" + code)).Status);
        }

        foreach (var finding in answer["findings"]!.AsArray().Where(finding => finding!["limit"] is not null))
        {
            var rule = (await service.GetAsync("/v1/rules/" + (string)finding!["code"]!)).Json;
            Assert.Equal((string?)finding["code"], (string?)rule["code"]);
        }
    }

    [Theory]
    [MemberData(nameof(Reuses.Names), MemberType = typeof(Reuses))]
    public async Task Canonical_request_gives_the_same_record(string example)
    {
        var full = await service.AnswerAsync(Reuses.Path + "?detail=full", Reuses.Example(example));
        Assert.NotEmpty(full["trace"]!.AsArray());
        var again = await service.AnswerAsync(Reuses.Path, full["input"]!.AsObject());
        Assert.Equal(Plans.Provenance(full, "recordId"), Plans.Provenance(again, "recordId"));
        Assert.Equal(Plans.Provenance(full, "resultDigest"), Plans.Provenance(again, "resultDigest"));
    }

    /// <summary>The inch is 25.4 mm and a pound-force 4.4482216152605 N by definition.</summary>
    [Fact]
    public async Task Request_in_inches_and_pounds_is_the_same_socket()
    {
        var body = Reuses.Sound;
        foreach (var quantity in body.Walk().Select(node => node.Value).OfType<JsonObject>().Where(node => node.ContainsKey("unit"))
            .ToArray())
        {
            var (value, unit) = ((double)quantity["value"]!, (string)quantity["unit"]!);
            (quantity["value"], quantity["unit"]) = unit switch
            {
                "mm" => (value / 25.4, "in"),
                "kN" => (value * 1e3 / 4.4482216152605, "lbf"),
                "MPa" => (value * 25.4 * 25.4 / 4.4482216152605, "psi"),
                _ => (value, unit),
            };
        }

        var (metric, inch) = (await service.AnswerAsync(Reuses.Path, Reuses.Sound),
            await service.AnswerAsync(Reuses.Path, body.With("/units", "inch")));
        Assert.Equal(Plans.Provenance(metric, "recordId"), Plans.Provenance(inch, "recordId"));
        Assert.Equal(Plans.Provenance(metric, "resultDigest"), Plans.Provenance(inch, "resultDigest"));
        Assert.Equal("in", (string?)inch.At("/result/wear/pitDepth/unit"));
    }

    [Fact]
    public async Task Batch_of_sockets_answers_as_each_alone()
    {
        var requests = Reuses.Names.Select(row => Reuses.Example(row.Data)).ToArray();
        var body = string.Join('\n', requests.Select(request => request.ToJsonString()));
        var reply = await service.PostAsync(Reuses.Path + "/batch",
            Batches.BatchOutput.Content(System.Text.Encoding.UTF8.GetBytes(body), encoding: null));
        var batch = Batches.BatchOutput.Parse(reply.Status, mode: null, reply.Text);
        Assert.Equal(requests.Length, batch.Lines.Count);
        for (var i = 0; i < requests.Length; i++)
        {
            var alone = await service.AnswerAsync(Reuses.Path, requests[i]);
            Assert.Equal(Plans.Provenance(alone, "resultDigest"), Plans.Provenance(batch.Lines[i]["answer"]!.AsObject(), "resultDigest"));
        }
    }
}
