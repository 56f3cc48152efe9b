namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// Rows of nodes across a body of revolution, as finite volumes. The nodes stand at the corners of the rings, so that
/// axis, interfaces and surfaces have nodes of their own, and each ring gives its halves to the nodes on both sides. Row upon row
/// may have other radii: then heat runs from row to row along the lines through the nodes of the same number.
/// </summary>
public static class AxisymmetricGrid
{
    /// <summary>Gives a row of nodes a slab of the body and links the nodes across it.</summary>
    /// <param name="network">What is built.</param>
    /// <param name="firstNode">The node at the first radius; the others follow.</param>
    /// <param name="radiiM">Where the nodes stand, rising; 0 for the axis.</param>
    /// <param name="heightM">Height of the slab.</param>
    /// <param name="rings">What lies between each two radii.</param>
    public static void AddSlab(ConductionNetwork network, int firstNode, ReadOnlySpan<double> radiiM, double heightM,
        ReadOnlySpan<RingMaterial> rings)
    {
        for (var i = 0; i < rings.Length; i++)
        {
            var middle = (radiiM[i] + radiiM[i + 1]) / 2;
            AddRing(network, firstNode + i, Annulus(radiiM[i], middle) * heightM, rings[i]);
            AddRing(network, firstNode + i + 1, Annulus(middle, radiiM[i + 1]) * heightM, rings[i]);
            var path = radiiM[i + 1] - radiiM[i];
            network.Link(firstNode + i, firstNode + i + 1, 2 * Math.PI * middle * heightM * rings[i].RadialWPerMK / path);
        }
    }

    /// <summary>Links each node of a row with the node above it.</summary>
    /// <param name="network">What is built.</param>
    /// <param name="lowerNode">First node of the lower row.</param>
    /// <param name="upperNode">First node of the upper row.</param>
    /// <param name="radiiM">The radii half-way between the rows.</param>
    /// <param name="distanceM">From row to row.</param>
    /// <param name="rings">What lies between each two radii.</param>
    public static void LinkRows(
        ConductionNetwork network, int lowerNode, int upperNode, ReadOnlySpan<double> radiiM, double distanceM,
        ReadOnlySpan<RingMaterial> rings)
    {
        for (var i = 0; i < radiiM.Length; i++)
        {
            var conductance = (Inner(radiiM, i) * (i > 0 ? rings[i - 1].AxialWPerMK : 0))
                + (Outer(radiiM, i) * (i < rings.Length ? rings[i].AxialWPerMK : 0));
            network.Link(lowerNode + i, upperNode + i, conductance / distanceM);
        }
    }

    /// <summary>The part of a flat face that belongs to a node: half of the rings on both sides of it, m².</summary>
    public static double FaceM2(ReadOnlySpan<double> radiiM, int node) => Inner(radiiM, node) + Outer(radiiM, node);

    private static double Inner(ReadOnlySpan<double> radiiM, int node) =>
        node == 0 ? 0 : Annulus((radiiM[node - 1] + radiiM[node]) / 2, radiiM[node]);

    private static double Outer(ReadOnlySpan<double> radiiM, int node) =>
        node == radiiM.Length - 1 ? 0 : Annulus(radiiM[node], (radiiM[node] + radiiM[node + 1]) / 2);

    private static double Annulus(double inner, double outer) => Math.PI * ((outer * outer) - (inner * inner));

    private static void AddRing(ConductionNetwork network, int node, double volumeM3, RingMaterial material)
    {
        network.AddMaterial(node, volumeM3 * material.HeatCapacityJPerM3K);
        if (material.ReactionHeatJPerM3 is { } heat)
        {
            network.AddReaction(node, volumeM3 * heat);
        }
    }
}
