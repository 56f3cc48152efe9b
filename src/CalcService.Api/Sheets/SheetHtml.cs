using System.Net;
using System.Text;
using CalcService.Api.Pages;

namespace CalcService.Api.Sheets;

/// <summary>A page under construction: everything that goes in as text is encoded.</summary>
public sealed class SheetHtml
{
    private readonly StringBuilder _text = new();

    /// <summary>An element with text.</summary>
    public SheetHtml Add(string element, string text, string? cssClass = null)
    {
        _text.Append('<').Append(element);
        if (cssClass is not null)
        {
            _text.Append(" class=\"").Append(cssClass).Append('"');
        }

        _text.Append('>').Append(WebUtility.HtmlEncode(text)).Append("</").Append(element).Append(">\n");
        return this;
    }

    /// <summary>Markup of our own.</summary>
    public SheetHtml Raw(string markup)
    {
        _text.Append(markup).Append('\n');
        return this;
    }

    /// <summary>A table; an empty cell is a box to fill in by hand.</summary>
    public SheetHtml Table(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows, string? cssClass = null)
    {
        _text.Append(cssClass is null ? "<table><thead><tr>" : $"<table class=\"{cssClass}\"><thead><tr>");
        foreach (var title in head)
        {
            _text.Append("<th>").Append(WebUtility.HtmlEncode(title)).Append("</th>");
        }

        _text.Append("</tr></thead><tbody>\n");
        foreach (var row in rows)
        {
            _text.Append("<tr>");
            foreach (var cell in row)
            {
                _text.Append(cell.Length == 0 ? "<td class=\"fill\">" : "<td>").Append(WebUtility.HtmlEncode(cell)).Append("</td>");
            }

            _text.Append("</tr>\n");
        }

        _text.Append("</tbody></table>\n");
        return this;
    }

    /// <summary>The page; addresses of the documentation are links from where sheets are, /v1/…/sheet.</summary>
    public override string ToString() => PageAddress.Linked(_text.ToString(), "../../");
}
