namespace CalcService.Engine.Compounds;

/// <summary>
/// The rate of cure that a gel curve stands for: the law of the line that the temperature is on, so that every row of the sheet is met,
/// held up by the ceiling in the cold.
/// </summary>
public sealed class SheetCureRate : ICureRate
{
    /// <summary>Over this much below the ceiling the rate fades, so that solvers meet no edge.</summary>
    private const double Fade = .02;

    private readonly CureCeiling _ceiling;
    private readonly double _gelDegree;
    private readonly (double FromK, CureLaw Law)[] _laws, _afterGel;

    /// <param name="curve">Gel times.</param>
    /// <param name="afterGel">The times that hold from gel on, where they are others.</param>
    /// <param name="shape">Cure over age.</param>
    /// <param name="ceiling">What isn't passed in the cold.</param>
    public SheetCureRate(GelCurve curve, GelCurve? afterGel, CureShape shape, CureCeiling ceiling)
    {
        _ceiling = ceiling;
        _gelDegree = shape.DegreeAt(1);
        _laws = [.. curve.Lines.Select(line => (line.FromK, shape.LawOf(line)))];
        _afterGel = afterGel is null ? _laws : [.. afterGel.Lines.Select(line => (line.FromK, shape.LawOf(line)))];
    }

    public double RatePerS(double degree, double temperatureK)
    {
        var laws = degree < _gelDegree ? _laws : _afterGel;
        var law = laws.Length - 1;
        while (law > 0 && temperatureK < laws[law].FromK)
        {
            law--;
        }

        var rate = laws[law].Law.RatePerS(degree, temperatureK);
        return temperatureK >= _ceiling.LowestCureK ? rate : rate * Math.Clamp((_ceiling.DegreeAt(temperatureK) - degree) / Fade, 0, 1);
    }
}
