using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Cones;

/// <summary>Cones whose answer is known in closed form. Radius from 14 to 28 mm over 110 mm, R 1.6, μ .2, 200 kN unless said.</summary>
public sealed class ConeLimitTests
{
    private const double Load = 200e3;
    private const double Taper = 14.0 / 110;

    /// <summary>Compliance of the uncoupled cone, 1/Pa.</summary>
    private static readonly double C = 1 / SomeCones.Uncoupled.RadialModulusPa;

    [Fact]
    [Verifies("cone-mean-pressure", Check.WorkedExample, "by hand: 200 kN over radii of 14 and 28 mm in 110 mm, μ .2: 42.1045 MPa")]
    public void Mean_pressure_is_that_worked_by_hand()
    {
        Printed.Agrees(42.1045, SomeCones.Rigid.At(Load).MeanPressurePa * 1e-6, 6);
        // Without friction F·tan α/[π·(r_L² − r_0²)·tan α].
        Printed.Matches(Load / (Math.PI * ((.028 * .028) - (.014 * .014))),
            (SomeCones.Rigid with { Friction = 0 }).At(Load).MeanPressurePa);
    }

    [Fact]
    [Verifies("cone-rigid-seat", Check.Analytic, "rigid plug: p = s·tan α/(c·r), so F = 2π·(tan α + μ)·tan α/c·s·L")]
    [Verifies("cone-hoop-stress", Check.WorkedExample, "by hand: 63.157 MPa in a tube of R 1.6: 144.13 MPa")]
    public void Rigid_cone_without_shrinkage_seats_evenly()
    {
        var state = SomeCones.Rigid.At(Load);
        Printed.Agrees(.95557, state.SeatAtSmallEndM * 1e3, 5);
        Printed.Agrees(63.157, state.EdgePressurePa * 1e-6, 5);
        Printed.Agrees(144.13, state.HoopPa * 1e-6, 5);
        Printed.Matches(Load * C / (2 * Math.PI * (Taper + .2) * Taper * .110), state.SeatAtMouthM, 1e-9);
        Printed.Matches(state.SeatAtSmallEndM, ConeFormulas.RigidSeatM(Load, 0, Taper, .2, .014, .028, .110, 1 / C, Trace.None), 1e-9);
    }

    [Fact]
    public void Rigid_cone_that_shrinks_seats_further_by_the_mean_gap()
    {
        var state = (SomeCones.Rigid with { Shrinkage = .002 }).At(Load);
        Printed.Agrees(1.28557, state.SeatAtSmallEndM * 1e3, 6);
        Printed.Matches((.002 * .021 / Taper) + SomeCones.Rigid.At(Load).SeatAtSmallEndM, state.SeatAtSmallEndM, 1e-9);
    }

    [Fact]
    public void Rigid_cone_under_little_load_bears_only_at_the_small_end()
    {
        var state = (SomeCones.Rigid with { Shrinkage = .004 }).At(20e3);
        Printed.Agrees(.729983, state.SeatAtSmallEndM * 1e3, 6);
        Printed.Agrees(23.2267, 14 + (state.ContactToM * 1e3 * Taper), 6);
        // The edge is where the gap of the shrinkage is just closed.
        Printed.Matches(.004 * (.014 + (state.ContactToM * Taper)) / Taper, state.SeatAtSmallEndM, 1e-9);
        Assert.Equal(0, state.Stations[^1].PressurePa);
    }

    [Fact]
    public void Rigid_cone_bears_all_along_from_the_load_that_closes_the_gap_at_the_mouth()
    {
        // s = ε·r_L/t closes the last gap: F = 2π·(t + μ)/c·∫(s·t − ε·r)dx = 2π·(t + μ)/c·ε·(r_L − r̄)·L.
        var expected = 2 * Math.PI * (Taper + .2) / C * .004 * (.028 - .021) * .110;
        Printed.Matches(expected, (SomeCones.Rigid with { Shrinkage = .004 }).FullContactLoadN(), 1e-9);
        Assert.Equal(.110, (SomeCones.Rigid with { Shrinkage = .004 }).At(expected * 1.001).ContactToM);
        Assert.InRange((SomeCones.Rigid with { Shrinkage = .004 }).At(expected * .999).ContactToM, .109, .110);
    }

    [Fact]
    public void Elastic_cone_without_shrinkage_has_the_independent_numbers()
    {
        var state = SomeCones.Uncoupled.At(Load);
        Printed.Agrees(2.10199, state.SeatAtSmallEndM * 1e3, 6);
        Printed.Agrees(138.93, state.EdgePressurePa * 1e-6, 5);
        Printed.Agrees(.50067, state.Shares!.Lower, 5);
    }

    [Fact]
    public void Plain_compound_that_shrinks_alike_all_ways_only_seats_further()
    {
        // s = ε·r/tan α + the seating without shrinkage solves the same equations.
        var (without, with) = ((SomeCones.Plain with { Shrinkage = 0 }).At(120e3), (SomeCones.Plain with { Shrinkage = .005 }).At(120e3));
        Printed.Matches(without.SeatAtSmallEndM + (.005 * .0115 / .11), with.SeatAtSmallEndM, 1e-9);
        Assert.All(without.Stations.Zip(with.Stations), pair => Printed.Matches(pair.First.PressurePa, pair.Second.PressurePa, 1e-8));
        Assert.Equal(0, (SomeCones.Plain with { Shrinkage = .005 }).FullContactLoadN());
    }

    [Fact]
    public void Cone_without_a_load_has_shrunk_off_the_wall()
    {
        var state = SomeCones.Full.At(0);
        Printed.Matches(.006 * .0115 / .11, state.SeatAtSmallEndM);
        Assert.Null(state.Shares);
        Assert.All(state.Stations, station => Assert.Equal((0, 0, 0), (station.ForceN, station.PressurePa, station.HoopPa)));
        // The limit of ever smaller loads.
        Printed.Matches(state.SeatAtSmallEndM, SomeCones.Full.At(1e-6).SeatAtSmallEndM, 1e-5);
        Printed.Matches(state.SeatAtMouthM, SomeCones.Full.At(1e-6).SeatAtMouthM, 1e-5);
    }

    [Theory]
    [InlineData(10, 20, 100, 166.667)]
    [InlineData(20, 30, 50, 130)]
    [Verifies("cone-hoop-stress", Check.WorkedExample,
        "Lamé: bore 10, outside 20 mm, 100 MPa: 166.667 MPa; 20 and 30 mm, 50 MPa by hand: 130 MPa")]
    public void Hoop_stress_is_that_of_Lame(double bore, double outside, double pressure, double expected) =>
        Printed.Agrees(expected, ConeFormulas.HoopStressPa(pressure, outside / bore, Trace.None), 6);
}
