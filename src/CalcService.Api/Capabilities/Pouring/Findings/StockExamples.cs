using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What lots and kits raise.</summary>
internal static class StockExamples
{
    public static IReadOnlyList<FindingExample> All { get; } =
    [
        .. AloneAndBesideAnother("lot-expired", "expiresOn", pour => pour.With(Lot + "/expiresOn", "2026-03-11")),
        .. AloneAndBesideAnother("lot-not-sealed", "state", pour => pour.With(Lot + "/state", "opened")),
        .. AloneAndBesideAnother("lot-quarantined", "quarantined", pour => pour.With(Lot + "/quarantined", "yes")),
        .. AloneAndBesideAnother("storage-outside-range", "storage/highest",
        pour => pour.With(Lot + "/storage/highest", Quantity(31, "degC"))),
        .. AloneAndBesideAnother("lot-expiry-missing", "expiresOn", pour => pour.Without(Lot + "/expiresOn"), Severity.Unknown),
        new("lot-reserved", Severity.Note, Lot + "/reservedFor", BesideAnother(pour => pour.With(Lot + "/reservedFor", "JOB-2"))),
        new("expiry-beyond-shelf-life", Severity.Caution, Lot + "/expiresOn", pour => pour.With(Lot + "/madeOn", "2025-06-01")),
        new("stock-short", Severity.Caution, "/stock", pour => pour.With("/ends/0/quantity", 9).With(Lot + "/count", 1)),
        new("facts-not-stated", Severity.Unknown, "/stock", pour => pour.Without("/stock")),
        // One small kit would fill three baskets, but the pot life is over after two.
        new("stock-does-not-divide", Severity.Caution, "/stock",
            pour => pour.With("/ends/0/quantity", 3).With("/crew/pourTime", Quantity(7, "min")).With(Lot + "/count", 1)),
        // More than half a cubic metre of compound in kits whose sizes have no common measure but the millilitre.
        new("budget-spent", Severity.Unknown, "/ends",
            pour => pour.With(Lot + "/count", 1).With(Sheet + "/kits/0/volume", Quantity(301, "mL"))
            .With("/ends/0/quantity", 1000).With(Rope + "/diameter", Quantity(40, "mm"))
            .With(Socket + "/breakingForce", Quantity(1200, "kN"))
            .With(Basket + "/smallEndDiameter", Quantity(46, "mm")).With(Basket + "/largeEndDiameter", Quantity(90, "mm"))
            .With(Basket + "/length", Quantity(200, "mm"))),
    ];

    /// <summary>Worse where the plan would need the lot, a note where another one does.</summary>
    private static IEnumerable<FindingExample> AloneAndBesideAnother(
        string code, string member, Func<JsonObject, JsonObject> change, Severity alone = Severity.Stop) =>
    [
        new(code, alone, $"{Lot}/{member}", change),
        new(code, Severity.Note, $"{Lot}/{member}", BesideAnother(change)),
    ];

    private static Func<JsonObject, JsonObject> BesideAnother(Func<JsonObject, JsonObject> change) => pour =>
    {
        var good = pour.At(Lot)!.DeepClone().AsObject().With("/lot", "B");
        return pour.With("/stock", new JsonArray(change(pour).At(Lot)!.DeepClone(), good));
    };
}
