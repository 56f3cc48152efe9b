namespace CalcService.Engine.Tests.Cones.Heat;

/// <summary>
/// Conductivity across a square array of round wires, from a quarter of one cell: heat enters at the left and leaves at the right.
/// </summary>
internal static class SquareArray
{
    private const int Cells = 64;

    public static double Conductivity(double fraction, double wire, double between)
    {
        // The quarter of a unit cell has the wire's centre in its corner; squares that the edge cuts mix by area.
        var radius = Math.Sqrt(4 * fraction / Math.PI);
        var k = Enumerable.Range(0, Cells).Select(_ => new double[Cells]).ToArray();
        for (var i = 0; i < Cells; i++)
        {
            for (var j = 0; j < Cells; j++)
            {
                k[i][j] = Mix(Share(i, j, radius), wire, between);
            }
        }

        var t = Enumerable.Range(0, Cells).Select(_ => new double[Cells]).ToArray();
        for (var i = 0; i < Cells; i++)
        {
            for (var j = 0; j < Cells; j++)
            {
                t[i][j] = (i + .5) / Cells;
            }
        }

        for (var sweep = 0; sweep < 6000; sweep++)
        {
            for (var i = 0; i < Cells; i++)
            {
                for (var j = 0; j < Cells; j++)
                {
                    var (sum, weight) = (0.0, 0.0);
                    void Add(double g, double at) => (sum, weight) = (sum + (g * at), weight + g);
                    Add(i == 0 ? 2 * k[i][j] : Series(k[i - 1][j], k[i][j]), i == 0 ? 0 : t[i - 1][j]);
                    Add(i == Cells - 1 ? 2 * k[i][j] : Series(k[i + 1][j], k[i][j]), i == Cells - 1 ? 1 : t[i + 1][j]);
                    if (j > 0)
                    {
                        Add(Series(k[i][j - 1], k[i][j]), t[i][j - 1]);
                    }

                    if (j < Cells - 1)
                    {
                        Add(Series(k[i][j + 1], k[i][j]), t[i][j + 1]);
                    }

                    t[i][j] += 1.9 * ((sum / weight) - t[i][j]);
                }
            }
        }

        return Enumerable.Range(0, Cells).Sum(j => 2 * k[0][j] * t[0][j]);
    }

    private static double Series(double a, double b) => 2 * a * b / (a + b);

    /// <summary>Mean of the mixtures side by side and behind each other, by their geometric mean.</summary>
    private static double Mix(double share, double wire, double between) => Math.Pow(wire, share) * Math.Pow(between, 1 - share);

    private static double Share(int i, int j, double radius)
    {
        var inside = 0;
        for (var a = 0; a < 8; a++)
        {
            for (var b = 0; b < 8; b++)
            {
                var (x, y) = ((i + ((a + .5) / 8)) / Cells, (j + ((b + .5) / 8)) / Cells);
                inside += (x * x) + (y * y) < radius * radius ? 1 : 0;
            }
        }

        return inside / 64.0;
    }
}
