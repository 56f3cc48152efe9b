using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Tests.Ropes;

public sealed class RopeClassTableTests
{
    // EN 12385, as tabulated in K. Feyrer, Wire Ropes, Table 1.9: W, C, K with fibre core, W, C, K with steel core.
    [Theory]
    [InlineData("6x7", .345, .369, .332, .384, .432, .359)]
    [InlineData("8x7", .327, .335, .291, .391, .439, .359)]
    [InlineData("6x19", .359, .384, .330, .400, .449, .356)]
    [InlineData("8x19", .340, .349, .293, .407, .457, .356)]
    [InlineData("6x36", .367, .393, .330, .409, .460, .356)]
    [InlineData("8x36", .348, .357, .293, .417, .468, .356)]
    [InlineData("6x19M", .344, .357, .307, .372, .418, .332)]
    [InlineData("6x37M", .334, .357, .295, .372, .418, .319)]
    [InlineData("18x7", .382, .408, .328, .401, .433, .328)]
    [InlineData("34x7", .390, .416, .318, .401, .428, .318)]
    public void Class_has_the_factors_of_the_standard(
        string designation, double fibreMass, double fibreArea, double fibreForce, double steelMass, double steelArea, double steelForce)
    {
        var found = RopeClassTable.Find(designation)!;

        Assert.Equal((fibreMass, fibreArea, fibreForce),
            (found.FibreCore.Mass, found.FibreCore.MetallicArea, found.FibreCore.BreakingForce));
        Assert.Equal((steelMass, steelArea, steelForce),
            (found.SteelCore.Mass, found.SteelCore.MetallicArea, found.SteelCore.BreakingForce));
    }

    [Fact]
    public void Table_has_no_class_beyond_the_ones_that_were_compared() =>
        Assert.Equal(["6x7", "8x7", "6x19", "8x19", "6x36", "8x36", "6x19M", "6x37M", "18x7", "34x7"],
            RopeClassTable.All.Select(rope => rope.Designation));

    [Fact]
    public void Class_counts_strands_times_wires_of_its_designation() =>
        Assert.All(RopeClassTable.All, rope =>
        {
            var numbers = rope.Designation.TrimEnd('M').Split('x').Select(number => int.Parse(number, CultureInfo.InvariantCulture))
                .ToArray();
            Assert.Equal(numbers[0] * numbers[1], rope.FibreCore.Wires);
            // The steel core is a 1x7 strand or a 7x7 rope.
            Assert.True(rope.SteelCore.Wires - rope.FibreCore.Wires is 7 or 49);
        });

    [Fact]
    public void Class_fills_its_circle_with_less_metal_than_there_is_room() =>
        Assert.All(RopeClassTable.All, rope =>
        {
            Assert.InRange(rope.FibreCore.MetallicArea, .3, Math.PI / 4);
            Assert.InRange(rope.SteelCore.MetallicArea, rope.FibreCore.MetallicArea, Math.PI / 4);
        });

    [Fact]
    public void Class_weighs_about_its_metal() =>
        // Steel of 7850 kg/m³ weighs 0.785 kg per 100 m and mm²; lay and lubricant add to it, a fibre core adds more.
        Assert.All(RopeClassTable.All, rope =>
        {
            Assert.InRange(rope.FibreCore.Mass / rope.FibreCore.MetallicArea / .785, 1.1, 1.3);
            Assert.InRange(rope.SteelCore.Mass / rope.SteelCore.MetallicArea / .785, 1.1, 1.2);
        });

    [Fact]
    public void Table_is_the_data_that_was_compared()
    {
        // A guard against a silent change of the data, no check of its truth: the rows above are that.
        var text = new StringBuilder();
        foreach (var rope in RopeClassTable.All)
        {
            foreach (var factors in new[] { rope.FibreCore, rope.SteelCore })
            {
                text.Append(CultureInfo.InvariantCulture,
                    $"{rope.Designation}|{factors.Mass:R}|{factors.MetallicArea:R}|{factors.BreakingForce:R}|{factors.Wires}\n");
            }
        }

        Assert.Equal("fe7d4747f5fbce2cbef74ae359460d69d07c8b10f0f994f2abc78f44598e2f84",
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString()))));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("6X36")]
    [InlineData("6x25F")]
    [InlineData("locked coil")]
    public void Class_that_the_table_does_not_have_is_estimated_by_nobody(string? designation) =>
        Assert.Null(RopeClassTable.Find(designation));

    [Fact]
    public void Class_without_its_core_has_no_factors() => Assert.Null(RopeClassTable.Find("6x36")!.FactorsFor(RopeCore.Unknown));
}
