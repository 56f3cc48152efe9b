using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>
/// The cone, its socket and the rope below as a body of nodes. Rope parts come first, the farthest first of all; then row by row from the
/// small end to the mouth, each from the axis to the outside. The lines of nodes fan out like the wires.
/// </summary>
internal sealed class ConeModel
{
    private readonly ConeHeatInput _input;
    private readonly ConeGrid _grid;
    private readonly double[] _startHeat;

    private ConeModel(ConeHeatInput input, ConeGrid grid, int rows, int ropeParts)
    {
        (_input, _grid, Rows, RopeParts) = (input, grid, rows, ropeParts);
        Network = new ConductionNetwork(ropeParts + (rows * RowNodes));
        (_startHeat, Places) = (new double[Network.Nodes], new ConePlace[Network.Nodes]);
    }

    public ConductionNetwork Network { get; }

    public ConePlace[] Places { get; }

    public int Rows { get; }

    public int RopeParts { get; }

    public int RowNodes => _grid.ConeRings + _grid.WallRings + 1;

    /// <summary>The cone with its socket and the rope below.</summary>
    public static ConeModel Whole(ConeHeatInput input, ConeGrid grid)
    {
        var hasRope = input.Body.MetallicAreaM2 > 0 && input.Body.RopeBelowM > 0;
        var model = new ConeModel(input, grid, grid.Layers + 1, hasRope ? grid.RopeParts : 0);
        var height = input.Body.LengthM / grid.Layers;
        for (var layer = 0; layer < grid.Layers; layer++)
        {
            model.AddHalfLayer(layer, (layer + .25) * height, height / 2);
            model.AddHalfLayer(layer + 1, (layer + .75) * height, height / 2);
            var middle = (layer + .5) * height;
            AxisymmetricGrid.LinkRows(model.Network, model.Node(layer, 0), model.Node(layer + 1, 0), model.Radii(middle), height, model.Rings(middle));
        }

        model.OpenEnds();
        model.AddRope();
        for (var row = 0; row < model.Rows; row++)
        {
            model.Place(row, row * height);
        }

        return model;
    }

    /// <summary>A slice of 1 m height that neither gains nor loses along the axis, sized as at a share of the cone.</summary>
    public static ConeModel Slice(ConeHeatInput input, ConeGrid grid, double share)
    {
        var model = new ConeModel(input, grid, rows: 1, ropeParts: 0);
        var at = share * input.Body.LengthM;
        model.AddHalfLayer(0, at, 1);
        model.Place(0, at);
        return model;
    }

    public int Node(int row, int place) => RopeParts + (row * RowNodes) + place;

    public int Axis(int row) => Node(row, 0);

    public int Skin(int row) => Node(row, _grid.ConeRings);

    public int Outside(int row) => Node(row, RowNodes - 1);

    public double[] StartTemperatures()
    {
        var start = new double[Network.Nodes];
        for (var i = 0; i < start.Length; i++)
        {
            start[i] = _startHeat[i] / Network.CapacityJPerK[i];
        }

        return start;
    }

    private ConeBody Body => _input.Body;

    private ConeMaterials Materials => _input.Materials;

    private RingMaterial Steel => new(
        Materials.SteelDensityKgPerM3 * Materials.SteelSpecificHeatJPerKgK, Materials.SteelConductivityWPerMK, Materials.SteelConductivityWPerMK);

    private double Bore(double z) => (Body.SmallEndDiameterM + ((Body.LargeEndDiameterM - Body.SmallEndDiameterM) * z / Body.LengthM)) / 2;

    private double Outer(double z) => (Body.OuterAtSmallEndM + ((Body.OuterAtMouthM - Body.OuterAtSmallEndM) * z / Body.LengthM)) / 2;

    private void AddHalfLayer(int row, double z, double height)
    {
        var radii = Radii(z);
        var rings = Rings(z);
        var (cone, wall) = (_grid.ConeRings, _grid.WallRings);
        var fraction = ConeMixture.WireFraction(Body.MetallicAreaM2, Bore(z), Trace.None);
        var mixed = ConeMixture.StartK(fraction, _input.Surroundings.SteelK, _input.Surroundings.CompoundK, Materials, Trace.None);
        Fill(Axis(row), cone + 1, mixed, () => AxisymmetricGrid.AddSlab(Network, Axis(row), radii.AsSpan(0, cone + 1), height, rings.AsSpan(0, cone)));
        Fill(Skin(row), wall + 1, _input.Surroundings.SteelK,
            () => AxisymmetricGrid.AddSlab(Network, Skin(row), radii.AsSpan(cone), height, rings.AsSpan(cone)));
        var taper = (Body.OuterAtMouthM - Body.OuterAtSmallEndM) / (2 * Body.LengthM);
        var slant = Rows > 1 ? Math.Sqrt(1 + (taper * taper)) : 1;
        Network.Expose(Outside(row), 2 * Math.PI * Outer(z) * height * slant * _input.Surroundings.FilmWPerM2K);
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
        var film = _input.Surroundings.FilmWPerM2K;
        var below = Radii(0).AsSpan(_grid.ConeRings);
        for (var i = 0; i < below.Length; i++)
        {
            Network.Expose(Skin(0) + i, AxisymmetricGrid.FaceM2(below, i) * film);
        }

        var above = Radii(Body.LengthM);
        for (var i = 0; i < above.Length; i++)
        {
            Network.Expose(Node(Rows - 1, i), AxisymmetricGrid.FaceM2(above, i) * film);
        }
    }

    /// <summary>The rope below: its wires lead heat away and give it to the air. Each part is 1.4 times the one nearer to the socket.</summary>
    private void AddRope()
    {
        const double Growth = 1.4;
        var (metal, steel) = (Body.MetallicAreaM2, Steel);
        var length = RopeParts == 0 ? 0 : Body.RopeBelowM * (Growth - 1) / (Math.Pow(Growth, RopeParts) - 1);
        var depth = 0.0;
        var bottom = Radii(0).AsSpan(0, _grid.ConeRings + 1).ToArray();
        var section = Math.PI * bottom[^1] * bottom[^1];
        for (var part = RopeParts - 1; part >= 0; part--)
        {
            var half = metal * steel.HeatCapacityJPerM3K * length / 2;
            var conductance = metal * steel.AxialWPerMK / length;
            depth += length;
            Places[part] = new(-depth, 0);
            Fill(part, 1, _input.Surroundings.SteelK, () => Network.AddMaterial(part, half));
            ExposeRope(part, length / 2);
            if (part < RopeParts - 1)
            {
                Fill(part + 1, 1, _input.Surroundings.SteelK, () => Network.AddMaterial(part + 1, half));
                ExposeRope(part + 1, length / 2);
                Network.Link(part, part + 1, conductance);
            }
            else
            {
                for (var i = 0; i < bottom.Length; i++)
                {
                    var share = AxisymmetricGrid.FaceM2(bottom, i) / section;
                    Fill(Node(0, i), 1, _input.Surroundings.SteelK, () => Network.AddMaterial(Node(0, i), half * share));
                    Network.Link(part, Node(0, i), conductance * share);
                }
            }

            length *= Growth;
        }
    }

    private void ExposeRope(int node, double length) => Network.Expose(node, Math.PI * Body.RopeDiameterM * length * _input.Surroundings.FilmWPerM2K);

    private void Place(int row, double z)
    {
        var radii = Radii(z);
        for (var i = 0; i < RowNodes; i++)
        {
            Places[Node(row, i)] = new(z, radii[i]);
        }
    }

    /// <summary>Where the nodes of a section stand: closer together towards the skin, where the steel pulls.</summary>
    private double[] Radii(double z)
    {
        var (bore, outer) = (Bore(z), Outer(z));
        var radii = new double[RowNodes];
        for (var i = 0; i <= _grid.ConeRings; i++)
        {
            var even = (double)i / _grid.ConeRings;
            radii[i] = bore * even * (1.5 - (.5 * even));
        }

        for (var i = 1; i <= _grid.WallRings; i++)
        {
            radii[_grid.ConeRings + i] = bore + ((outer - bore) * i / _grid.WallRings);
        }

        return radii;
    }

    private RingMaterial[] Rings(double z)
    {
        var cone = Mixed(z);
        return [.. Enumerable.Repeat(cone, _grid.ConeRings), .. Enumerable.Repeat(Steel, _grid.WallRings)];
    }

    private RingMaterial Mixed(double z)
    {
        var fraction = ConeMixture.WireFraction(Body.MetallicAreaM2, Bore(z), Trace.None);
        var density = ConeMixture.DensityKgPerM3(fraction, Materials, Trace.None);
        var (steel, compound) = (Materials.SteelConductivityWPerMK, Materials.CompoundConductivityWPerMK);
        return new(
            density * ConeMixture.SpecificHeatJPerKgK(fraction, density, Materials, Trace.None),
            ConeMixture.RadialConductivityWPerMK(fraction, steel, compound, Trace.None),
            ConeMixture.AxialConductivityWPerMK(fraction, steel, compound, Trace.None),
            density * ConeMixture.ReactionHeatJPerKg(fraction, density, Materials, Trace.None));
    }
}
