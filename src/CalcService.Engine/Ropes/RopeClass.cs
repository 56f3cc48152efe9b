using CalcService.Engine.Provenance;

namespace CalcService.Engine.Ropes;

/// <summary>Factors of one rope class with one kind of core.</summary>
/// <param name="Mass">W, kg per 100 m for each mm² of d².</param>
/// <param name="MetallicArea">C, mm² for each mm² of d².</param>
/// <param name="BreakingForce">K, minimum breaking force factor.</param>
/// <param name="Wires">Nominal number of wires that the factors count as metal.</param>
public sealed record RopeFactors(double Mass, double MetallicArea, double BreakingForce, int Wires);

/// <summary>A rope class by the designation that the trade uses, with its factors for each kind of core.</summary>
public sealed record RopeClass(string Designation, RopeFactors FibreCore, RopeFactors SteelCore)
{
    /// <summary>The factors for a core, or null where the core isn't said.</summary>
    public RopeFactors? FactorsFor(RopeCore core) => core switch
    {
        RopeCore.Fibre => FibreCore,
        RopeCore.Iwrc => SteelCore,
        _ => null,
    };
}

/// <summary>
/// Rope classes of EN 12385 as tabulated in K. Feyrer, Wire Ropes, Table 1.9. The wire counts are the designation's
/// strands times wires (derived) with a 7x7 rope as steel core, or a 1x7 strand where the rope has one (from memory).
/// </summary>
public static class RopeClassTable
{
    public static Source Source { get; } = new("EN 12385, as tabulated in K. Feyrer, Wire Ropes", "Table 1.9", Basis.Published);

    public static Source WireCountSource { get; } = new("strands × wires of the designation, with a 7x7 or 1x7 steel core", "",
        Basis.FromMemory);

    public static IReadOnlyList<RopeClass> All { get; } =
    [
        new("6x7", new(.345, .369, .332, 42), new(.384, .432, .359, 49)),
        new("8x7", new(.327, .335, .291, 56), new(.391, .439, .359, 105)),
        new("6x19", new(.359, .384, .330, 114), new(.400, .449, .356, 163)),
        new("8x19", new(.340, .349, .293, 152), new(.407, .457, .356, 201)),
        new("6x36", new(.367, .393, .330, 216), new(.409, .460, .356, 265)),
        new("8x36", new(.348, .357, .293, 288), new(.417, .468, .356, 337)),
        new("6x19M", new(.344, .357, .307, 114), new(.372, .418, .332, 163)),
        new("6x37M", new(.334, .357, .295, 222), new(.372, .418, .319, 271)),
        new("18x7", new(.382, .408, .328, 126), new(.401, .433, .328, 133)),
        new("34x7", new(.390, .416, .318, 238), new(.401, .428, .318, 245)),
    ];

    /// <summary>The class with this designation, or null: an unknown construction is estimated by nobody.</summary>
    public static RopeClass? Find(string? designation) =>
        All.FirstOrDefault(rope => string.Equals(rope.Designation, designation, StringComparison.Ordinal));
}
