using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>
/// A chart of single values as they come. Mean and moving range hold over all of them; of the values themselves so many are kept as
/// memory is given, for the rules that need them one by one.
/// </summary>
/// <param name="mostKept">Values kept.</param>
public sealed class IndividualsChart(int mostKept)
{
    private readonly List<double> _kept = [];
    private double _ranges;
    private double _last;

    public long Count { get; private set; }

    public double Mean { get; private set; }

    /// <summary>The first values, in their order.</summary>
    public IReadOnlyList<double> Kept => _kept;

    /// <summary>Standard deviation from the moving range; null below two values.</summary>
    public double? Deviation => Count < 2 ? null : ChartFormulas.Deviation(_ranges / (Count - 1), Trace.None);

    public void Add(double value)
    {
        Count++;
        Mean += (value - Mean) / Count;
        _ranges += Count > 1 ? Math.Abs(value - _last) : 0;
        _last = value;
        if (_kept.Count < mostKept)
        {
            _kept.Add(value);
        }
    }
}
