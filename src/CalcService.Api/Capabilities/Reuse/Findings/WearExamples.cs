using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Reuse.Findings.ReuseExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Reuse.Findings;

/// <summary>Wear, strength and loads.</summary>
internal static class WearExamples
{
    private const string Stations = Found + "/stations", Holes = Found + "/pinHoleDiameters";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("limit-implausible", Severity.Unknown, "/limits/earSpread", socket => socket.With("/limits/earSpread", Quantity(50, "%"))),
        new("wear-limits-missing", Severity.Unknown, "/limits/source", socket => socket.Without("/limits/source")),
        new("worn-without-limit", Severity.Unknown, "/limits/earThicknessLoss",
            socket => socket.Without("/limits/earThicknessLoss").With(Found + "/earThickness", Quantity(12.8, "mm"))),
        new("reading-too-coarse", Severity.Unknown, Found + "/pitDepth",
            socket => socket.With(Found + "/pitDepth", Quantity(.75, "mm")).With(Found + "/uncertainty", Quantity(.1, "mm"))),
        new("facts-taken", Severity.Caution, Found + "/earWidth", socket => socket.Without(Found + "/earWidth")),
        new("remaining-strength-unsure", Severity.Unknown, Found + "/uncertainty",
            socket => socket.With("/socket/breakingForce", Quantity(258, "kN")).With(Found + "/uncertainty", Quantity(.1, "mm"))),
        new("pin-thicker-than-hole", Severity.Unknown, Found + "/pinDiameter",
            socket => socket.With(Found + "/pinDiameter", Quantity(36.7, "mm"))),
        new("size-not-as-drawn", Severity.Unknown, Found + "/earThickness",
            socket => socket.With(Found + "/earThickness", Quantity(18, "mm"))),
        new("half-worn-away", Severity.Stop, Found + "/earThickness", socket => socket.With(Found + "/earThickness", Quantity(5.3, "mm"))),
        new("wear-measurement-missing", Severity.Unknown, Found + "/earGap", socket => socket.Without(Found + "/earGap")),
        new("drawing-size-missing", Severity.Unknown, Drawn + "/earWidth", socket => socket.Without(Drawn + "/earWidth")),
        new("bore-worn", Severity.Stop, Stations, socket => Bore(socket, 0, 23.5, 23.6)),
        new("bore-oval", Severity.Stop, Stations, socket => Bore(socket, 0, 22.8, 23.3)),
        new("taper-lost", Severity.Stop, Stations, socket => Bore(socket, 0, 23.4, 23.4).With("/limits/taperLoss", Quantity(1.5, "%"))),
        new("pin-hole-worn", Severity.Stop, Holes, socket => socket.With(Holes, new JsonArray(Quantity(38.4, "mm"), Quantity(38.4, "mm")))),
        new("pin-hole-oval", Severity.Stop, Holes, socket => socket.With(Holes, new JsonArray(Quantity(37.4, "mm"), Quantity(36.6, "mm")))),
        new("pin-worn", Severity.Caution, Found + "/pinDiameter", socket => socket.With(Found + "/pinDiameter", Quantity(34.2, "mm"))),
        new("ears-spread", Severity.Stop, Found + "/earGap", socket => socket.With(Found + "/earGap", Quantity(41.5, "mm"))),
        new("ear-thin", Severity.Stop, Found + "/earThickness", socket => socket.With(Found + "/earThickness", Quantity(15.1, "mm"))),
        new("ear-narrow", Severity.Stop, Found + "/earWidth", socket => socket.With(Found + "/earWidth", Quantity(77, "mm"))
            .With("/limits/earWidthLoss", Quantity(2, "%"))),
        new("ear-end-worn", Severity.Stop, Found + "/earEndDistance",
            socket => socket.With(Found + "/earEndDistance", Quantity(39, "mm")).With("/limits/earEndDistanceLoss", Quantity(2, "%"))),
        new("outside-worn", Severity.Stop, Found + "/outerDiameter", socket => socket.With(Found + "/outerDiameter", Quantity(69, "mm"))
            .With("/limits/outsideLoss", Quantity(1, "%"))),
        new("pits-deep", Severity.Stop, Found + "/pitDepth", socket => socket.With(Found + "/pitDepth", Quantity(.9, "mm"))),
        new("rated-load-missing", Severity.Unknown, Socket + "/ratedLoad", socket => socket.Without(Socket + "/ratedLoad")),
        new("yields-at-proof-load", Severity.Stop, Found + "/earThickness",
            socket => socket.With(Socket + "/material/yieldStrength", Quantity(120, "MPa"))),
        new("pin-yields-at-proof-load", Severity.Stop, Found + "/pinDiameter",
        socket => socket.With(Socket + "/pin/yieldStrength", Quantity(200, "MPa"))),
        new("yields-at-proof-load", Severity.Unknown, Socket + "/pin/yieldStrength",
            socket => socket.Without(Socket + "/pin").With(Socket + "/proofRating", Quantity(200, "kN"))
                .With("/intended/proofLoad", Quantity(170, "kN"))),
        new("stress-above-design", Severity.Caution, Found + "/pinDiameter",
        socket => socket.With(Socket + "/pin/yieldStrength", Quantity(300, "MPa"))),
        new("pin-steel-assumed", Severity.Note, Socket + "/pin/yieldStrength", socket => socket.Without(Socket + "/pin/yieldStrength")),
        new("bail-not-computed", Severity.Unknown, Socket + "/type", socket => socket.With(Socket + "/type", "closed")),
        new("intended-load-above-rating", Severity.Stop, "/intended/ratedLoad",
        socket => socket.With("/intended/ratedLoad", Quantity(55, "kN"))),
        new("proof-above-socket-rating", Severity.Stop, Socket + "/proofRating",
        socket => socket.With("/intended/proofLoad", Quantity(125, "kN"))),
        new("socket-breaking-force-missing", Severity.Unknown, Socket + "/breakingForce",
            socket => socket.Without(Socket + "/breakingForce")),
        new("intended-rope-strength-missing", Severity.Unknown, "/intended/rope/certificate/breakingForce",
            socket => socket.Without("/intended/rope/certificate").Without("/intended/rope/grade")),
    ];

    private static JsonObject Bore(JsonObject socket, int station, double first, double second) =>
        socket.With($"{Stations}/{station}/diameters", new JsonArray(Quantity(first, "mm"), Quantity(second, "mm")));
}
