using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <summary>One section across cone and socket: where its nodes stand and what lies between them.</summary>
internal sealed class ConeSection
{
    private readonly ConeGrid _grid;

    /// <param name="input">The cone.</param>
    /// <param name="grid">How it is divided.</param>
    /// <param name="aboveSmallEndM">Where the section is.</param>
    /// <param name="trace">Gets the formulas of the mixture.</param>
    public ConeSection(ConeHeatInput input, ConeGrid grid, double aboveSmallEndM, Trace trace)
    {
        _grid = grid;
        var (body, materials) = (input.Body, input.Materials);
        var share = aboveSmallEndM / body.LengthM;
        BoreM = (body.SmallEndDiameterM + (share * (body.LargeEndDiameterM - body.SmallEndDiameterM))) / 2;
        OuterM = (body.OuterAtSmallEndM + (share * (body.OuterAtMouthM - body.OuterAtSmallEndM))) / 2;
        var fraction = ConeMixture.WireFraction(body.MetallicAreaM2, BoreM, trace);
        if (!(OuterM > BoreM && fraction < 1))
        {
            throw new ArgumentException("The socket has a wall all along, and the wires leave room for compound.", nameof(input));
        }

        RadiiM = Nodes();
        Rings = [.. Enumerable.Repeat(Mixed(fraction, materials, trace), grid.ConeRings),
            .. Enumerable.Repeat(Steel(materials), grid.WallRings)];
        StartK = ConeMixture.StartK(fraction, input.Surroundings.SteelK, input.Surroundings.CompoundK, materials, trace);
    }

    public double BoreM { get; }

    public double OuterM { get; }

    /// <summary>What wires and compound come to when they meet.</summary>
    public double StartK { get; }

    public double[] RadiiM { get; }

    public RingMaterial[] Rings { get; }

    public ReadOnlySpan<double> ConeRadii => RadiiM.AsSpan(0, _grid.ConeRings + 1);

    public ReadOnlySpan<double> WallRadii => RadiiM.AsSpan(_grid.ConeRings);

    public ReadOnlySpan<RingMaterial> ConeRings => Rings.AsSpan(0, _grid.ConeRings);

    public ReadOnlySpan<RingMaterial> WallRings => Rings.AsSpan(_grid.ConeRings);

    public static RingMaterial Steel(ConeMaterials materials) => new(
        materials.SteelDensityKgPerM3 * materials.SteelSpecificHeatJPerKgK, materials.SteelConductivityWPerMK,
        materials.SteelConductivityWPerMK);

    private static RingMaterial Mixed(double fraction, ConeMaterials materials, Trace trace)
    {
        var density = ConeMixture.DensityKgPerM3(fraction, materials, trace);
        var (steel, compound) = (materials.SteelConductivityWPerMK, materials.CompoundConductivityWPerMK);
        return new(
            density * ConeMixture.SpecificHeatJPerKgK(fraction, density, materials, trace),
            ConeMixture.RadialConductivityWPerMK(fraction, steel, compound, trace),
            ConeMixture.AxialConductivityWPerMK(fraction, steel, compound, trace),
            density * ConeMixture.ReactionHeatJPerKg(fraction, density, materials, trace));
    }

    /// <summary>Closer together towards the skin, where the steel pulls.</summary>
    private double[] Nodes()
    {
        var radii = new double[_grid.ConeRings + _grid.WallRings + 1];
        for (var i = 0; i <= _grid.ConeRings; i++)
        {
            var even = (double)i / _grid.ConeRings;
            radii[i] = BoreM * even * (1.5 - (.5 * even));
        }

        for (var i = 1; i <= _grid.WallRings; i++)
        {
            radii[_grid.ConeRings + i] = BoreM + ((OuterM - BoreM) * i / _grid.WallRings);
        }

        return radii;
    }
}
