using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Cones;

/// <summary>
/// Numbers that were computed outside the project, with SciPy's collocation for two-point problems, and axisymmetric
/// finite elements with contact (CalculiX 2.20 and a second code): model against model, no pull test stands behind them.
/// </summary>
public sealed class ConeCheckValueTests
{
    [Fact]
    public void Plain_cone_has_the_numbers_of_an_independent_collocation()
    {
        var state = SomeCones.Plain.At(120e3, 60);
        Printed.Agrees(.40296, state.Shares!.Lower, 5);
        Printed.Agrees(.29826, state.Shares.Middle, 5);
        Printed.Agrees(.29878, state.Shares.Upper, 5);
        Printed.Agrees(2.69802, state.SeatAtSmallEndM * 1e3, 6);
        Printed.Agrees(1.14834, state.SeatAtMouthM * 1e3, 6);
        Printed.Agrees(83.687, state.EdgePressurePa * 1e-6, 5);
        Printed.Agrees(72.670, state.Station(.05).PressurePa * 1e-6, 5);
        Printed.Agrees(53187.4, state.Station(.5).ForceN, 6);
    }

    [Fact]
    public void Cone_full_of_wires_has_the_numbers_of_an_independent_collocation()
    {
        var state = SomeCones.Full.At(250e3, 60);
        Printed.Agrees(.40955, state.Shares!.Lower, 5);
        Printed.Agrees(.32322, state.Shares.Middle, 5);
        Printed.Agrees(.26723, state.Shares.Upper, 5);
        Printed.Agrees(2.41958, state.SeatAtSmallEndM * 1e3, 6);
        Printed.Agrees(2.05640, state.SeatAtMouthM * 1e3, 6);
        Printed.Agrees(156.045, state.EdgePressurePa * 1e-6, 6);
        Printed.Agrees(142.914, state.Station(.05).PressurePa * 1e-6, 6);
        Printed.Agrees(105047.7, state.Station(.5).ForceN, 7);
    }

    [Theory]
    [InlineData(.002, .44)]
    [InlineData(.0033, .50)]
    [InlineData(.006, .61)]
    public void Lower_third_at_a_fifth_of_the_breaking_force_is_the_independent_one(double shrinkage, double share) =>
        // 252 kN: the 20 mm rope of the example.
        Printed.Agrees(share, (SomeCones.Full with { Shrinkage = shrinkage }).At(50e3).Shares!.Lower, 2);

    [Theory]
    [InlineData(false, 120e3, .422, .294, .284, 2.661, 70)]
    [InlineData(true, 250e3, .432, .317, .251, 2.444, 149)]
    public void Cone_is_near_the_finite_elements(bool wires, double loadN, double lower, double middle, double upper, double seatMm,
        double atFiveMpa)
    {
        var state = (wires ? SomeCones.Full : SomeCones.Plain).At(loadN, 60);
        Assert.Equal(lower, state.Shares!.Lower, .03);
        Assert.Equal(middle, state.Shares.Middle, .03);
        Assert.Equal(upper, state.Shares.Upper, .03);
        Printed.Matches(seatMm, state.SeatAtSmallEndM * 1e3, .025);
        Printed.Matches(atFiveMpa, state.Station(.05).PressurePa * 1e-6, .07);
    }

    [Theory]
    [InlineData(5e3)]
    [InlineData(30e3)]
    [InlineData(50e3)]
    [InlineData(100e3)]
    [InlineData(252e3)]
    public void Cone_in_a_tapered_socket_is_that_of_equal_steps(double loadN)
    {
        // Straight outside of 70 mm at the mouth and 44 mm at the small end: R from 1.91 to 1.56.
        var cone = SomeCones.Full with { OuterAtSmallEndM = .044, OuterAtMouthM = .070 };
        var (path, contactTo) = new MarchedCone(cone, loadN).Solve();
        var state = cone.At(loadN);

        Printed.Matches(contactTo, state.ContactToM * 1e3, 1e-7);
        Printed.Matches(path[0].S, state.SeatAtSmallEndM * 1e3, 1e-8);
        Printed.Matches(path[0].P, state.EdgePressurePa * 1e-6, 1e-8);
        // Where the path ends the cone is free.
        if (contactTo >= 100)
        {
            Printed.Matches(path[1000].N, state.Station(.5).ForceN, 1e-8);
        }
    }
}
