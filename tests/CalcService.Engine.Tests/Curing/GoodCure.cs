using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Releases;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Pouring;

namespace CalcService.Engine.Tests.Curing;

/// <summary>A cure with which nothing is wrong, for tests that change one thing. The compound is invented.</summary>
public static class GoodCure
{
    public const double Zero = 273.15;

    public static CompoundSheet Sheet { get; } = GoodPour.Sheet with
    {
        FullStrength = [new(20 + Zero, 90 * 60)],
        LowestCureK = 2 + Zero,
        MinimumHoldS = 0,
    };

    public static DateTimeOffset MixedAt { get; } = new(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1));

    public static CureScheduleInput Input { get; } = new()
    {
        Compound = Sheet,
        Doses = 0,
        MixedAt = MixedAt,
        ThermalModel = ThermalModel.Uniform,
        Conditions = new() { ConstantAirK = 20 + Zero, SteelK = 20 + Zero, CompoundK = 20 + Zero },
        Ends = [End("A", 2)],
        PourTimeS = 300,
    };

    /// <summary>The same by the cone's own heat, of a compound whose gel times were held at their temperature.</summary>
    public static CureScheduleInput Coupled { get; } = Input with
    {
        ThermalModel = ThermalModel.Coupled,
        Compound = Sheet with
        {
            GelTimes = [.. Sheet.GelTimes.Select(row => row with { SelfHeating = SelfHeating.No })],
            Reaction = new(350e3, .20),
            SpecificHeatJPerKgK = 1250,
            ConductivityWPerMK = .6,
        },
    };

    /// <summary>A thick cone of a compound that is nearly all resin: its fronts of cure run into each other.</summary>
    public static CureScheduleInput Thick { get; } = Coupled with
    {
        Compound = Coupled.Compound with { Reaction = new(350e3, .90) },
        Ends = [Coupled.Ends[0] with { Basket = new() { SmallEndDiameterM = .060, LargeEndDiameterM = .090, LengthM = .200 },
        OuterAtSmallEndM = .130, OuterAtMouthM = .130 }],
    };

    public static CureEnd End(string id, int quantity) => GoodPour.End(id, quantity) is var end
        ? new(id, quantity, end.Rope, end.Basket) { OuterAtSmallEndM = .070, OuterAtMouthM = .070 }
        : throw new InvalidOperationException();

    /// <summary>Air that goes through temperatures (°C) at hours from mixing.</summary>
    public static CureScheduleInput Through(params (double Hours, double Celsius)[] points) => Input with
    {
        Conditions = Input.Conditions with
        {
            ConstantAirK = null,
            AirSeries = [.. points.Select(point => new AirPoint(MixedAt.AddHours(point.Hours), point.Celsius + Zero))],
        },
    };

    public static Outcome<CureScheduleResult> Schedule(CureScheduleInput input, bool trace = false, long steps = Budget.DefaultSteps) =>
        CureSchedule.Calculate(input, Editions.Known.Current, new Budget(steps, trace), TestContext.Current.CancellationToken);

    public static CuredEnd First(CureScheduleInput input) => Schedule(input).Result.Ends[0];

    public static DateTimeOffset After(double minutes) => MixedAt.AddMinutes(minutes);
}
