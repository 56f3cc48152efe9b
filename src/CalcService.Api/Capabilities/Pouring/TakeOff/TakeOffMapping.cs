using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>A quote from the contract to the engine, and the take-off back.</summary>
public static class TakeOffMapping
{
    public static Engine.Pouring.TakeOff.Quote ToEngine(this Quote quote) => new()
    {
        Currency = quote.Currency,
        PriceDate = quote.PriceDate,
        LeadTimeS = quote.LeadTime?.Si,
        SpareKits = quote.SpareKits is { } spare ? new(spare.Count, spare.Share?.Si) : null,
        DosePrice = quote.Prices?.Dose,
        SeizingWirePrice = quote.Prices?.SeizingWire is { } wire ? new(wire.Amount, wire.Per.Si) : null,
        SealPrice = Price(quote.Prices?.Seal),
        CleanerPrice = Price(quote.Prices?.Cleaner),
        SeizingWireDiameterM = quote.Seizing?.WireDiameter?.Si,
        SeizingCount = quote.Seizing?.Count,
        SealPerEndM3 = quote.SealPerEnd?.Si,
        CleanerPerEndM3 = quote.CleanerPerEnd?.Si,
        HourlyRate = quote.HourlyRate,
        TaskRates = ByTask(quote.TaskRates).ToDictionary(task => task.Name, task => (decimal)task.Value),
        TaskTimesS = ByTask(quote.TaskTimes).ToDictionary(task => task.Name, task => ((Quantity)task.Value).Si),
    };

    public static PlannedTakeOff ToContract(TakeOffResult takeOff, UnitSystem units) => new()
    {
        Currency = takeOff.Currency,
        PriceDate = takeOff.PriceDate,
        Kits = takeOff.Kits.Select(kit => new TakeOffKits
        {
            Kit = kit.Kit,
            PartNumber = kit.PartNumber,
            Needed = kit.Needed,
            Spare = kit.Spare,
            FromStock = kit.FromStock,
            ToBuy = kit.ToBuy,
            Price = kit.Price,
            Cost = kit.Cost,
        }).ToArray(),
        Doses = takeOff.Doses is { } doses
            ? new() { PerKit = doses.PerKit, Needed = doses.Needed, FromStock = doses.FromStock, ToBuy = doses.ToBuy, Price = doses.Price,
            Cost = doses.Cost }
            : null,
        Materials = takeOff.Materials.Select(line => Material(line, units)).ToArray(),
        Labour = takeOff.Labour.Select(line => Labour(line, units)).ToArray(),
        Waste = takeOff.Waste is { } waste
            ? new()
            {
                Needed = Quantity.From(Measure.Volume(waste.NeededM3), units),
                Mixed = Quantity.From(Measure.Volume(waste.MixedM3), units),
                Leftover = Quantity.From(Measure.Volume(waste.LeftoverM3), units),
                Share = Quantity.From(Measure.Fraction(waste.Share), units),
            }
            : null,
        LeadTime = Quantity.From(takeOff.LeadTimeS, QuantityKind.Days, units),
        DangerousGoods = takeOff.DangerousGoods,
        Totals = new() { Materials = takeOff.MaterialsCost, Labour = takeOff.LabourCost, Total = takeOff.TotalCost },
        Missing = takeOff.Missing,
    };

    private static TakeOffMaterial Material(MaterialLine line, UnitSystem units) => new()
    {
        Material = line.Material,
        Amount = Quantity.From(line.Amount, units),
        From = line.From,
        Price = line.Price is { } price
            ? new() { Amount = price.Amount, Per = Quantity.From(line.Amount with { Si = price.PerSi }, units) }
            : null,
        Cost = line.Cost,
    };

    private static TakeOffLabour Labour(LabourLine line, UnitSystem units) => new()
    {
        Task = line.Task,
        Per = line.Per,
        Times = line.Times,
        Each = Quantity.From(line.EachS, QuantityKind.Duration, units),
        Minutes = Quantity.From(line.TotalS, QuantityKind.Duration, units),
        From = line.From,
        Rate = line.Rate,
        Cost = line.Cost,
    };

    private static Price? Price(VolumePrice? price) => price is null ? null : new(price.Amount, price.Per.Si);

    /// <summary>What is given for tasks, by the name that the contract and the engine share.</summary>
    private static IEnumerable<(string Name, object Value)> ByTask<T>(T? tasks)
        where T : class =>
        tasks is null ? []
        : ShapeTable.Of<T>().Members.Select(member => (member.Name, member.ValueIn(tasks))).Where(task => task.Item2 is not null)
        .Select(task => (task.Name, task.Item2!));
}
