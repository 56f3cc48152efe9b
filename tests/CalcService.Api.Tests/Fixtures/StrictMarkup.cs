using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Pages and pictures as a strict parser sees them.</summary>
public static partial class StrictMarkup
{
    /// <summary>A picture, or a page whose elements without an end are closed; anything else that is no XML fails.</summary>
    public static XDocument Parse(string text) =>
        XDocument.Parse(Open().Replace(text.Replace("<!doctype html>", "", StringComparison.Ordinal), "<$1$2/>").TrimStart());

    [GeneratedRegex("<(meta|br|col|hr|link)\\b([^<>]*)>")]
    private static partial Regex Open();
}
