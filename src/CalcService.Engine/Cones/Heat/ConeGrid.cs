using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>How finely the body is divided and how close each step must come.</summary>
/// <param name="ConeRings">Rings from axis to skin; thinner towards the skin.</param>
/// <param name="WallRings">Rings of the steel.</param>
/// <param name="Layers">Layers from small end to mouth.</param>
/// <param name="RopeParts">Parts of the rope below, longer away from the socket.</param>
/// <param name="Tolerance">Error allowed in a step.</param>
public sealed record ConeGrid(int ConeRings, int WallRings, int Layers, int RopeParts, ConductionTolerance Tolerance)
{
    /// <summary>For a slice: within 0.1 K and 0.1 min of a fine solution.</summary>
    public static ConeGrid Slice { get; } = new(24, 3, 1, 0, new(.1, 5e-4));

    /// <summary>For the whole cone: within 0.5 K and 0.5 min of a fine solution.</summary>
    public static ConeGrid Whole { get; } = new(14, 2, 20, 10, new(.1, 5e-4));
}
