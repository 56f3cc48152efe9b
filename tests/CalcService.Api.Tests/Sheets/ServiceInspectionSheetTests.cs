using System.Xml.Linq;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

public sealed class ServiceInspectionSheetTests(Service service)
{
    private const string Path = Inspections.Path + "/sheet";

    [Fact]
    public async Task Sheet_says_what_the_answer_says()
    {
        foreach (var example in RequestExamples.Of("service-inspections"))
        {
            var answer = (await service.PostAsync(Inspections.Path, example.Body)).Json;
            var sheet = await service.PostAsync(Path, example.Body);

            Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
            var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
            Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
            Assert.All(answer["findings"]!.AsArray(),
                finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
            Assert.All(answer.At("/result/checks")!.AsArray().Where(check => (string?)check!["outcome"] != "notApplicable"),
                check => Assert.Contains((string)check!["rule"]!, text, StringComparison.Ordinal));
            Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task Sheet_that_says_no_takes_the_end_out_of_service() =>
        Assert.Contains("TAKE OUT OF SERVICE", (await service.PostAsync(Path, Inspections.Example("withdraw"))).Text,
        StringComparison.Ordinal);

    [Fact]
    public async Task Picture_shows_the_wires_and_the_cut()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Path)
        {
            Content = new StringContent(Inspections.Example("withdraw").ToJsonString(), System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);
        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        Assert.Contains("cut here: 915 mm", XDocument.Parse(picture.Text).Root!.Value, StringComparison.Ordinal);
    }
}
