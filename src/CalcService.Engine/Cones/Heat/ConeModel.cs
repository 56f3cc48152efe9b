using CalcService.Engine.Numerics;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones.Heat;

/// <summary>
/// The cone, its socket and the rope below as a body of nodes. Rope parts come first, the farthest first of all; then row by row from the
/// small end to the mouth, each from the axis to the outside. The lines of nodes fan out like the wires.
/// </summary>
internal sealed class ConeModel
{
    private readonly ConeHeatInput _input;
    private readonly ConeGrid _grid;
    private readonly int _ropeParts;
    private readonly double[] _startHeat;

    private ConeModel(ConeHeatInput input, ConeGrid grid, int rows, int ropeParts)
    {
        (_input, _grid, Rows, _ropeParts) = (input, grid, rows, ropeParts);
        Network = new ConductionNetwork(ropeParts + (rows * RowNodes));
        (_startHeat, Places) = (new double[Network.Nodes], new ConePlace[Network.Nodes]);
    }

    public ConductionNetwork Network { get; }

    public ConePlace[] Places { get; }

    public int Rows { get; }

    private int RowNodes => _grid.ConeRings + _grid.WallRings + 1;

    private double FilmWPerM2K => _input.Surroundings.FilmWPerM2K;

    /// <summary>The cone with its socket and the rope below; the row of nodes next to the curve writes its formulas.</summary>
    public static ConeModel Whole(ConeHeatInput input, ConeGrid grid, Trace trace)
    {
        var hasRope = input.Body is { MetallicAreaM2: > 0, RopeBelowM: > 0 };
        var model = new ConeModel(input, grid, grid.Layers + 1, hasRope ? grid.RopeParts : 0);
        var height = input.Body.LengthM / grid.Layers;
        for (var layer = 0; layer < grid.Layers; layer++)
        {
            model.AddSlab(layer, model.At((layer + .25) * height), height / 2);
            model.AddSlab(layer + 1, model.At((layer + .75) * height), height / 2);
            var between = model.At((layer + .5) * height);
            AxisymmetricGrid.LinkRows(model.Network, model.Axis(layer), model.Axis(layer + 1), between.RadiiM, height, between.Rings);
        }

        model.OpenEnds();
        model.AddRope();
        var curve = (int)Math.Round(input.CurveShare * grid.Layers);
        for (var row = 0; row < model.Rows; row++)
        {
            model.Place(row, row * height, new ConeSection(input, grid, row * height, row == curve ? trace : Trace.None));
        }

        return model;
    }

    /// <summary>A slice of 1 m height that neither gains nor loses along the axis, sized as at a share of the cone.</summary>
    public static ConeModel Slice(ConeHeatInput input, ConeGrid grid, double share, Trace trace)
    {
        var model = new ConeModel(input, grid, rows: 1, ropeParts: 0);
        var at = share * input.Body.LengthM;
        var section = new ConeSection(input, grid, at, trace);
        model.AddSlab(0, section, 1);
        model.Place(0, at, section);
        return model;
    }

    public int Axis(int row) => _ropeParts + (row * RowNodes);

    public int Skin(int row) => Axis(row) + _grid.ConeRings;

    public int Outside(int row) => Axis(row) + RowNodes - 1;

    public double[] StartTemperatures() => [.. _startHeat.Select((heat, node) => heat / Network.CapacityJPerK[node])];

    private ConeSection At(double z) => new(_input, _grid, z, Trace.None);

    /// <summary>Gives a row a slab that is sized as a section: the cone, the steel around it, the outside.</summary>
    private void AddSlab(int row, ConeSection section, double height)
    {
        Fill(Axis(row), section.ConeRadii.Length, section.StartK,
            () => AxisymmetricGrid.AddSlab(Network, Axis(row), section.ConeRadii, height, section.ConeRings));
        Fill(Skin(row), section.WallRadii.Length, _input.Surroundings.SteelK,
            () => AxisymmetricGrid.AddSlab(Network, Skin(row), section.WallRadii, height, section.WallRings));
        var taper = (_input.Body.OuterAtMouthM - _input.Body.OuterAtSmallEndM) / (2 * _input.Body.LengthM);
        var slant = Rows > 1 ? Math.Sqrt(1 + (taper * taper)) : 1;
        Network.Expose(Outside(row), 2 * Math.PI * section.OuterM * height * slant * FilmWPerM2K);
    }

    /// <summary>Adds material and remembers how warm it comes.</summary>
    private void Fill(int first, int count, double kelvins, Action add)
    {
        var before = Network.CapacityJPerK.Slice(first, count).ToArray();
        add();
        for (var i = 0; i < count; i++)
        {
            _startHeat[first + i] += (Network.CapacityJPerK[first + i] - before[i]) * kelvins;
        }
    }

    /// <summary>The compound's face at the mouth and the steel at both ends see the air; the small end of the cone is sealed.</summary>
    private void OpenEnds()
    {
        var below = At(0).WallRadii;
        for (var i = 0; i < below.Length; i++)
        {
            Network.Expose(Skin(0) + i, AxisymmetricGrid.FaceM2(below, i) * FilmWPerM2K);
        }

        var above = At(_input.Body.LengthM).RadiiM;
        for (var i = 0; i < above.Length; i++)
        {
            Network.Expose(Axis(Rows - 1) + i, AxisymmetricGrid.FaceM2(above, i) * FilmWPerM2K);
        }
    }

    /// <summary>
    /// The rope below: its wires lead heat away and give it to the air. Each part is 1.4 times the one nearer to the socket.
    /// </summary>
    private void AddRope()
    {
        const double Growth = 1.4;
        var (metal, steel) = (_input.Body.MetallicAreaM2, ConeSection.Steel(_input.Materials));
        var length = _ropeParts == 0 ? 0 : _input.Body.RopeBelowM * (Growth - 1) / (Elementary.Pow(Growth, _ropeParts) - 1);
        var depth = 0.0;
        for (var part = _ropeParts - 1; part >= 0; part--, length *= Growth)
        {
            depth += length;
            Places[part] = new(-depth, 0);
            AddRopeHalf(part, 1, length / 2);
            var isFirst = part == _ropeParts - 1;
            // The first part begins at the small end of the cone, spread over its nodes.
            foreach (var (node, share) in isFirst ? SmallEnd() : [(part + 1, 1.0)])
            {
                AddRopeHalf(node, share, length / 2);
                Network.Link(part, node, share * metal * steel.AxialWPerMK / length);
            }
        }
    }

    private void AddRopeHalf(int node, double share, double length)
    {
        var (body, steel) = (_input.Body, ConeSection.Steel(_input.Materials));
        Fill(node, 1, _input.Surroundings.SteelK,
            () => Network.AddMaterial(node, share * body.MetallicAreaM2 * length * steel.HeatCapacityJPerM3K));
        Network.Expose(node, share * Math.PI * body.RopeDiameterM * length * FilmWPerM2K);
    }

    /// <summary>The nodes at the small end of the cone with their shares of its section.</summary>
    private (int Node, double Share)[] SmallEnd()
    {
        var section = At(0);
        var radii = section.ConeRadii.ToArray();
        return [.. radii.Select((_, i) => (Axis(0) + i, AxisymmetricGrid.FaceM2(radii, i) / (Math.PI * section.BoreM * section.BoreM)))];
    }

    private void Place(int row, double z, ConeSection section)
    {
        for (var i = 0; i < RowNodes; i++)
        {
            Places[Axis(row) + i] = new(z, section.RadiiM[i]);
        }
    }
}
