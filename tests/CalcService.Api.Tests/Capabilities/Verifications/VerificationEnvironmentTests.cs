using System.Globalization;
using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.Contract;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Tests.Writing;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>What was archived in one place matches in every other: culture and time zone of the machine change nothing.</summary>
[Collection(nameof(EnvironmentTests))]
public sealed class VerificationEnvironmentTests(Service service)
{
    [Theory]
    [InlineData("tr-TR", "Asia/Kathmandu")]
    [InlineData("ar-SA", "America/St_Johns")]
    [InlineData("fa-IR", "Pacific/Kiritimati")]
    [InlineData("de-DE", "Europe/Berlin")]
    public async Task Answer_of_every_example_matches_in_another_culture_and_time_zone(string culture, string zone)
    {
        var archive = new List<(string Path, byte[] Body)>();
        foreach (var route in (await ServedContract.ReadAsync(service)).Answering.Where(route => route.Path != ArchivedAnswers.Path))
        {
            foreach (var (_, body) in route.Examples)
            {
                archive.Add((route.Path,
                    Encoding.UTF8.GetBytes(ArchivedAnswers.Of(route.Path, body, await service.AnswerAsync(route.Path, body))
                    .ToJsonString())));
            }
        }

        var (before, zoneBefore) = (CultureInfo.CurrentCulture, Environment.GetEnvironmentVariable("TZ"));
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();
            var capability = service.Services.Calculation("record-verifications");
            foreach (var (path, body) in archive)
            {
                var answer =
                    Assert.IsType<Answer<RecordVerificationResult>>(capability.Process(body, full: false,
                    TestContext.Current.CancellationToken).Body);
                Assert.True(answer.Result.Outcome == VerificationOutcome.Match, $"{path}: {answer.Result.Pointer} {answer.Result.Reason}");
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            Environment.SetEnvironmentVariable("TZ", zoneBefore);
            TimeZoneInfo.ClearCachedData();
        }
    }
}
