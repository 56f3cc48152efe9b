using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What the compound's sheet raises, and a crew that means to do otherwise.</summary>
internal static class SheetExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("sheet-silent", Severity.Unknown, Sheet + "/potLife", pour => pour.Without(Sheet + "/potLife")),
        new("compound-demonstration", Severity.Caution, "/compound",
        pour => pour.With("/compound", new JsonObject { ["profile"] = "demonstration" })),
        new("sheet-old", Severity.Caution, Sheet + "/issuedOn", pour => pour.With(Sheet + "/issuedOn", "2024-03-11")),
        new("dose-contradicts-sheet", Severity.Stop, "/dose/perKit", pour => pour.With("/dose", new JsonObject { ["perKit"] = 2 })),
        new("dose-above-maximum", Severity.Stop, "/dose/perKit",
            pour => pour.With(Sheet + "/maximumDoses", 2).With("/dose", new JsonObject { ["perKit"] = 5 })),
        new("dose-after-hardener", Severity.Stop, "/dose/added",
        pour => pour.With("/dose", new JsonObject { ["added"] = "afterHardener" })),
    ];
}
