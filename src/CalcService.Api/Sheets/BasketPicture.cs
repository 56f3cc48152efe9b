using System.Globalization;
using System.Net;
using System.Text;
using CalcService.Api.Answers;
using CalcService.Api.Units;

namespace CalcService.Api.Sheets;

/// <summary>A basket to draw.</summary>
public sealed record BasketSection(string Id, Quantity Rope, Quantity SmallEnd, Quantity LargeEnd, Quantity Length, string Resin);

/// <summary>Sections through baskets, all to one scale, mouth up as they are poured.</summary>
public static class BasketPicture
{
    private const double Cell = 170;
    private const double Height = 230;
    private const double Top = 34;
    private const double RopeBelow = 46;
    private const int Wires = 9;

    public static string Write(IReadOnlyList<BasketSection> sections)
    {
        var widest = sections.Max(section => section.LargeEnd.Si);
        var longest = sections.Max(section => section.Length.Si);
        var scale = Math.Min((Cell - 70) / widest, (Height - Top - RopeBelow - 34) / longest);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Cell * sections.Count:0} {Height:0}\" "
                + $"width=\"{Cell * sections.Count:0}\" height=\"{Height:0}\" role=\"img\" font-family=\"DejaVu Sans, Arial, sans-serif\" "
                + $"font-size=\"9\">");
        svg.Append("<title>Baskets in section, to one scale</title><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>");
        for (var i = 0; i < sections.Count; i++)
        {
            Draw(svg, sections[i], (i + .5) * Cell, scale);
        }

        return svg.Append("</svg>").ToString();
    }

    private static void Draw(StringBuilder svg, BasketSection section, double x, double scale)
    {
        var (small, large, rope) = (section.SmallEnd.Si * scale / 2, section.LargeEnd.Si * scale / 2, section.Rope.Si * scale / 2);
        var bottom = Top + (section.Length.Si * scale);
        var wall = Math.Max(5, large * .35);

        // Resin, then the socket's wall on both sides of it, hatched by a darker edge.
        Polygon(svg, "#e8dcc0", "none", (x - large, Top), (x + large, Top), (x + small, bottom), (x - small, bottom));
        foreach (var side in (double[])[-1, 1])
        {
            Polygon(svg, "#9aa3ab", "#222", (x + (side * large), Top), (x + (side * (large + wall)), Top),
                (x + (side * (small + wall)), bottom), (x + (side * small), bottom));
        }

        Polygon(svg, "#5d666e", "#222", (x - rope, bottom), (x + rope, bottom), (x + rope, bottom + RopeBelow - 16),
            (x - rope, bottom + RopeBelow - 16));
        for (var w = 0; w < Wires; w++)
        {
            var place = (2.0 * w / (Wires - 1)) - 1;
            Line(svg, x + (place * rope * .92), bottom, x + (place * large * .92), Top + 4, "#5d666e", 1.4);
        }

        Label(svg, x, 14, section.Id, bold: true);
        Label(svg, x, 26, "mouth " + AnswerText.Of(section.LargeEnd, 4));
        Label(svg, x, Height - 24, $"small end {AnswerText.Of(section.SmallEnd, 4)}, rope {AnswerText.Of(section.Rope, 4)}");
        Label(svg, x, Height - 12, "resin " + section.Resin);
        var at = x + large + wall + 8;
        Line(svg, at, Top, at, bottom, "#222", .8);
        Line(svg, at - 3, Top, at + 3, Top, "#222", .8);
        Line(svg, at - 3, bottom, at + 3, bottom, "#222", .8);
        svg.Append(CultureInfo.InvariantCulture, $"<text transform=\"translate({at + 9:0.##} {(Top + bottom) / 2:0.##}) rotate(-90)\" "
            + $"text-anchor=\"middle\">{WebUtility.HtmlEncode(AnswerText.Of(section.Length, 4))}</text>");
    }

    private static void Polygon(StringBuilder svg, string fill, string stroke, params ReadOnlySpan<(double X, double Y)> points)
    {
        svg.Append("<polygon points=\"");
        foreach (var (px, py) in points)
        {
            svg.Append(CultureInfo.InvariantCulture, $"{px:0.##},{py:0.##} ");
        }

        svg.Append(CultureInfo.InvariantCulture, $"\" fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\".8\"/>");
    }

    private static void Line(StringBuilder svg, double x1, double y1, double x2, double y2, string stroke, double width) =>
        svg.Append(CultureInfo.InvariantCulture,
        $"<line x1=\"{x1:0.##}\" y1=\"{y1:0.##}\" x2=\"{x2:0.##}\" y2=\"{y2:0.##}\" stroke=\"{stroke}\" stroke-width=\"{width:0.##}\"/>");

    private static void Label(StringBuilder svg, double x, double y, string text, bool bold = false) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x:0.##}\" y=\"{y:0.##}\" "
            + $"text-anchor=\"middle\"{(bold ? " font-weight=\"bold\"" : "")}>{WebUtility.HtmlEncode(text)}</text>");
}
