using CalcService.Engine.Cones;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Cones;

public sealed class ConeFormulaTests
{
    [Fact]
    [Verifies("cone-radial-stiffness", Check.Analytic,
        "plane plug: u/r = −(1 − ν)p/E; Lamé tube: u/r from the hoop strain (σ_θ + ν·p)/E at the bore")]
    public void Radial_stiffness_closes_the_gap_between_plug_and_tube()
    {
        double p = 50e6, plug = 9e9, nu = .25, steel = 205e9, nuSteel = .29;
        // Lamé, bore 20 and outside 32 mm: σ_θ = p·(b² + a²)/(b² − a²).
        var hoop = p * ((32 * 32) + (20 * 20)) / ((32.0 * 32) - (20 * 20));
        var squeeze = ((1 - nu) * p / plug) + ((hoop + (nuSteel * p)) / steel);
        Printed.Matches(p / squeeze, ConeFormulas.RadialStiffnessPa(plug, nu, 1.6, steel, nuSteel, Trace.None));
    }

    [Fact]
    [Verifies("cone-axial-stiffness", Check.WorkedExample, "by hand: 184 mm² of 200 GPa and 216 mm² of 6 GPa: 36.8 + 1.296 MN")]
    [Verifies("cone-axial-shrinkage", Check.WorkedExample, "by hand: 1.296/38.096 of 6 ‰")]
    public void Axial_stiffness_and_shrinkage_are_those_worked_by_hand()
    {
        Printed.Matches(38.096e6, ConeFormulas.AxialStiffnessN(200e9, 184e-6, 6e9, 400e-6, Trace.None));
        Printed.Matches(.006 * 1.296 / 38.096, ConeFormulas.AxialShrinkage(.006, 6e9, 400e-6, 184e-6, 38.096e6, Trace.None));
        // No wires: as much as across.
        Printed.Matches(.006, ConeFormulas.AxialShrinkage(.006, 6e9, 400e-6, 0, 2.4e6, Trace.None));
    }

    [Fact]
    [Verifies("cone-shrinkage", Check.WorkedExample, "by hand: 0.2 % and 40 K of 35e-6/K: 0.34 %")]
    public void Shrinkage_is_that_worked_by_hand() =>
        Printed.Matches(.0034, ConeFormulas.Shrinkage(.002, 35e-6, 40, Trace.None));

    [Theory]
    [InlineData(2.69802, 120e3, 0, 6e9, .002, 83.687)]
    [InlineData(2.41958, 250e3, 184e-6, 9e9, .006, 156.045)]
    [Verifies("cone-pressure", Check.WorkedExample,
        "independent collocation (SciPy): pressure at the edge from the seating and the load that it prints, to the digits of the seating")]
    public void Pressure_at_the_edge_follows_from_the_seating_of_an_independent_solution(
        double seatMm, double loadN, double wires, double radial, double shrinkage, double expectedMpa)
    {
        double area = Math.PI * .0115 * .0115;
        var stiffness = ConeFormulas.RadialStiffnessPa(radial, .25, 1.6, 205e9, .29, Trace.None);
        var axial = ConeFormulas.AxialStiffnessN(200e9, wires, 6e9, area, Trace.None);
        var pressure = ConeFormulas.PressurePa(stiffness, seatMm * 1e-3, .11, .0115, shrinkage, .25, loadN, axial, .29, 205e9 * area * 1.56,
            Trace.None);
        Printed.Matches(expectedMpa, pressure * 1e-6, 1e-5);
    }

    [Fact]
    public void Pressure_where_the_cone_stands_off_the_wall_is_none() =>
        Assert.Equal(0, ConeFormulas.PressurePa(9e9, 1e-4, .11, .0115, .006, .25, 0, 38e6, .29, 133e6, Trace.None));
}
