using System.Globalization;
using System.Net;
using System.Text;

namespace CalcService.Api.Sheets;

/// <summary>A picture under construction: numbers are written the same in every culture, text is encoded.</summary>
public sealed class SvgText
{
    private readonly StringBuilder _svg = new();

    public SvgText(double width, double height, string title)
    {
        _svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width:0} {height:0}\" width=\"{width:0}\" height=\"{height:0}\" role=\"img\" font-family=\"DejaVu Sans, Arial, sans-serif\" font-size=\"12\">");
        _svg.Append(CultureInfo.InvariantCulture, $"<title>{WebUtility.HtmlEncode(title)}</title><rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>");
    }

    public SvgText Polygon(string fill, string stroke, params ReadOnlySpan<(double X, double Y)> points) => Points("polygon", fill, stroke, 1, "", points);

    public SvgText Polyline(string stroke, double width, string dashes, params ReadOnlySpan<(double X, double Y)> points) =>
        Points("polyline", "none", stroke, width, dashes, points);

    public SvgText Line(double x1, double y1, double x2, double y2, string stroke = "#222", double width = 1, string dashes = "")
    {
        _svg.Append(CultureInfo.InvariantCulture,
            $"<line x1=\"{x1:0.##}\" y1=\"{y1:0.##}\" x2=\"{x2:0.##}\" y2=\"{y2:0.##}\" stroke=\"{stroke}\" stroke-width=\"{width:0.##}\"{Dashed(dashes)}/>");
        return this;
    }

    /// <param name="x">Where it is anchored.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="bold">Whether it stands out.</param>
    /// <param name="colour">Its colour.</param>
    public SvgText Label(double x, double y, string text, string anchor = "middle", bool bold = false, string colour = "#111")
    {
        _svg.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{x:0.##}\" y=\"{y:0.##}\" text-anchor=\"{anchor}\" fill=\"{colour}\"{(bold ? " font-weight=\"bold\"" : "")}>{WebUtility.HtmlEncode(text)}</text>");
        return this;
    }

    public override string ToString() => _svg + "</svg>";

    private SvgText Points(string element, string fill, string stroke, double width, string dashes, ReadOnlySpan<(double X, double Y)> points)
    {
        _svg.Append(CultureInfo.InvariantCulture, $"<{element} points=\"");
        foreach (var (x, y) in points)
        {
            _svg.Append(CultureInfo.InvariantCulture, $"{x:0.##},{y:0.##} ");
        }

        _svg.Append(CultureInfo.InvariantCulture, $"\" fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\"{width:0.##}\"{Dashed(dashes)}/>");
        return this;
    }

    private static string Dashed(string dashes) => dashes.Length > 0 ? $" stroke-dasharray=\"{dashes}\"" : "";
}
