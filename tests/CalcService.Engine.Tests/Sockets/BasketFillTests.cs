using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Sockets;

public sealed class BasketFillTests
{
    private static readonly Basket Example = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100,
        ToleranceM = .0005 };
    private static readonly Rope Rope = new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc };

    [Fact]
    [Verifies("resin-volume", Check.WorkedExample,
        "20 mm 6x36 IWRC in a basket 23/45/100 mm, by hand: 93.960 − 18.455 = 75.504 cm³ from unrounded terms")]
    public void Resin_of_the_example_is_75_504_cm3()
    {
        var fill = Of(Example, Rope);

        Printed.Agrees(93.960, fill.BasketM3 * 1e6, 5);
        Printed.Agrees(18.455, fill.SteelM3!.Value * 1e6, 4);
        Printed.Agrees(75.504, fill.NominalM3!.Value * 1e6, 5);
    }

    [Fact]
    [Verifies("resin-volume", Check.IndependentCode, "Simpson rule over section less wires, slice by slice")]
    public void Resin_is_the_integral_of_what_the_wires_leave_free()
    {
        // The wires of one slice are cut obliquely: each takes its section times its own slope.
        double Slope(double u) => Math.Sqrt(1 + (.11 * .11 * u * u));
        var metalPerSlice = Reference.Integral(u => 184e-6 * Slope(u) * 2 * u, 0, 1);
        var free = Reference.Integral(z => (Math.PI * Math.Pow(.0115 + (.11 * z), 2)) - metalPerSlice, 0, .1);

        Printed.Matches(free, Of(Example, Rope).NominalM3!.Value, 1e-10);
    }

    [Fact]
    public void Resin_low_takes_the_smallest_basket_and_the_steel_by_mass()
    {
        var smallest = Basket.VolumeM3(.0225, .0445, .0995, Trace.None) - (1.636 / 7850 * .0995);
        Printed.Matches(smallest, Of(Example, Rope).LowM3!.Value, 1e-10);
    }

    [Fact]
    public void Resin_band_encloses_every_basket_inside_the_tolerance() =>
        (from diameter in Gen.Double[.006, .060]
         from clearance in Gen.Double[1.05, 1.3]
         from opening in Gen.Double[1.5, 2.5]
         from length in Gen.Double[4, 8]
         from tolerance in Gen.Double[0, .001]
         from at in Gen.Double[-1, 1].Array[3]
         select (diameter, clearance, opening, length, tolerance, at))
        .Sample(
            one =>
            {
                var basket = new Basket
                {
                    SmallEndDiameterM = one.diameter * one.clearance,
                    LargeEndDiameterM = one.diameter * one.clearance * one.opening,
                    LengthM = one.diameter * one.length,
                    ToleranceM = one.tolerance,
                };
                var rope = Rope with { DiameterM = one.diameter };
                var band = Of(basket, rope);
                var measured = Of(basket with
                {
                    SmallEndDiameterM = basket.SmallEndDiameterM + (one.at[0] * one.tolerance),
                    LargeEndDiameterM = basket.LargeEndDiameterM + (one.at[1] * one.tolerance),
                    LengthM = basket.LengthM + (one.at[2] * one.tolerance),
                    ToleranceM = 0,
                }, rope);
                Assert.InRange(measured.NominalM3!.Value, band.LowM3!.Value, band.HighM3!.Value * (1 + 1e-12));
                Assert.InRange(band.NominalM3!.Value, band.LowM3.Value, band.HighM3!.Value * (1 + 1e-12));
            },
            iter: 2000);

    [Fact]
    public void Rope_of_unknown_area_plans_on_a_basket_without_steel()
    {
        var fill = Of(Example, Rope with { Construction = null });

        Assert.Null(fill.SteelM3);
        Assert.Null(fill.LowM3);
        Assert.Null(fill.NominalM3);
        Printed.Matches(Basket.VolumeM3(.0235, .0455, .1005, Trace.None), fill.HighM3!.Value);
    }

    [Fact]
    public void Basket_that_the_steel_overfills_has_no_volume_of_resin_rather_than_one_of_zero()
    {
        var fill = Of(Example, Rope with { MetallicAreaM2 = 2000e-6 });
        Assert.Null(fill.LowM3);
        Assert.Null(fill.NominalM3);
        Assert.Null(fill.HighM3);
    }

    private static BasketFill Of(Basket basket, Rope rope) =>
        BasketFill.Of(basket, RopeFacts.Of(rope, "/rope", [], Trace.None), 0, Trace.None);
}
