using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.OpenApi;
using CalcService.Api.Problems;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Writing;

namespace CalcService.Api.Tests.Writing;

/// <summary>Runs alone: it changes what the whole process takes for its time zone.</summary>
[CollectionDefinition(nameof(EnvironmentTests), DisableParallelization = true)]
public sealed class EnvironmentAlone;

/// <summary>The same input gives the same answer wherever the machine stands and whatever language it speaks.</summary>
[Collection(nameof(EnvironmentTests))]
public sealed class EnvironmentTests(Service service)
{
    private const string Invariant = "";

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    [InlineData("sv-SE")]
    public void Answer_in_another_culture_is_the_same_bytes(string culture)
    {
        foreach (var example in RequestExamples.Of("pour-plans"))
        {
            Assert.Equal(AnswerIn(Invariant, example.Body), AnswerIn(culture, example.Body));
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Problem_in_another_culture_is_the_same_bytes(string culture)
    {
        var bad = Plans.Plan.With("/ends/0/rope/diameter/value", 38500.5).With("/ends/0/quantity", -1).With("/compound/profile", "\u0130ng")
            .ToJsonString();

        Assert.Equal(AnswerIn(Invariant, bad), AnswerIn(culture, bad));
    }

    [Theory]
    [InlineData("Europe/Berlin")]
    [InlineData("America/St_Johns")]
    [InlineData("Asia/Kathmandu")]
    [InlineData("Pacific/Kiritimati")]
    public void Answer_in_another_time_zone_is_the_same_bytes(string zone)
    {
        foreach (var pourAt in new[] { "2026-03-12T08:30:00+01:00", "2026-03-12T23:30:00Z", "2026-03-29T02:30:00.5Z" })
        {
            var body = Plans.Plan.With("/pourAt", pourAt).With("/stock/0/expiresOn", "2026-03-12").ToJsonString();

            var inUtc = InZone("UTC", () => AnswerIn(Invariant, body));
            var elsewhere = InZone(zone, () => AnswerIn(Invariant, body));

            Assert.Contains("\"decision\"", inUtc, StringComparison.Ordinal);
            Assert.Equal(inUtc, elsewhere);
        }
    }

    private string AnswerIn(string culture, string body)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var capability = service.Services.Calculation("pour-plans");
            var processed = capability.Process(System.Text.Encoding.UTF8.GetBytes(body), full: true, TestContext.Current.CancellationToken);
            if (processed.Body is Problem problem)
            {
                return JsonSerializer.Serialize(problem, ApiJson.Options);
            }

            using var sent = ShapeWriter.WriteAnswer(processed.Body);
            var answer = JsonNode.Parse(sent.Written.Span)!;
            _ = answer["provenance"] is JsonObject provenance && provenance.Remove("computedAt");
            return answer.ToJsonString();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    private static string InZone(string zone, Func<string> answer)
    {
        var before = Environment.GetEnvironmentVariable("TZ");
        try
        {
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();
            Assert.Equal(zone, TimeZoneInfo.Local.Id);
            return answer();
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", before);
            TimeZoneInfo.ClearCachedData();
        }
    }
}
