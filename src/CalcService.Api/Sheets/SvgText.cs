using System.Globalization;
using System.Net;
using System.Text;

namespace CalcService.Api.Sheets;

/// <summary>A picture under construction: everything that goes in as text is encoded.</summary>
public sealed class SvgText
{
    public const string Ink = "#222";

    private readonly StringBuilder _svg = new();
    private readonly double _width;
    private readonly double _height;

    public SvgText(double width, double height, string title, int fontSize = 9)
    {
        (_width, _height) = (width, height);
        _svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width:0} {height:0}\" width=\"{width:0}\" height=\"{height:0}\" "
                + $"role=\"img\" font-family=\"DejaVu Sans, Arial, sans-serif\" font-size=\"{fontSize}\">");
        _svg.Append("<title>").Append(WebUtility.HtmlEncode(title)).Append("</title><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>");
    }

    /// <summary>Pictures below each other in one.</summary>
    public static string Stack(string title, IReadOnlyList<SvgText> pictures)
    {
        var stack = new SvgText(pictures.Max(picture => picture._width), pictures.Sum(picture => picture._height), title);
        var y = 0.0;
        foreach (var picture in pictures)
        {
            stack._svg.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate(0 {y:0.##})\">").Append(picture).Append("</g>");
            y += picture._height;
        }

        return stack.ToString();
    }

    public SvgText Line(double x1, double y1, double x2, double y2, string stroke = Ink, double width = .8, string dash = "")
    {
        _svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{x1:0.##}\" y1=\"{y1:0.##}\" x2=\"{x2:0.##}\" y2=\"{y2:0.##}\" "
            + $"stroke=\"{stroke}\" stroke-width=\"{width:0.##}\"{Dash(dash)}/>");
        return this;
    }

    public void Box(double x, double y, double width, double height, string fill, string stroke = "none", string? title = null)
    {
        _svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{x:0.##}\" y=\"{y:0.##}\" width=\"{width:0.##}\" height=\"{height:0.##}\" "
            + $"fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\".6\"");
        _svg.Append(title is null ? "/>" : $"><title>{WebUtility.HtmlEncode(title)}</title></rect>");
    }

    /// <summary>An open line through points.</summary>
    public SvgText Path(IEnumerable<(double X, double Y)> points, string stroke, double width, string? cssClass = null, string dash = "") =>
        Points("polyline", points,
        $"fill=\"none\" stroke=\"{stroke}\" stroke-width=\"{width.ToString("0.##", CultureInfo.InvariantCulture)}\"{Dash(dash)}", cssClass);

    /// <summary>A filled area.</summary>
    public SvgText Area(IEnumerable<(double X, double Y)> points, string fill, string? cssClass = null, string stroke = "none") =>
        Points("polygon", points, $"fill=\"{fill}\" stroke=\"{stroke}\"", cssClass);

    /// <param name="x">Where it is anchored.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="bold">Whether it stands out.</param>
    /// <param name="colour">Its colour.</param>
    public SvgText Label(double x, double y, string text, string anchor = "middle", bool bold = false, string colour = Ink)
    {
        _svg.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{x:0.##}\" y=\"{y:0.##}\" text-anchor=\"{anchor}\" "
                + $"fill=\"{colour}\"{(bold ? " font-weight=\"bold\"" : "")}>{WebUtility.HtmlEncode(text)}</text>");
        return this;
    }

    public override string ToString() => _svg + "</svg>";

    private static string Dash(string dash) => dash.Length == 0 ? "" : $" stroke-dasharray=\"{dash}\"";

    private SvgText Points(string element, IEnumerable<(double X, double Y)> points, string style, string? cssClass)
    {
        _svg.Append('<').Append(element).Append(cssClass is null ? "" : $" class=\"{cssClass}\"").Append(" points=\"");
        foreach (var (x, y) in points)
        {
            _svg.Append(CultureInfo.InvariantCulture, $"{x:0.##},{y:0.##} ");
        }

        _svg.Append("\" ").Append(style).Append("/>");
        return this;
    }
}
