using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>Which steel decides, and where the heat evens out.</summary>
public sealed class SteelTests
{
    private const double Zero = GoodPour.Zero;

    [Fact]
    [Verifies("evened-temperature", Check.WorkedExample,
        "resin 165 J/K at 18 °C, wires 67 J/K and socket 1050 J/K at 8 °C, by hand: 9.3 °C")]
    public void Warm_compound_in_a_cold_socket_takes_the_temperature_of_the_socket() =>
        Printed.Agrees(9.3, EvenedTemperature.Of(165, 18 + Zero, 67, 8 + Zero, 1050, 8 + Zero, Trace.None) - Zero, 2);

    [Fact]
    public void Evened_temperature_of_the_plan_takes_the_wall_around_the_basket()
    {
        // 70 mm around a basket of 23/45/100 mm: 384.85 − 93.96 cm³ of steel at 7.85 g/cm³ and 460 J/(kg·K) are 1050 J/K; 75.5 cm³
        // of resin at 1.75 g/cm³ and 1250 J/(kg·K) are 165 J/K; 18.46 cm³ of wires 67 J/K. By hand 9.29 °C.
        var end = GoodPour.End("A", 1) with { SocketOuterDiameterM = .070 };
        var pour = GoodPour.Input with
        {
            Ends = [end],
            Compound = GoodPour.Sheet with { SpecificHeatJPerKgK = 1250 },
            Conditions = GoodPour.Input.Conditions with { AirK = 9 + Zero, SteelK = 8 + Zero, CompoundK = 18 + Zero },
        };
        Printed.Agrees(9.29, GoodPour.Plan(pour).Result.Ends[0].EvenedTemperatureK!.Value - Zero, 3);
        Assert.Null(GoodPour.Plan(pour with { Ends = [GoodPour.End("A", 1)] }).Result.Ends[0].EvenedTemperatureK);
    }

    [Fact]
    public void Coldest_of_air_socket_and_wires_sets_the_dose()
    {
        var end = GoodPour.End("A", 1);
        var pour = GoodPour.Input with { Ends = [end with { SocketTemperatureK = 6.9 + Zero }, end with { Id = "B" }] };
        var dose = GoodPour.Plan(pour).Result.Dose!;
        Assert.Equal((2, "socket"), (dose.PerKit, dose.Place));
        Assert.Equal(0, GoodPour.Plan(GoodPour.Input).Result.Dose!.PerKit);
    }

    [Fact]
    public void Sockets_that_were_all_read_by_themselves_need_no_further_steel_reading()
    {
        var conditions = GoodPour.Input.Conditions with { SteelK = null };
        var read = GoodPour.End("A", 1) with { SocketTemperatureK = 20 + Zero };
        Assert.Equal(Decision.Proceed, GoodPour.Plan(GoodPour.Input with { Conditions = conditions, Ends = [read] }).Decision);
        Assert.Equal(Decision.Undetermined,
            GoodPour.Plan(GoodPour.Input with { Conditions = conditions, Ends = [read, GoodPour.End("B", 1)] }).Decision);
    }

    [Theory]
    [InlineData(DosePlace.Unknown, "steel", 2)]
    [InlineData(DosePlace.Colder, "steel", 2)]
    [InlineData(DosePlace.Air, "air", 0)]
    [InlineData(DosePlace.Steel, "steel", 2)]
    [InlineData(DosePlace.Compound, "compound", 0)]
    public void Sheet_may_say_which_temperature_its_doses_go_by(DosePlace by, string place, int perKit)
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Compound = GoodPour.Sheet with { DoseByTemperatureOf = by },
            Conditions = GoodPour.Input.Conditions with { AirK = 9 + Zero, SteelK = 6 + Zero, CompoundK = 18 + Zero },
        });
        Assert.Equal((place, perKit), (plan.Result.Dose!.Place, plan.Result.Dose.PerKit));
    }

    [Fact]
    [Verifies("tilt-shift", Check.Analytic, "45° moves as far aside as up")]
    public void Rope_that_leans_by_45_degrees_moves_as_far_aside_as_up() =>
        Printed.Matches(.1, AlignmentChecks.TiltShiftM(.1, Math.PI / 4, Trace.None));

    [Fact]
    public void Wires_that_end_below_the_mouth_leave_more_room_for_resin()
    {
        // 10 mm less of 184 mm² at the same obliquity: 1.8456 cm³ more.
        var (to, below) = (GoodPour.End("A", 1), GoodPour.End("A", 1) with { WireEndsBelowMouthM = .010 });
        double Resin(PourEnd end) => GoodPour.Plan(GoodPour.Input with { Ends = [end] }).Result.Ends[0].Fill.NominalM3!.Value;
        Printed.Agrees(1.8456, (Resin(below) - Resin(to)) * 1e6, 5);
    }
}
