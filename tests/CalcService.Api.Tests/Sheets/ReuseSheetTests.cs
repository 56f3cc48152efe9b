using System.Globalization;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

public sealed class ReuseSheetTests(Service service)
{
    private const string Path = Reuses.Path + "/sheet";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Theory]
    [MemberData(nameof(Reuses.Names), MemberType = typeof(Reuses))]
    public async Task Sheet_says_what_the_answer_says(string example)
    {
        var answer = await service.AnswerAsync(Reuses.Path, Reuses.Example(example));
        var sheet = await service.PostAsync(Path, Reuses.Example(example));
        Assert.Equal((200, "text/html"), (sheet.Status, sheet.MediaType));
        var text = System.Net.WebUtility.HtmlDecode(sheet.Text);
        Assert.Contains($"decision {(string?)answer["decision"]}", text, StringComparison.Ordinal);
        Assert.All(answer["findings"]!.AsArray(), finding => Assert.Contains((string)finding!["message"]!, text, StringComparison.Ordinal));
        Assert.All(answer["safetyNotes"]!.AsArray(), note => Assert.Contains((string)note!["text"]!, text, StringComparison.Ordinal));
        Assert.All(answer.At("/result/work")!.AsArray(), work => Assert.Contains((string)work!["task"]!, text, StringComparison.Ordinal));
        Assert.All(answer.At("/result/checks")!.AsArray(),
            check => Assert.Contains(((string)check!["id"]!).Replace('-', ' '), text, StringComparison.Ordinal));
        Assert.Contains((string)answer["provenance"]!["recordId"]!, text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", sheet.Text, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>A sound socket that is only too small for this rope is not withdrawn on paper either.</summary>
    [Fact]
    public async Task Sheet_of_a_sound_socket_for_another_rope_says_no_without_withdrawing_it()
    {
        var sheet = (await service.PostAsync(Path, Reuses.Sound.With("/intended/rope/diameter/value", 26))).Text;
        Assert.Contains("NOT FOR THIS USE", sheet, StringComparison.Ordinal);
        Assert.Contains("Reuse: the socket may be poured again", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("WITHDRAW", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("Take the socket out of use", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheet_encodes_what_the_client_sent()
    {
        var sheet = await service.PostAsync(Path, Reuses.Sound.With("/limits/source", "R&D \"7\"").With("/socket/id", "A&B"));
        Assert.Contains("R&amp;D &quot;7&quot;", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("A&amp;B", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Picture_draws_drawing_and_sections_to_one_scale_and_wear_against_its_limit()
    {
        var picture = await PictureAsync(Reuses.Sound);
        var walls = picture.Descendants(Svg + "polygon").Select(Points).ToArray();
        // Left wall, then right: mouth inside, mouth outside, small end outside, small end inside.
        var right = walls[1];
        var scale = (right[3].Y - right[0].Y) / 100;
        Assert.Equal((70 - 45) / 2.0 * scale, right[1].X - right[0].X, .05);
        Assert.Equal((70 - 23) / 2.0 * scale, right[2].X - right[3].X, .05);

        var sections = Lines(picture, "2").Where(line => line.Y1 == line.Y2).ToArray();
        Assert.Equal([23.2 * scale, 34.2 * scale, 45.1 * scale], sections.Select(line => line.X2 - line.X1),
            (a, b) => Math.Abs(a - b) < .05);
        Assert.Equal([right[3].Y, right[3].Y - (50 * scale), right[0].Y], sections.Select(line => line.Y1),
            (a, b) => Math.Abs(a - b) < .05);

        // Three sections of growth, then three of ovality; the dashed line is the limit of 2 %.
        var bars = Lines(picture, "7").ToArray();
        var limit = Lines(picture, "1.4").First();
        Assert.Equal(.2 / 23 / .02, (bars[0].X2 - bars[0].X1) / (limit.X1 - bars[0].X1), .002);
        Assert.Equal(6, bars.Length);
    }

    [Fact]
    public async Task Picture_of_a_socket_that_nobody_measured_still_shows_its_drawing()
    {
        var picture =
            await PictureAsync(Reuses.Sound.Without("/socket/measured").Without("/limits").Without("/socket/nominal/outerDiameter"));
        Assert.Equal(2, picture.Descendants(Svg + "polygon").Count());
        Assert.Contains("not been measured", picture.ToString(), StringComparison.Ordinal);
        Assert.Contains("no limit given", picture.ToString(), StringComparison.Ordinal);
    }

    private static IEnumerable<(double X1, double Y1, double X2, double Y2)> Lines(XDocument picture, string width) =>
        picture.Descendants(Svg + "line")
        .Where(line => (string?)line.Attribute("stroke-width") == width)
        .Select(line => (Number(line, "x1"), Number(line, "y1"), Number(line, "x2"), Number(line, "y2")));

    private static double Number(XElement element, string attribute) =>
        double.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);

    private static (double X, double Y)[] Points(XElement shape) =>
        [.. ((string)shape.Attribute("points")!).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(point =>
        {
            var parts = point.Split(',').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToArray();
            return (parts[0], parts[1]);
        })];

    private async Task<XDocument> PictureAsync(JsonObject body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Path)
        {
            Content = new StringContent(body.ToJsonString(), System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", "image/svg+xml");
        var picture = await Reply.SendAsync(service.Client, request);
        Assert.Equal((200, "image/svg+xml"), (picture.Status, picture.MediaType));
        return XDocument.Parse(picture.Text);
    }
}
