using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>
/// 100 kN on two ears of 20 × 100 mm with holes of 42 mm, 55 mm from their end, 50 mm apart, and a pin of 40 mm.
/// The arithmetic stands beside each number.
/// </summary>
public sealed class ReuseFormulaTests
{
    private const double F = 100e3;

    [Fact]
    [Verifies("ear-bearing", Check.WorkedExample, "textbook check of a pinned joint, by hand: 100000/(2·40·20) = 62.5 N/mm²")]
    public void Bearing_is_force_over_the_projected_area_of_both_ears() =>
        Printed.Matches(62.5e6, StrengthFormulas.BearingPa(F, .040, .020, Trace.None));

    [Fact]
    [Verifies("ear-net-section", Check.WorkedExample,
        "textbook check of a pinned joint, by hand: 100000/(2·20·(100 − 42)) = 100000/2320 N/mm²")]
    public void Net_section_is_what_the_holes_leave() =>
        Printed.Matches(100000.0 / 2320 * 1e6, StrengthFormulas.NetSectionPa(F, .020, .100, .042, Trace.None));

    [Fact]
    [Verifies("ear-shear-out", Check.WorkedExample,
        "textbook check of a pinned joint, by hand: two planes of 20·(55 − 21) in each ear, 100000/2720 N/mm²")]
    public void Shear_out_runs_on_two_planes_in_each_ear() =>
        Printed.Matches(100000.0 / 2720 * 1e6, StrengthFormulas.ShearOutPa(F, .020, .055, .042, Trace.None));

    [Fact]
    [Verifies("ear-block", Check.WorkedExample,
        "by hand, coefficients from memory of ASME BTH-1: 1.13·34 = 38.42; 0.92·29/(1 + 29/42) = 1120.56/71; times 2·20")]
    public void Block_behind_the_hole_is_the_one_worked_by_hand() =>
        Printed.Matches(100000 / (40 * (38.42 + (1120.56 / 71))) * 1e6, StrengthFormulas.BlockPa(F, .020, .055, .042, .029, Trace.None));

    [Fact]
    [Verifies("pin-shear", Check.WorkedExample, "textbook check of a pinned joint, by hand: 50000/(π·20²) = 125/π N/mm²")]
    public void Pin_shears_in_two_sections() =>
        Printed.Matches(125 / Math.PI * 1e6, StrengthFormulas.PinShearPa(F, .040, Trace.None));

    [Fact]
    [Verifies("pin-bending", Check.IndependentCode,
        "moment in the middle of the pin by summing the load of thin slices; section modulus π·d³/32")]
    public void Pin_bends_as_a_beam_under_load_spread_over_gap_and_ears()
    {
        double gap = .050, ear = .020, pin = .040;
        int slices = 100000;
        // Moment about the middle of the half pin: the ear's slices push one way, the slices of the gap the other.
        double moment = 0;
        for (var i = 0; i < slices; i++)
        {
            moment += F / 2 / slices * ((gap / 2) + (ear * (i + .5) / slices));
            moment -= F / 2 / slices * (gap / 2 * (i + .5) / slices);
        }

        Printed.Matches(moment / (Math.PI * pin * pin * pin / 32), StrengthFormulas.PinBendingPa(F, ear, gap, pin, Trace.None), 1e-9);
        // By hand: 50000·(10 + 12.5)/(2000·π) = 562.5/π N/mm².
        Printed.Matches(562.5 / Math.PI * 1e6, StrengthFormulas.PinBendingPa(F, ear, gap, pin, Trace.None));
    }

    [Theory]
    [InlineData(355, 570, 355)]
    [InlineData(900, 960, 800)]
    [Verifies("governing-strength", Check.WorkedExample, "by hand: 570/1.2 = 475 is above 355; 960/1.2 = 800 is below 900")]
    public void Strength_is_yield_unless_rupture_is_near(double yieldMpa, double tensileMpa, double expectedMpa) =>
        Printed.Matches(expectedMpa * 1e6, StrengthFormulas.GoverningStrengthPa(yieldMpa * 1e6, tensileMpa * 1e6, Trace.None));

    [Fact]
    [Verifies("part-utilisation", Check.WorkedExample, "by hand: 60·3/(1.25·360) = 0.4")]
    public void Utilisation_is_the_one_worked_by_hand() =>
        Printed.Matches(.4, StrengthFormulas.UtilisationOf(60e6, 3, 1.25, 360e6, Trace.None));

    [Theory]
    [InlineData(.40, .50, 256)]
    [InlineData(.50, .40, 320)]
    [Verifies("remaining-strength", Check.WorkedExample, "by hand: 320·0.4/0.5 = 256; never more than the maker's 320")]
    public void Remaining_strength_is_the_one_worked_by_hand(double made, double found, double expectedKn) =>
        Printed.Matches(expectedKn * 1e3, StrengthFormulas.RemainingStrengthN(320e3, made, found, Trace.None));

    [Fact]
    [Verifies("wear-growth", Check.WorkedExample, "by hand: (36.9 − 36)/36 = 2.5 %")]
    [Verifies("wear-ovality", Check.WorkedExample, "by hand: (25.5 − 25)/25 = 2 %")]
    [Verifies("wear-taper-loss", Check.WorkedExample, "by hand: tan α 0.11 opens 11 mm in 50 mm; 24 to 33.9 mm are 9.9, a tenth less")]
    public void Wear_is_the_one_worked_by_hand()
    {
        Printed.Matches(.025, WearFormulas.Growth(.0369, .036, Trace.None), 1e-11);
        Printed.Matches(.02, WearFormulas.Ovality(.0255, .025, .025, Trace.None), 1e-11);
        Printed.Matches(.1, WearFormulas.TaperLoss(.024, .0339, .050, .11, Trace.None), 1e-11);
    }
}
