using CalcService.Client.Kiota.Models;
using Microsoft.Kiota.Abstractions;

namespace CalcService.Client.Kiota;

/// <summary>A pour plan with every fact stated that could stop it, in the generated types.</summary>
internal static class Requests
{
    public static PourPlanRequest Plan() => new()
    {
        Reference = "JOB-0417",
        PourAt = new DateTimeOffset(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1)),
        Units = UnitSystem.Metric,
        Compound = new Compound { Profile = "demonstration" },
        Conditions = new PourConditions
        {
            AirTemperature = Celsius(9),
            SteelTemperature = Celsius(8),
            CompoundTemperature = Celsius(18),
            RelativeHumidity = Percent(72),
            IgnitionSource = Fact.No,
            Place = PourPlace.Indoors,
            Room = new Room
            {
                Volume = new Volume { Value = 180, Unit = Volume_unit.M3 },
                AirChanges = new Rate { Value = 6, Unit = Rate_unit.OneH },
            },
        },
        Ends =
        [
            new PourEnd
            {
                Id = "A",
                Quantity = 6,
                Rope = new Rope
                {
                    Diameter = Millimetres(20),
                    Construction = "6x36",
                    Core = RopeCore.Iwrc,
                    Grade = 1770,
                    Finish = WireFinish.Bright,
                    PlasticFilled = Fact.No,
                    Lubricant = Lubricant.Light,
                },
                Socket = new Socket
                {
                    Basket = new Basket
                    {
                        SmallEndDiameter = Millimetres(23),
                        LargeEndDiameter = Millimetres(45),
                        Length = Millimetres(100),
                        Tolerance = Millimetres(0.5),
                    },
                    Bore = BoreState.Clean,
                },
                Cleaner = Cleaner.Solvent,
            },
        ],
        Stock = [new StockLot { Lot = "A-118", Kit = "small", Count = 4, ExpiresOn = new Date(2027, 1, 31), State = LotState.Sealed,
            Quarantined = Fact.No }],
        Crew = new Crew { Mixers = 1, PourTime = new Duration { Value = 2, Unit = Duration_unit.Min } },
        Allowance = Percent(10),
        Objective = PourObjective.LeastCost,
    };

    private static Length Millimetres(double value) => new() { Value = value, Unit = Length_unit.Mm };

    private static Temperature Celsius(double value) => new() { Value = value, Unit = Temperature_unit.DegC };

    private static Fraction Percent(double value) => new() { Value = value, Unit = Fraction_unit.Percent };
}
