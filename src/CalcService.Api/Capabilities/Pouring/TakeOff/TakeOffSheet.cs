using System.Globalization;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using static CalcService.Api.Sheets.SheetText;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>
/// The take-off in print: what to order and bring, and how long it takes. Money is printed only where the request asks
/// for a quote: the sheet on the wall of the shop is for the crew.
/// </summary>
public static class TakeOffSheet
{

    public static void Write(SheetHtml page, PlannedTakeOff takeOff, bool isQuote)
    {
        Table(page.Add("h2", "Take-off"), ["What", "Needed", "From the shelf", "To get", "Price", "Cost"],
            [.. takeOff.Kits.Select(Kit), Doses(takeOff.Doses), .. takeOff.Materials.Select(Material)], isQuote);
        if (isQuote)
        {
            Table(page, ["Work", "Times", "Each", "In all", "Time from", "Rate for an hour", "Cost"], takeOff.Labour.Select(Labour),
                isQuote);
        }

        foreach (var line in Lines(takeOff, isQuote))
        {
            page.Add("p", line);
        }
    }

    private static IEnumerable<string> Lines(PlannedTakeOff takeOff, bool isQuote)
    {
        if (isQuote)
        {
            var totals = takeOff.Totals;
            yield return $"Materials {Money(totals.Materials)}, labour {Money(totals.Labour)}, total {Money(totals.Total)}"
                + (takeOff.Currency is { } currency ? $" ({currency}" : " (currency not said")
                + (takeOff.PriceDate is { } day ? $", prices of {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)})." : ").");
        }

        if (isQuote && takeOff.Missing.Count > 0)
        {
            yield return $"Missing for the sums: {string.Join(", ", takeOff.Missing)}.";
        }

        if (takeOff.Waste is { } waste)
        {
            yield return $"Mixed {Or(waste.Mixed)} for {Or(waste.Needed)}: {Or(waste.Leftover)} left over, {Or(waste.Share)}.";
        }

        if (takeOff.LeadTime is { } lead)
        {
            yield return $"What has to be bought is there {Or(lead)} after the order.";
        }

        if (takeOff.DangerousGoods is { } goods)
        {
            yield return $"Dangerous goods: {goods}.";
        }
    }

    /// <summary>A table whose last two columns are money.</summary>
    private static void Table(SheetHtml page, string[] head, IEnumerable<string[]> rows, bool isQuote) =>
        page.Table(isQuote ? head : head[..^2], rows.Select(row => isQuote ? row : row[..^2]));

    private static string[] Kit(TakeOffKits kit) =>
    [
        $"kit {kit.Kit}{(kit.PartNumber is { } number ? $", part number {number}" : "")}",
        kit.Spare > 0 ? $"{Text(kit.Needed)} and {Text(kit.Spare)} spare" : Text(kit.Needed),
        Text(kit.FromStock), Text(kit.ToBuy), Money(kit.Price), Money(kit.Cost),
    ];

    private static string[] Doses(TakeOffDoses? doses) => doses is null
        ? ["doses of accelerator", NotKnown, NotKnown, NotKnown, NotKnown, NotKnown]
        : ["doses of accelerator", Text(doses.Needed), Text(doses.FromStock), Text(doses.ToBuy), Money(doses.Price), Money(doses.Cost)];

    private static string[] Material(TakeOffMaterial line) =>
    [
        Words(line.Material), Or(line.Amount), "–", Or(line.Amount),
        line.Price is { } price ? $"{Money(price.Amount)} for {Or(price.Per)}" : NotKnown, Money(line.Cost),
    ];

    private static string[] Labour(TakeOffLabour line) =>
        [Words(line.Task), $"{Text(line.Times)} (per {line.Per})", Or(line.Each), Or(line.Minutes), line.From, Money(line.Rate),
        Money(line.Cost)];

    /// <summary>A coil of wire is told in metres.</summary>
    private static string Or(Quantity? quantity) => quantity is { Unit: "mm", Value: >= 1000 }
        ? string.Create(CultureInfo.InvariantCulture, $"{quantity.Value / 1000:0.0} m")
        : SheetText.Or(quantity);

    private static string Money(decimal? amount) => amount?.ToString("0.00##", CultureInfo.InvariantCulture) ?? NotKnown;
}
