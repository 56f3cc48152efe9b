using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Tests.Numerics.Conduction;

/// <summary>Bodies that textbooks solve.</summary>
internal static class Bodies
{
    public static readonly ConductionTolerance Fine = new(1e-6, 1e-8);

    /// <summary>Radii from 0 in equal rings.</summary>
    public static double[] Even(double radius, int rings, double from = 0) =>
        [.. Enumerable.Range(0, rings + 1).Select(i => from + ((radius - from) * i / rings))];

    /// <summary>One slice of an endless cylinder, 1 m high.</summary>
    public static ConductionNetwork Slice(double[] radii, RingMaterial material, double film) =>
        SliceOf(radii, [.. Enumerable.Repeat(material, radii.Length - 1)], film);

    public static ConductionNetwork SliceOf(double[] radii, RingMaterial[] rings, double film)
    {
        var network = new ConductionNetwork(radii.Length);
        AxisymmetricGrid.AddSlab(network, 0, radii, 1, rings);
        network.Expose(radii.Length - 1, 2 * Math.PI * radii[^1] * film);
        return network;
    }

    /// <summary>A cylinder on the axis with both its ends and its side to the air.</summary>
    public static ConductionNetwork Cylinder(double[] radii, double length, int rows, RingMaterial material, double sideFilm,
        double lowerFilm, double upperFilm)
    {
        var rings = Enumerable.Repeat(material, radii.Length - 1).ToArray();
        var network = new ConductionNetwork(radii.Length * (rows + 1));
        var height = length / rows;
        for (var row = 0; row <= rows; row++)
        {
            var first = row * radii.Length;
            var slab = row is 0 || row == rows ? height / 2 : height;
            AxisymmetricGrid.AddSlab(network, first, radii, slab, rings);
            network.Expose(first + radii.Length - 1, 2 * Math.PI * radii[^1] * slab * sideFilm);
            if (row < rows)
            {
                AxisymmetricGrid.LinkRows(network, first, first + radii.Length, radii, height, rings);
            }
        }

        for (var i = 0; i < radii.Length; i++)
        {
            network.Expose(i, AxisymmetricGrid.FaceM2(radii, i) * lowerFilm);
            network.Expose((rows * radii.Length) + i, AxisymmetricGrid.FaceM2(radii, i) * upperFilm);
        }

        return network;
    }

    /// <summary>Temperatures at a time, all nodes from one temperature at first.</summary>
    public static (double[] Temperatures, ConductionRun Run) At(
        ConductionNetwork network, double from, PiecewiseLinear air, double time, ConductionTolerance? tolerance = null,
        IReaction? reaction = null,
        Func<ConductionStep, bool>? watch = null)
    {
        var solver = new ConductionSolver(network, reaction, air, tolerance ?? Fine);
        var last = new double[network.Nodes];
        var run = solver.Run(
            Enumerable.Repeat(from, network.Nodes).ToArray(), new double[solver.Reacting.Count], 0, time,
            step =>
            {
                step.TemperaturesAfter.CopyTo(last);
                return watch?.Invoke(step) ?? true;
            },
            new Budget(long.MaxValue), TestContext.Current.CancellationToken);
        return (last, run);
    }
}
