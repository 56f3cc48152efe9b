using System.Globalization;
using CalcService.Api.Answers;
using CalcService.Api.Sheets;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>The take-off in print: what to order, what to bring, how long it takes, and the money where there are prices.</summary>
public static class TakeOffSheet
{
    private const int Digits = 3;
    private const string NoPrice = "no price";
    private const string NotKnown = "not known";

    public static void Write(SheetHtml page, PlannedTakeOff takeOff)
    {
        page.Add("h2", "Take-off").Table(["What", "Needed", "From the shelf", "To get", "Price", "Cost"], [.. Kits(takeOff), .. Doses(takeOff), .. Materials(takeOff)]);
        page.Table(["Task", "Times", "Each", "In all", "Time from", "Rate for an hour", "Cost"], takeOff.Labour.Select(line => new[]
        {
            line.Task, $"{Text(line.Times)} (per {line.Per})", Or(line.Each), Or(line.Minutes), line.From, Money(line.Rate), Money(line.Cost),
        }));
        page.Add("p", $"Materials {Money(takeOff.Totals.Materials)}, labour {Money(takeOff.Totals.Labour)}, total {Money(takeOff.Totals.Total)}"
            + $"{(takeOff.Currency is { } currency ? " " + currency : "")}{(takeOff.PriceDate is { } day ? $", prices of {Day(day)}" : "")}.");
        if (takeOff.Waste is { } waste)
        {
            page.Add("p", $"Mixed {Or(waste.Mixed)} for {Or(waste.Needed)}: {Or(waste.Leftover)} left over, {Or(waste.Share)}.");
        }

        if (takeOff.LeadTime is { } lead)
        {
            page.Add("p", $"Lead time of what has to be bought: {Or(lead)}.");
        }

        if (takeOff.DangerousGoods is { } goods)
        {
            page.Add("p", $"Dangerous goods: {goods}.");
        }

        if (takeOff.Missing.Count > 0)
        {
            page.Add("p", $"Missing for the sums: {string.Join(", ", takeOff.Missing)}.");
        }
    }

    private static IEnumerable<string[]> Kits(PlannedTakeOff takeOff) => takeOff.Kits.Select(kit => new[]
    {
        $"kit {kit.Kit}{(kit.PartNumber is { } number ? $" ({number})" : "")}",
        kit.Spare > 0 ? $"{Text(kit.Needed)} and {Text(kit.Spare)} spare" : Text(kit.Needed),
        Text(kit.FromStock), Text(kit.ToBuy), Money(kit.Price), Money(kit.Cost),
    });

    private static IEnumerable<string[]> Doses(PlannedTakeOff takeOff) => takeOff.Doses is { } doses
        ? [["doses of accelerator", Text(doses.Needed), Text(doses.FromStock), Text(doses.ToBuy), Money(doses.Price), Money(doses.Cost)]]
        : [["doses of accelerator", NotKnown, NotKnown, NotKnown, NotKnown, NotKnown]];

    private static IEnumerable<string[]> Materials(PlannedTakeOff takeOff) => takeOff.Materials.Select(line => new[]
    {
        line.Material, Or(line.Amount), "–", Or(line.Amount),
        line.Price is { } price ? $"{Money(price.Amount)} for {Or(price.Per)}" : NoPrice, Money(line.Cost),
    });

    private static string Or(Quantity? quantity) => quantity is null ? NotKnown : AnswerText.Of(quantity, Digits);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Money(decimal? amount) => amount?.ToString("0.00##", CultureInfo.InvariantCulture) ?? NoPrice;
}
