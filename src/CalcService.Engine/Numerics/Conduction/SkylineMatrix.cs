namespace CalcService.Engine.Numerics.Conduction;

/// <summary>
/// A symmetric matrix stored row by row from its first entry to the diagonal, and its L·D·Lᵀ in the same places. On a
/// rod that is the tridiagonal solver, on a grid the banded one, with shorter rows where the body is thinner.
/// </summary>
internal sealed class SkylineMatrix
{
    private readonly int[] _first;
    private readonly int[] _start;
    private readonly double[] _entries;
    private readonly double[] _inverseDiagonal;

    public SkylineMatrix(int rows, ReadOnlySpan<HeatLink> links)
    {
        _first = new int[rows];
        _start = new int[rows + 1];
        for (var i = 0; i < rows; i++)
        {
            _first[i] = i;
        }

        foreach (var link in links)
        {
            _first[link.To] = Math.Min(_first[link.To], link.From);
        }

        for (var i = 0; i < rows; i++)
        {
            _start[i + 1] = _start[i] + i - _first[i] + 1;
        }

        _entries = new double[_start[rows]];
        _inverseDiagonal = new double[rows];
    }

    public int Entries => _entries.Length;

    public Span<double> Values => _entries;

    /// <summary>Where an entry of the lower half lies among the values.</summary>
    public int Place(int row, int column) => _start[row] + column - _first[row];

    /// <summary>Turns the values into factors; false where a pivot isn't positive.</summary>
    public bool Factor()
    {
        for (var i = 0; i < _first.Length; i++)
        {
            var from = _first[i];
            var row = _entries.AsSpan(_start[i], i - from);
            for (var j = from + 1; j < i; j++)
            {
                var start = Math.Max(from, _first[j]);
                row[j - from] -= Vectors.Dot(row[(start - from)..(j - from)], _entries.AsSpan(_start[j] + start - _first[j], j - start));
            }

            var pivot = _entries[_start[i] + i - from];
            for (var j = 0; j < row.Length; j++)
            {
                var unscaled = row[j];
                row[j] = unscaled * _inverseDiagonal[from + j];
                pivot -= unscaled * row[j];
            }

            if (!(pivot > 0) || !double.IsFinite(pivot))
            {
                return false;
            }

            _inverseDiagonal[i] = 1 / pivot;
        }

        return true;
    }

    /// <summary>Solves with the factors, in place.</summary>
    public void Solve(Span<double> x)
    {
        for (var i = 0; i < x.Length; i++)
        {
            var from = _first[i];
            x[i] -= Vectors.Dot(_entries.AsSpan(_start[i], i - from), x[from..i]);
        }

        for (var i = 0; i < x.Length; i++)
        {
            x[i] *= _inverseDiagonal[i];
        }

        for (var i = x.Length - 1; i >= 0; i--)
        {
            var from = _first[i];
            Vectors.Add(x[from..i], -x[i], _entries.AsSpan(_start[i], i - from));
        }
    }
}
