using CalcService.Engine.Pouring;
using CalcService.Engine.Pouring.TakeOff;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

/// <summary>Six ends of 20 mm with every price and rate, for tests that change one thing. All prices are invented.</summary>
public static class GoodQuote
{
    public static Quote Quote { get; } = new()
    {
        Currency = "EUR",
        PriceDate = new(2026, 3, 1),
        LeadTimeS = 5 * 86400,
        DosePrice = 2.5m,
        SeizingWirePrice = new(10, 100),
        SealPrice = new(8, .001),
        CleanerPrice = new(6, .001),
        SeizingWireDiameterM = .0015,
        SealPerEndM3 = 25e-6,
        HourlyRate = 60,
        SpareKits = new(1, null),
        TaskTimesS = new Dictionary<string, double> { [LabourTask.WaitForGel] = 30 * 60 },
    };

    public static PourPlanInput Input { get; } = GoodPour.Input with { Ends = [GoodPour.End("A", 6)], Stock = null, Quote = Quote };

    /// <summary>Cold enough for one dose in each kit.</summary>
    public static PourPlanInput Cold { get; } = Input with
    {
        Conditions = Input.Conditions with { AirK = 5 + GoodPour.Zero, SteelK = 5 + GoodPour.Zero, CompoundK = 10 + GoodPour.Zero },
    };

    public static TakeOffResult TakeOff(PourPlanInput input) => GoodPour.Plan(input).Result.TakeOff;

    public static TakeOffResult With(Func<Quote, Quote> change) => TakeOff(Input with { Quote = change(Quote) });
}
