using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>A pour with which nothing is wrong, for tests that change one thing. The compound is invented.</summary>
public static class GoodPour
{
    public const double Zero = 273.15;

    public static CompoundSheet Sheet { get; } = new()
    {
        Name = "invented for tests",
        Kits = [new("small", 300e-6, 19), new("medium", 700e-6, 41), new("large", 1100e-6, 62)],
        GelTimes =
        [
            new(5 + Zero, 0, 66 * 60), new(20 + Zero, 0, 24 * 60), new(35 + Zero, 0, 10 * 60),
            new(0 + Zero, 2, 50 * 60), new(10 + Zero, 2, 24 * 60), new(20 + Zero, 2, 13 * 60),
        ],
        Doses = [new(2 + Zero, 7 + Zero, 2), new(7 + Zero, 34 + Zero, 0)],
        Pouring = new(2 + Zero, 34 + Zero),
        PotLife = .75,
        MixingTimeS = 90,
        ShelfLifeMonths = 14,
        DensityKgPerM3 = 1750,
        Vapour = new("styrene", .18),
    };

    /// <summary>Storage with which nothing is wrong.</summary>
    public static LotStorage Stored { get; } = new(8 + Zero, 22 + Zero, Fact.Yes);

    public static PourPlanInput Input { get; } = new()
    {
        PourAt = new(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1)),
        Compound = Sheet,
        Conditions = new()
        {
            AirK = 22 + Zero, SteelK = 20 + Zero, CompoundK = 20 + Zero, RelativeHumidity = .5, Room = new(5000, 6.0 / 3600),
                MixingFactor = 10,
            IgnitionSource = Fact.No, Place = PourPlace.Indoors, Workplace = Workplace.GeneralIndustry, Jurisdiction = "US",
        },
        Ends = [End("A", 2)],
        Stock = [Lot("S", "small", 999, "2026-12-31"), Lot("M", "medium", 999, "2026-12-31"), Lot("L", "large", 999, "2026-12-31")],
        Mixers = 1,
        PourTimeS = 120,
        Allowance = .10,
        VesselResidueM3 = 0,
        Objective = PourObjective.LeastCost,
    };

    public static PourEnd End(string id, int quantity) => new(
        id,
        quantity,
        new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770, Finish = WireFinish.Bright,
        PlasticFilled = Fact.No },
        new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100, ToleranceM = .0005 },
        ToleranceStated: true,
        SocketBreakingForceN: 310e3)
    {
        TiltRad = 0,
        StraightBelowM = 1,
        Bore = BoreState.Clean,
        Metal = SocketMetal.CastSteel,
        Cleaner = Cleaner.Solvent,
        DriedAt = new(2026, 3, 12, 8, 0, 0, TimeSpan.FromHours(1)),
    };

    /// <summary>An end of unknown metal in a cylinder of 50 mm bore, so that its resin is the volume given.</summary>
    public static PourEnd Cylinder(string id, int quantity, double volumeM3)
    {
        var end = End(id, quantity);
        return end with
        {
            Rope = end.Rope with { Construction = null },
            Basket = end.Basket with
            {
                SmallEndDiameterM = .05, LargeEndDiameterM = .05, LengthM = volumeM3 / (Math.PI / 4 * .05 * .05), ToleranceM = 0,
            },
        };
    }

    public static StockLot Lot(string lot, string kit, int count, string? expiresOn) => new(lot, kit, count,
        expiresOn is null ? null : DateOnly.ParseExact(expiresOn, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), null)
    {
        Storage = Stored,
        State = LotState.Sealed,
        Quarantined = Fact.No,
    };

    public static Outcome<PourPlanResult> Plan(PourPlanInput input, long steps = Budget.DefaultSteps, bool trace = false) =>
        PourPlan.Calculate(input, Editions.Known.Current, new Budget(steps, trace), TestContext.Current.CancellationToken);
}
