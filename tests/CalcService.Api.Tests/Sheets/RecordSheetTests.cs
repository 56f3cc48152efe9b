using System.Xml.Linq;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

/// <summary>The sheets of audits and of verifications.</summary>
public sealed class RecordSheetTests(Service service)
{
    [Fact]
    public async Task Sheet_says_what_the_answer_says()
    {
        foreach (var route in (await ServedContract.ReadAsync(service))
            .Answering.Where(route => route.Path is TerminationRecords.Path or ArchivedAnswers.Path))
        {
            foreach (var (_, body) in route.Examples)
            {
                var answer = await service.AnswerAsync(route.Path, body);
                var sheet = await service.PostAsync(route.Path + "/sheet", body);
                Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
                var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
                Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
                Assert.All(answer["findings"]!.AsArray(),
                    finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
                Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
                Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    [Fact]
    public async Task Sheet_of_an_incomplete_record_lists_each_missing_item()
    {
        var answer = await service.AnswerAsync(TerminationRecords.Path, TerminationRecords.Example("incomplete"));
        var sheet = await service.PostAsync(TerminationRecords.Path + "/sheet", TerminationRecords.Example("incomplete"));
        Assert.NotEmpty(answer.At("/result/items/missing")!.AsArray());
        Assert.All(answer.At("/result/items/missing")!.AsArray(),
            item => Assert.Contains((string)item!, sheet.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Picture_of_a_record_shows_its_times()
    {
        var text = await PictureAsync(TerminationRecords.Path, TerminationRecords.Whole.ToJsonString());
        Assert.All(["mixed", "poured", "gel seen", "released", "undisturbed", "no load"],
            word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    /// <summary>Times centuries apart make no picture of any size.</summary>
    [Fact]
    public async Task Picture_of_times_far_apart_stays_small()
    {
        var body = TerminationRecords.Whole.With("/times/preparedAt", "1950-01-02T00:00:00Z")
            .With("/times/inServiceAt", "2199-01-01T00:00:00Z").ToJsonString();
        Assert.InRange((await PictureAsync(TerminationRecords.Path, body)).Length, 1, 2000);
    }

    [Fact]
    public async Task Picture_of_a_verification_says_what_came_of_it() =>
        Assert.Contains("differs", await PictureAsync(ArchivedAnswers.Path, ArchivedAnswers.Example("differs").ToJsonString()),
        StringComparison.Ordinal);

    /// <summary>A stop that was archived truly is still a stop: over it no sheet says go.</summary>
    [Fact]
    public async Task Sheet_of_a_verified_stop_says_no_go()
    {
        var request = Plans.Example("stop");
        var sheet = await service.PostAsync(ArchivedAnswers.Path + "/sheet",
            ArchivedAnswers.Of(Plans.Path, request, await service.AnswerAsync(Plans.Path, request)));
        Assert.DoesNotContain("GO AHEAD", sheet.Text, StringComparison.Ordinal);
        Assert.Contains(">MATCHES<", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("doNotProceed", sheet.Text, StringComparison.Ordinal);
    }

    private async Task<string> PictureAsync(string path, string body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post,
            path + "/sheet") { Content = new StringContent(body, System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);
        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        return XDocument.Parse(picture.Text).Root!.Value;
    }
}
