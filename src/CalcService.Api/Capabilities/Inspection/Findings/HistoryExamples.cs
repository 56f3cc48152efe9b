using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Inspection.Findings.InspectionExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Inspection.Findings;

/// <summary>Sizes, heat, substances and time.</summary>
internal static class HistoryExamples
{
    private const string Measured = "/rope/measuredDiameter", Highest = "/inspection/highestTemperature",
        Chemicals = "/inspection/chemicals", Made = "/inspection/socketedOn";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("diameter-reduced", Severity.Stop, Measured, end => end.With(Measured, Quantity(18.9, "mm"))),
        new("rope-thick", Severity.Unknown, Measured, end => end.With(Measured, Quantity(22, "mm"))),
        new("diameter-implausible", Severity.Unknown, "/inspection/baselineDiameter",
            end => Found(Mine(end), "baselineDiameter", Quantity(10.2, "mm")).With(Measured, Quantity(10.1, "mm"))),
        new("diameter-not-measured", Severity.Unknown, Measured, end => end.Without(Measured)),
        new("strength-lost", Severity.Stop, "/inspection/strengthLoss", end => Found(Mine(end), "strengthLoss", Quantity(11, "%"))),
        new("compound-not-known", Severity.Caution, "/compound", end => end.Without("/compound").With(Chemicals, new JsonArray())),
        new("highest-temperature-missing", Severity.Unknown, Highest, end => end.Without(Highest)),
        new("overheated", Severity.Stop, Highest, end => end.With(Highest, Quantity(61, "degC"))),
        new("perhaps-overheated", Severity.Unknown, Highest,
        end => end.Without("/compound").With(Chemicals, new JsonArray()).With(Highest, Quantity(116, "degC"))),
        new("chemicals-not-told", Severity.Caution, Chemicals, end => end.Without(Chemicals)),
        new("met-unlisted-chemical", Severity.Unknown, Chemicals + "/0", end => end.With(Chemicals, new JsonArray("brine"))),
        new("met-limited-chemical", Severity.Caution, Chemicals + "/0", end => end.With(Chemicals, new JsonArray("diesel"))),
        new("met-attacking-chemical", Severity.Stop, Chemicals + "/0", end => end.With(Chemicals, new JsonArray("acetone"))),
        new("socketing-date-missing", Severity.Unknown, Made, end => end.With("/ruleSet", "platform").Without(Made)),
        new("mine-medium-not-by-design", Severity.Unknown, "/attachment/resinByDesign",
        end => end.With("/attachment", new JsonObject { ["resinByDesign"] = "no" })),
        new("resocketing-overdue", Severity.Stop, Made, end => end.With("/ruleSet", "platform").With(Made, "2024-03-11")),
    ];
}
