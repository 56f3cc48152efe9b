using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Provenance;
using CalcService.Engine.Tests.Numerics;
using CalcService.Engine.Tests.Provenance;

namespace CalcService.Engine.Tests.Pouring.TakeOff;

public sealed class EndMaterialsTests
{
    [Theory]
    [InlineData(.020, .010, .020)]
    [InlineData(.013, .002, .050)]
    [InlineData(.100, .050, .010)]
    [Verifies("seal-collar", Check.Analytic, "cylinder over the collar less the rope in it, π/4·((d + 2t)² − d²)·h")]
    public void Collar_is_a_cylinder_less_the_rope(double rope, double thickness, double height) =>
        Printed.Matches(Math.PI / 4 * (Math.Pow(rope + (2 * thickness), 2) - (rope * rope)) * height,
        EndMaterials.SealCollarM3(rope, thickness, height, Trace.None));

    [Fact]
    [Verifies("seal-collar", Check.WorkedExample, "by hand: rope 20 mm, collar 10 mm thick and 20 mm high, π·10·30·20 = 18,850 mm³")]
    public void Collar_of_a_20_mm_rope_is_the_one_worked_by_hand() =>
        Printed.Agrees(18850e-9, EndMaterials.SealCollarM3(.020, .010, .020, Trace.None), 5);

    [Fact]
    [Verifies("cleaner-baths", Check.WorkedExample, "by hand: two baths of a basket of 93.960 cm³")]
    public void Cleaner_fills_the_basket_twice() => Printed.Agrees(187.92e-6, EndMaterials.CleanerM3(2, 93.960e-6, Trace.None), 5);
}
