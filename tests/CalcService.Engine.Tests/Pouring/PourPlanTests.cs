using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Pouring;

public sealed class PourPlanTests
{
    private const double Zero = GoodPour.Zero;

    [Fact]
    public void Missing_steel_temperature_is_undetermined_and_never_taken_from_the_air()
    {
        var plan = Plan(c => c with { SteelK = null });

        Assert.Equal(Decision.Undetermined, plan.Decision);
        Assert.Null(plan.Result.Dose);
        Assert.Null(plan.Result.Gel);
        Assert.DoesNotContain(plan.Assumptions, assumption => assumption.Pointer.Contains("Temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void Wires_of_the_example_take_the_shares_of_the_sections_that_their_area_takes()
    {
        // 184 mm² over the section of a basket 23/45/100 mm at its small end, one third and mouth, by hand: 44, 25 and 12 %.
        var end = Assert.Single(GoodPour.Plan(GoodPour.Input).Result.Ends);
        Assert.Equal(265, end.Rope.WireCount);
        Assert.Equal(["smallEnd", "oneThird", "mouth"], end.Wires.Select(wires => wires.Place));
        foreach (var (wires, percent) in end.Wires.Zip([44.29, 25.46, 11.57]))
        {
            // Each wire has √3/2·s² of the lattice for itself; the gap gives the wire's own diameter back.
            var wire = wires.CentresM - wires.ClearM;
            var share = Math.PI / 4 * wire * wire / (Math.Sqrt(3) / 2 * wires.CentresM * wires.CentresM);
            Printed.Agrees(percent, share * 100, 4);
        }
    }

    [Theory]
    [InlineData(20, 20, 20, 20, 20)]
    [InlineData(22, 18, 20, 22, 18)] // the vessel takes the warmer air, the cone may take the colder steel
    [InlineData(10, 9, 18, 18, 9)]
    public void Gel_goes_by_the_warm_vessel_first_and_the_cold_cone_last(double air, double steel, double compound, double vessel,
        double coldest)
    {
        var gel = Plan(c => c with { AirK = air + Zero, SteelK = steel + Zero, CompoundK = compound + Zero }).Result.Gel!;

        Printed.Matches(GelS(vessel), gel.InVessel.ExpectedS);
        Printed.Matches(GelS(vessel), gel.InCone.EarliestS);
        Printed.Matches(GelS(coldest), gel.InCone.ExpectedS);
        Printed.Matches(GelS(coldest), gel.InCone.LatestS);
        Printed.Matches(.75 * GelS(vessel), gel.PotLifeS!.Value);
    }

    [Fact]
    public void Gel_in_a_socket_hotter_than_the_vessel_may_come_earlier_than_in_the_vessel()
    {
        var gel = Plan(c => c with { AirK = 20 + Zero, SteelK = 30 + Zero }).Result.Gel!;

        Printed.Matches(GelS(30), gel.InCone.EarliestS);
        Printed.Matches(GelS(20), gel.InVessel.EarliestS);
        Printed.Matches(.75 * GelS(20), gel.PotLifeS!.Value);
    }

    [Fact]
    public void Gel_in_a_socket_hotter_than_the_sheet_measured_is_called_extrapolated() =>
        Assert.Contains(
            GoodPour.Plan(GoodPour.Input with
            {
                Conditions = GoodPour.Input.Conditions with { SteelK = 33 + Zero },
                Compound = GoodPour.Sheet with { GelTimes = [new(5 + Zero, 0, 3960), new(25 + Zero, 0, 1140)] },
            }).Findings,
            finding => finding.Definition == CompoundFindings.GelTimeExtrapolated && finding.Pointer == "/conditions/steelTemperature");

    [Fact]
    public void Vapour_is_that_of_every_open_surface_until_the_last_cone_has_gelled()
    {
        var plan = GoodPour.Plan(GoodPour.Input);
        // As warm as the air, which is warmer than the compound.
        var pressure = Evaporation.StyreneVapourPressurePa(22 + Zero, Trace.None);
        // Two mouths of 45 mm, and a vessel as wide as it is filled high with one kit of 300 mL.
        double Open(double d) => Evaporation.RateKgPerS(104.15, 1, pressure, .508, Math.PI / 4 * d * d, 22 + Zero, d, Trace.None);
        var source = (2 * Open(.045)) + Open(Math.Cbrt(4 * 300e-6 / Math.PI));
        // 6 air changes an hour in 5000 m³, of which one in ten counts near the work.
        double changes = .6 / 3600;
        var gel = GelS(20);
        var peak = Reference.RungeKutta(c => (source / 5000) - (changes * c), 0, gel, 2000) * 1e6 / 104.15 * 24.465e-6;

        Printed.Matches(peak, plan.Result.Vapour!.Peak, 1e-9);
        Assert.InRange(plan.Result.Vapour.TimeWeighted, 0, peak);
    }

    [Fact]
    public void Vapour_is_never_more_than_all_that_the_compound_holds()
    {
        var all = .18 * 1750 * 300e-6 / .5 * 1e3 / 104.15 * 24.465e-3;
        var longOpen = GoodPour.Plan(GoodPour.Input with
        {
            Conditions = GoodPour.Input.Conditions with { Room = new(.5, 0) },
            Compound = GoodPour.Sheet with { GelTimes = [new(0 + Zero, 0, 400 * 3600), new(35 + Zero, 0, 399 * 3600)] },
        });

        Printed.Matches(all, longOpen.Result.Vapour!.Peak, 1e-9);
        Assert.InRange(longOpen.Result.Vapour.TimeWeighted, 0, all);
    }

    [Fact]
    public void Basket_overfilled_with_steel_is_a_stop_without_volumes()
    {
        var end = GoodPour.End("A", 1);
        var plan = GoodPour.Plan(GoodPour.Input with { Ends = [end with { Rope = end.Rope with { MetallicAreaM2 = 2000e-6 } }] });

        Assert.Equal(Decision.DoNotProceed, plan.Decision);
        Assert.Contains(plan.Findings, finding => finding.Definition == FitFindings.WiresDoNotFit);
        Assert.Null(plan.Result.NeededM3);
        Assert.Empty(plan.Result.Mixes);
        Assert.Null(plan.Result.Vapour);
    }

    [Fact]
    public void Substance_is_known_however_it_is_capitalised()
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Compound = GoodPour.Sheet with { Vapour = new("Styrene", .18) },
            Conditions = GoodPour.Input.Conditions with { Room = new(5, 0) },
        });
        Assert.Equal(Decision.DoNotProceed, plan.Decision);
    }

    [Fact]
    public void Plan_without_choices_says_each_default_that_it_took()
    {
        var plan = GoodPour.Plan(GoodPour.Input with
        {
            Ends = [GoodPour.End("A", 2) with { ToleranceStated = false }],
            Mixers = null, Allowance = null, VesselResidueM3 = null, Objective = null,
        });
        // Those of the take-off have tests of their own.
        var defaults = plan.Assumptions.Where(assumption =>
            assumption.Origin == AssumptionOrigin.Default && !assumption.Pointer.StartsWith("/quote/", StringComparison.Ordinal));
        Assert.Equal(["/allowance", "/conditions/readAt", "/crew/mixers", "/ends/0/socket/basket/tolerance", "/objective",
            "/vesselResidue"],
            defaults.Select(assumption => assumption.Pointer).Order(StringComparer.Ordinal));
        Assert.Equal(GoodPour.Plan(GoodPour.Input).Result.NeededM3, plan.Result.NeededM3);
    }

    [Fact]
    public void Cancellation_ends_the_plan()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.Throws<OperationCanceledException>(
            () => PourPlan.Calculate(GoodPour.Input, Editions.Known.Current, new Budget(Budget.DefaultSteps), cancelled.Token));
    }

    [Fact]
    public void Budget_that_ends_first_leaves_the_kits_open_and_says_so()
    {
        var plan = GoodPour.Plan(GoodPour.Input, steps: 10);
        Assert.Equal(Decision.Undetermined, plan.Decision);
        Assert.Empty(plan.Result.Mixes);
        Assert.Empty(plan.Result.Kits);
        Assert.Null(plan.Result.Cost);
    }

    /// <summary>Gel time of the test sheet without a dose, by its own two rows on an Arrhenius line.</summary>
    private static double GelS(double celsius)
    {
        var (coldC, coldMin, warmC, warmMin) = celsius <= 20 ? (5.0, 66.0, 20.0, 24.0) : (20, 24, 35, 10);
        var share = ((1 / (coldC + Zero)) - (1 / (celsius + Zero))) / ((1 / (coldC + Zero)) - (1 / (warmC + Zero)));
        return 60 * coldMin * Math.Pow(warmMin / coldMin, share);
    }

    private static Outcome<PourPlanResult> Plan(Func<PourConditions, PourConditions> change) =>
        GoodPour.Plan(GoodPour.Input with { Conditions = change(GoodPour.Input.Conditions) });
}
