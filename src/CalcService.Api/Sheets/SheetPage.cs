using System.Globalization;
using System.Net;
using System.Text.Json;
using CalcService.Api.Contract;

namespace CalcService.Api.Sheets;

/// <summary>The frame of every printable sheet: decision and findings first, cautions and provenance last.</summary>
public static class SheetPage
{
    private const string Style = """
        @page { size: A4; margin: 12mm 12mm 16mm }
        * { box-sizing: border-box }
        body { font: 10.5pt/1.35 "DejaVu Sans", Arial, sans-serif; color: #111; max-width: 186mm; margin: 6mm auto }
        header { display: flex; justify-content: space-between; align-items: flex-start;
          border-bottom: 2px solid #111; padding-bottom: 2mm }
        h1 { font-size: 17pt; margin: 0 }
        h2 { font-size: 12pt; margin: 4mm 0 1.5mm; break-after: avoid }
        p { margin: 0 0 1mm }
        .decision { border: 3px solid #111; padding: 2mm 4mm; font-size: 14pt; font-weight: bold; text-align: center }
        .doNotProceed { background: #111; color: #fff }
        table { border-collapse: collapse; width: 100%; break-inside: avoid }
        th, td { border: 1px solid #555; padding: 1.2mm 2mm; text-align: left; vertical-align: top }
        th { background: #eee; font-size: 9pt }
        table.long { break-inside: auto; font-size: 9.5pt }
        table.long th, table.long td { padding: .8mm 1.5mm }
        table.long td.fill { min-width: 14mm; height: auto }
        table.long tr { break-inside: avoid }
        .found td:last-child { font-size: 7.5pt; overflow-wrap: anywhere; width: 32mm }
        td.fill { min-width: 22mm; height: 9mm; background: #fff }
        ul { margin: 0; padding-left: 5mm; break-before: avoid }
        li { margin-bottom: .6mm }
        .picture { break-inside: avoid }
        .picture svg { width: 100%; height: auto; max-height: 62mm }
        .tall svg { max-height: 230mm }
        footer { margin-top: 5mm; border-top: 1px solid #555; padding-top: 1.5mm; font-size: 7.5pt; color: #333; overflow-wrap: anywhere }
        @media print { body { margin: 0; max-width: none }
          th, .doNotProceed { print-color-adjust: exact; -webkit-print-color-adjust: exact } }
        """;

    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["proceed"] = "GO AHEAD", ["proceedWithCare"] = "GO AHEAD WITH CARE", ["undetermined"] = "NOT DETERMINED",
    };

    /// <param name="title">What the sheet is.</param>
    /// <param name="subtitle">What it is for.</param>
    /// <param name="answer">The answer that it prints.</param>
    /// <param name="body">Writes the sheet's own part.</param>
    /// <param name="stop">How the sheet says no.</param>
    /// <param name="words">How it says the other decisions, where nobody may take them for a go.</param>
    public static string Write<TResult>(
        string title, string subtitle, Answer<TResult> answer, Action<SheetHtml> body, string stop = "DO NOT POUR",
        IReadOnlyDictionary<string, string>? words = null)
        where TResult : class
    {
        var decision = JsonNamingPolicy.CamelCase.ConvertName(answer.Decision.ToString());
        var page = new SheetHtml()
            .Raw($"<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" "
                + $"content=\"width=device-width\"><title>{WebUtility.HtmlEncode(title)}</title><style>{Style}</style></head><body>")
            .Raw("<header><div>").Add("h1", title).Add("p", subtitle).Raw("</div>")
            .Add("div", (words ?? Words).GetValueOrDefault(decision, stop), "decision " + decision).Raw("</header>");
        WriteFindings(page, answer.Findings);
        body(page);
        page.Add("h2", "Always").Raw("<ul>");
        foreach (var note in answer.SafetyNotes)
        {
            page.Add("li", note.Text);
        }

        page.Raw("</ul>");
        WriteFooter(page, answer.Provenance);
        return page.Raw("</body></html>").ToString();
    }

    private static void WriteFindings(SheetHtml page, IReadOnlyList<AnswerFinding> findings)
    {
        if (findings.Count == 0)
        {
            return;
        }

        page.Add("h2", "Found").Table(["Weight", "What", "Do", "Where in the request"], findings.Select(finding => new[]
        {
            finding.Severity.ToString().ToUpperInvariant(), finding.Message, finding.Action, finding.Pointer,
        }), "found");
    }

    private static void WriteFooter(SheetHtml page, AnswerProvenance from) => page
        .Raw("<footer>")
        .Add("div", $"Record {from.RecordId}")
        .Add("div", $"Result {from.ResultDigest}")
        .Add("div", $"Rules {from.Rules}, engine {from.Engine}, contract {from.Contract}; computed "
            + $"{from.ComputedAt.ToString("yyyy-MM-dd HH:mm:ss'Z'", CultureInfo.InvariantCulture)}"
            + (from.Compound is { } compound ? $"; compound {compound.Profile ?? "sheet of the request"} {compound.Digest}" : ""))
        .Raw("</footer>");
}
