using System.Text.Json.Nodes;
using System.Xml.Linq;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

public sealed class ProofLoadEvaluationSheetTests(Service service)
{
    private const string Path = Proofs.Path + "/sheet";

    [Fact]
    public async Task Sheet_says_what_the_answer_says()
    {
        foreach (var example in RequestExamples.Of("proof-load-evaluations"))
        {
            var answer = (await service.PostAsync(Proofs.Path, example.Body)).Json;
            var sheet = await service.PostAsync(Path, example.Body);

            Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
            var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
            Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
            Assert.All(answer["findings"]!.AsArray(),
                finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
            Assert.All(answer.At("/result/checks")!.AsArray(),
                check => Assert.Contains((string)check!["id"]!, text, StringComparison.Ordinal));
            Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task Sheet_that_says_no_says_it_of_the_end() =>
        Assert.Contains("FAILED", (await service.PostAsync(Path, Proofs.Example("creep"))).Text, StringComparison.Ordinal);

    [Fact]
    public async Task Picture_shows_a_cross_for_each_reading()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Path)
        {
            Content = new StringContent(Proofs.Example("after").ToJsonString(), System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);
        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        // Two axes, a tick at each of three loads, and two strokes for each of three readings.
        Assert.Equal(2 + 3 + 6, XDocument.Parse(picture.Text).Descendants("{http://www.w3.org/2000/svg}line").Count());
    }

    /// <summary>A rating of 123.7 kN isn't printed as 124, which would be a stop.</summary>
    [Fact]
    public async Task Load_limits_are_never_printed_beyond_themselves()
    {
        static JsonObject Force(double value) => new() { ["value"] = value, ["unit"] = "kN" };
        var request = Proofs.Example("before").With("/test/ratedLoad", Force(61.85)).With("/socket/proofRating", Force(123.7));
        var text = System.Net.WebUtility.HtmlDecode((await service.PostAsync(Proofs.Path + "/sheet", request)).Text);
        Assert.Contains("<td>123.7 kN</td>", text, StringComparison.Ordinal);
        Assert.DoesNotContain("124 kN", text, StringComparison.Ordinal);
    }
}
