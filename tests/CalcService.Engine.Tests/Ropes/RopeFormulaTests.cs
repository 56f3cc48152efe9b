using System.Globalization;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Ropes;

public sealed class RopeFormulaTests
{
    private const string Api9a = "API Spec 9A, Table C.1, class 6x7, fibre core";

    /// <summary>The rows of the table; every number in it is printed with three significant digits.</summary>
    public static TheoryData<double, double, double, double> Api9aRows =>
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "rope-6x7-api9a.csv")).Skip(2)
            .Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())
            .Select(row => new TheoryDataRow<double, double, double, double>(row[0], row[2], row[3], row[4])),
    ];

    [Fact]
    public void Table_of_6x7_ropes_is_read_whole() => Assert.Equal(9, Api9aRows.Count);

    [Theory]
    [MemberData(nameof(Api9aRows))]
    [Verifies("rope-mass", Check.WorkedExample, Api9a)]
    [Verifies("rope-breaking-force", Check.WorkedExample, Api9a)]
    public void Rope_6x7_with_fibre_core_has_the_mass_and_force_of_the_table(double diameterMm, double massPer100M, double at1770,
        double at1960)
    {
        var factors = RopeClassTable.Find("6x7")!.FactorsFor(RopeCore.Fibre)!;
        var diameter = diameterMm / 1000;

        Printed.Agrees(massPer100M, RopeFormulas.MassKgPerM(diameter, factors.Mass, Trace.None) * 100, 3);
        Printed.Agrees(at1770, RopeFormulas.BreakingForceN(diameter, 1770e6, factors.BreakingForce, Trace.None) / 1000, 3);
        Printed.Agrees(at1960, RopeFormulas.BreakingForceN(diameter, 1960e6, factors.BreakingForce, Trace.None) / 1000, 3);
    }

    [Theory]
    [InlineData(1570, 223.57)]
    [InlineData(1770, 252.05)]
    [InlineData(1960, 279.10)]
    [InlineData(2160, 307.58)]
    [Verifies("rope-breaking-force", Check.WorkedExample, "EN 12385 factors by hand: 0.356·20²·R_r")]
    public void Rope_6x36_iwrc_of_20_mm_has_the_force_worked_by_hand(int grade, double kilonewtons) =>
        Printed.Agrees(kilonewtons, RopeFormulas.BreakingForceN(.020, grade * 1e6, .356, Trace.None) / 1000, 5);

    [Fact]
    [Verifies("rope-metallic-area", Check.WorkedExample, "EN 12385 factors by hand: 0.460·20² mm²")]
    [Verifies("rope-mass", Check.WorkedExample, "EN 12385 factors by hand: 0.409·20²/100 kg/m")]
    public void Rope_6x36_iwrc_of_20_mm_has_the_area_and_mass_worked_by_hand()
    {
        var factors = RopeClassTable.Find("6x36")!.FactorsFor(RopeCore.Iwrc)!;

        Printed.Agrees(184.0, RopeFormulas.MetallicAreaM2(.020, factors.MetallicArea, Trace.None) * 1e6, 4);
        Printed.Agrees(1.636, RopeFormulas.MassKgPerM(.020, factors.Mass, Trace.None), 4);
    }

    [Fact]
    [Verifies("mean-wire-diameter", Check.Analytic, "the areas of n circles add up to the area of the rope")]
    public void Mean_wire_makes_up_the_area_n_times()
    {
        foreach (var (wires, diameter) in new[] { (1, .004), (7, .001), (265, .00094) })
        {
            var area = wires * Math.PI / 4 * diameter * diameter;
            Printed.Matches(diameter, RopeFormulas.MeanWireDiameterM(area, wires, Trace.None));
        }
    }

    [Fact]
    [Verifies("mean-wire-diameter", Check.WorkedExample, "EN 12385-4, outer wire factor 0.106 of class 6x7 with fibre core, from memory")]
    public void Mean_wire_of_a_6x7_rope_is_its_outer_wire()
    {
        // 6x7 is the one class whose wires are all of about one size, so that mean and outer wire can be compared.
        var factors = RopeClassTable.Find("6x7")!.FibreCore;
        var area = RopeFormulas.MetallicAreaM2(.010, factors.MetallicArea, Trace.None);
        Printed.Agrees(.106, RopeFormulas.MeanWireDiameterM(area, factors.Wires, Trace.None) / .010, 3);
    }
}
