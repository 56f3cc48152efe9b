using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What rope and socket raise.</summary>
internal static class FitExamples
{
    private const string Serving = "/ends/0/servingInBasket", ServingDiameter = "/ends/0/servingDiameter";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("rope-does-not-enter", Severity.Stop, Basket + "/smallEndDiameter",
            pour => pour.With(Basket + "/smallEndDiameter", Quantity(20, "mm"))),
        new("rope-loose", Severity.Note, Basket + "/smallEndDiameter", pour => pour.With(Rope + "/diameter", Quantity(11, "mm"))),
        new("rope-loose", Severity.Stop, Basket + "/smallEndDiameter",
            pour => pour.With(Basket + "/smallEndDiameter", Quantity(60, "mm")).With(Basket + "/largeEndDiameter", Quantity(75, "mm"))),
        new("wires-do-not-fit", Severity.Stop, Basket,
            pour => pour.With(Rope + "/metallicArea", Quantity(310, "mm2")).With(Basket + "/smallEndDiameter", Quantity(20.6, "mm"))),
        new("fit-depends-on-tolerance", Severity.Caution, Basket + "/tolerance",
        pour => pour.With(Basket + "/tolerance", Quantity(3, "mm"))),
        new("rope-area-unknown", Severity.Unknown, Rope + "/construction", pour => pour.With(Rope + "/construction", "locked coil")),
        new("wire-fit-unknown", Severity.Unknown, Rope + "/wireCount",
            pour => pour.With(Rope + "/construction", "locked coil").With(Rope + "/metallicArea", Quantity(184, "mm2"))),
        new("rope-identity-missing", Severity.Unknown, Rope + "/core", pour => pour.Without(Rope + "/core")),
        new("rope-fact-missing", Severity.Caution, Rope + "/finish", pour => pour.Without(Rope + "/finish")),
        new("grade-above-ordinary", Severity.Caution, Rope + "/grade", pour => pour.With(Rope + "/grade", 2160)),
        new("stainless-rope", Severity.Caution, Rope + "/finish", pour => pour.With(Rope + "/finish", "stainless")),
        new("socket-weaker-than-rope", Severity.Stop, Socket + "/breakingForce",
        pour => pour.With(Socket + "/breakingForce", Quantity(240, "kN"))),
        new("basket-no-cone", Severity.Stop, Basket, pour => pour.With(Basket + "/largeEndDiameter", Quantity(26, "mm"))),
        new("basket-too-short", Severity.Stop, Basket + "/length",
            pour => pour.With(Basket + "/length", Quantity(39, "mm")).With(Basket + "/largeEndDiameter", Quantity(34, "mm"))),
        new("basket-too-short", Severity.Unknown, Basket + "/length",
            pour => pour.With(Basket + "/length", Quantity(79, "mm")).With(Basket + "/largeEndDiameter", Quantity(40, "mm"))),
        new("breaking-force-implausible", Severity.Unknown, Rope + "/certificate/breakingForce",
            pour => pour.With(Rope + "/certificate", new JsonObject { ["breakingForce"] = Quantity(150, "kN") })),
        new("rope-thin", Severity.Unknown, Rope + "/measuredDiameter", pour => pour.With(Rope + "/measuredDiameter", Quantity(18.4, "mm"))),
        new("rope-thick", Severity.Unknown, Rope + "/measuredDiameter", pour => pour.With(Rope + "/measuredDiameter", Quantity(22, "mm"))),
        new("rope-outside-socket-range", Severity.Caution, Socket + "/ropeRange",
            pour => pour.With(Socket + "/ropeRange",
            new JsonObject { ["minimum"] = Quantity(14, "mm"), ["maximum"] = Quantity(19, "mm") })),
        new("socket-metal-unfit", Severity.Stop, Socket + "/material/kind", pour => pour.With(Socket + "/material/kind", "greyIron")),
        new("socket-metal-unfit", Severity.Unknown, Socket + "/material/kind", pour => pour.With(Socket + "/material/kind", "ductileIron")),
        new("basket-short", Severity.Note, Basket + "/length", pour => pour.With(Basket + "/length", Quantity(95, "mm"))),
        new("cone-angle-unusual", Severity.Note, Basket, pour => pour.With(Basket + "/largeEndDiameter", Quantity(60, "mm"))),
        new("geometry-from-memory", Severity.Caution, Basket + "/sizesFrom", pour => pour.With(Basket + "/sizesFrom", "memory")),
        new("serving-shortens-grip", Severity.Caution, Serving,
        pour => pour.With(Serving, Quantity(20, "mm")).With(ServingDiameter, Quantity(22.2, "mm"))),
        new("serving-fit-unknown", Severity.Unknown, ServingDiameter, pour => pour.With(Serving, Quantity(20, "mm"))),
        new("serving-does-not-fit", Severity.Stop, ServingDiameter,
        pour => pour.With(Serving, Quantity(20, "mm")).With(ServingDiameter, Quantity(24, "mm"))),
        new("vent-small-basket", Severity.Note, Rope + "/diameter", pour => pour.With(Rope + "/diameter", Quantity(16, "mm"))),
    ];
}
