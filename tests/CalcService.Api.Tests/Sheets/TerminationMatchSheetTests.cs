using System.Globalization;
using System.Xml.Linq;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

public sealed class TerminationMatchSheetTests(Service service)
{
    private const string Path = Matches.Path + "/sheet";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public async Task Sheet_says_what_the_answer_says()
    {
        foreach (var example in RequestExamples.Of("termination-matches"))
        {
            var answer = (await service.PostAsync(Matches.Path, example.Body)).Json;
            var sheet = await service.PostAsync(Path, example.Body);

            Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
            var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
            Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
            Assert.All(answer["findings"]!.AsArray(),
                finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
            Assert.All(answer["safetyNotes"]!.AsArray(), note => Assert.Contains((string)note!["text"]!, text, StringComparison.Ordinal));
            Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task Sheet_that_says_no_says_it_of_rope_and_socket() =>
        Assert.Contains("DO NOT USE TOGETHER", (await service.PostAsync(Path, Matches.Example("stop"))).Text, StringComparison.Ordinal);

    [Fact]
    public async Task Sheet_encodes_what_the_client_sent() =>
        Assert.Contains("R&amp;D &quot;7&quot;", (await service.PostAsync(Path, Matches.Match.With("/reference", "R&D \"7\""))).Text,
        StringComparison.Ordinal);

    [Fact]
    public async Task Picture_draws_the_socket_to_scale()
    {
        var polygons = (await PictureAsync("match")).Descendants(Svg + "polygon").Select(Points).ToArray();
        // The cone first, then a wall on each side: mouth inside, mouth outside, small end outside, small end inside.
        var (cone, wall) = (polygons[0], polygons[2]);
        var scale = (cone[2].Y - cone[0].Y) / 100;
        Assert.Equal(45 * scale, cone[1].X - cone[0].X, .05);
        Assert.Equal(23 * scale, cone[2].X - cone[3].X, .05);
        Assert.Equal((70 - 45) / 2.0 * scale, wall[1].X - wall[0].X, .05);
        Assert.Equal((40 - 23) / 2.0 * scale, wall[2].X - wall[3].X, .05);
    }

    [Fact]
    public async Task Picture_draws_what_the_answer_says_place_by_place()
    {
        var profile = (await service.AnswerAsync(Matches.Path, Matches.Match)).At("/result/loadTransfer/cases/0/profile")!.AsArray();
        var pressures = profile.Select(place => (double)place!["pressure"]!["value"]!).ToArray();
        var forces = profile.Select(place => (double)place!["forceLeft"]!["value"]!).ToArray();
        // The load in service is drawn last, over the others: its pressure, then its load.
        var curves = (await PictureAsync("match")).Descendants(Svg + "polyline").Select(Points)
            .Where(points => points.Length == profile.Count).ToArray();
        var (pressure, load) = (curves[^2], curves[^1]);
        IsDrawn(pressures, pressure);
        IsDrawn(forces, load);
    }

    [Fact]
    public async Task Picture_without_a_load_transfer_still_shows_the_socket()
    {
        var sheet = await service.PostAsync(Path, Matches.Match.Without("/rope/construction").Without("/rope/core"));
        Assert.Equal(200, sheet.Status);
        Assert.Contains("is not computed", sheet.Text, StringComparison.Ordinal);
    }

    /// <summary>A straight line from value to place on the paper, the same at every point.</summary>
    private static void IsDrawn(double[] values, (double X, double Y)[] points)
    {
        var (from, to) = (points[^1].X, points[0].X);
        Assert.True(to > from);
        for (var i = 0; i < values.Length; i++)
        {
            Assert.Equal(from + ((to - from) * (values[i] - values[^1]) / (values[0] - values[^1])), points[i].X, .02);
        }
    }

    private async Task<XDocument> PictureAsync(string example)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Path)
        {
            Content = new StringContent(Matches.Example(example).ToJsonString(), System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);
        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        return XDocument.Parse(picture.Text);
    }

    private static (double X, double Y)[] Points(XElement shape) =>
        [.. ((string)shape.Attribute("points")!).Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(point => point.Split(','))
            .Select(point => (double.Parse(point[0], CultureInfo.InvariantCulture), double.Parse(point[1], CultureInfo.InvariantCulture)))];
}
