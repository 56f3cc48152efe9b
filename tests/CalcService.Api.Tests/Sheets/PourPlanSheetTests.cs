using System.Text.Json.Nodes;
using System.Xml.Linq;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

public sealed class PourPlanSheetTests(Service service)
{
    private const string Path = "/v1/pour-plans/sheet";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public async Task Sheet_says_what_the_answer_says()
    {
        foreach (var example in RequestExamples.Of("pour-plans"))
        {
            var answer = (await service.PostAsync("/v1/pour-plans", example.Body)).Json;
            var sheet = await service.PostAsync(Path, example.Body);

            Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
            var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
            Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
            Assert.All(answer["findings"]!.AsArray(),
                finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
            Assert.All(answer["safetyNotes"]!.AsArray(), note => Assert.Contains((string)note!["text"]!, text, StringComparison.Ordinal));
            Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
            Assert.Contains((string)answer["provenance"]!["resultDigest"]!, text, StringComparison.Ordinal);
        }
    }

    /// <summary>Nobody may take a quote or a plan for a go.</summary>
    [Theory]
    [InlineData("quote", "QUOTE ONLY")]
    [InlineData("plan", "PLAN ONLY")]
    [InlineData("pour", "GO AHEAD")]
    public async Task Sheet_says_largest_what_the_answer_is_for(string purpose, string word)
    {
        var text = (await service.PostAsync(Path, Plans.Plan.With("/purpose", purpose))).Text;
        Assert.Contains($"\">{word}", text, StringComparison.Ordinal);
        Assert.Equal(purpose == "pour", text.Contains("GO AHEAD", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Sheet_of_a_quote_prints_the_take_off_with_its_money()
    {
        var text = System.Net.WebUtility.HtmlDecode((await service.PostAsync(Path, Plans.Example("quote"))).Text);
        Assert.Contains("<td>kit large</td><td>1 and 1 spare</td><td>0</td><td>2</td><td>62.00</td><td>124.00</td>", text,
            StringComparison.Ordinal);
        Assert.Contains(
            "<td>cut and open</td><td>12 (per end)</td><td>25 min</td><td>300 min</td><td>request</td><td>60.00</td><td>300.00</td>", text,
            StringComparison.Ordinal);
        Assert.Contains("Materials 151.0114, labour 1363.50, total 1514.5114 (EUR, prices of 2026-04-01).", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheet_for_the_crew_prints_amounts_and_times_without_money()
    {
        var text = System.Net.WebUtility.HtmlDecode((await service.PostAsync(Path, Plans.Plan)).Text);
        Assert.Contains("<td>kit small</td><td>2</td><td>2</td><td>0</td></tr>", text, StringComparison.Ordinal);
        Assert.Contains("<td>seizing wire</td>", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Rate for an hour", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheet_runs_nothing_and_fetches_nothing()
    {
        var sheet = await service.PostAsync(Path, RequestExamples.Of("pour-plans")[0].Body);
        Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("(src|href)=", sheet.Text);
        Assert.Contains("default-src 'none'", sheet.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheet_encodes_what_the_client_sent()
    {
        var body = JsonNode.Parse(RequestExamples.Of("pour-plans")[0].Body)!;
        body["reference"] = "R&D \"7\"";
        var sheet = await service.PostAsync(Path, body);
        Assert.Contains("R&amp;D &quot;7&quot;", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Picture_draws_each_basket_to_one_scale()
    {
        var body = JsonNode.Parse(RequestExamples.Of("pour-plans")[0].Body)!;
        var larger = body["ends"]![0]!.DeepClone();
        larger["id"] = "B";
        larger["socket"]!["basket"]!["length"]!["value"] = 200;
        body["ends"]!.AsArray().Add(larger);

        using var request = new HttpRequestMessage(HttpMethod.Post,
            Path) { Content = new StringContent(body.ToJsonString(), System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);

        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        // The resin of a basket is drawn first; its corners are mouth left, mouth right, small end right, small end left.
        var resin = XDocument.Parse(picture.Text).Descendants(Svg + "polygon")
            .Where(polygon => (string?)polygon.Attribute("stroke") == "none").Select(Corners).ToArray();
        Assert.Equal(2, resin.Length);
        var scale = (resin[0][2].Y - resin[0][0].Y) / 100;
        Assert.Equal(200 * scale, resin[1][2].Y - resin[1][0].Y, .05);
        Assert.Equal(45 * scale, resin[0][1].X - resin[0][0].X, .05);
        Assert.Equal(23 * scale, resin[0][2].X - resin[0][3].X, .05);
    }

    [Theory]
    [InlineData("application/json", 406)]
    [InlineData("text/html;q=0.5, image/svg+xml;q=0", 200)]
    public async Task Sheet_is_a_page_or_a_picture(string accept, int status)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post,
            Path) { Content = new StringContent(RequestExamples.Of("pour-plans")[0].Body, System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Accept", accept);
        Assert.Equal(status, (await Reply.SendAsync(service.Client, request)).Status);
    }

    [Fact]
    public async Task Sheet_takes_no_query() =>
        Assert.Equal(400, (await service.PostAsync(Path + "?detail=full", RequestExamples.Of("pour-plans")[0].Body)).Status);

    private static (double X, double Y)[] Corners(XElement polygon) =>
        [.. ((string)polygon.Attribute("points")!).Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(point => point.Split(','))
            .Select(point => (Number(point[0]), Number(point[1])))];

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
