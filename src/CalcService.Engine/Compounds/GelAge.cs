using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// The age of a compound along a temperature history, in gel times: g = ∫dt/t_gel(T(t)). Straight pieces of the history are
/// cut where the gel curve bends and every ten kelvins, so that a five-point rule is as exact as a double is. In the cold
/// a piece ages no further than the ceiling that the cure has there.
/// </summary>
public sealed class GelAge
{
    private const double WidestPieceK = 10;
    private const double WidestColdPieceK = 1;

    private readonly List<Piece> _pieces = [];

    private GelAge()
    {
    }

    /// <summary>The first time, s.</summary>
    public double StartS => _pieces[0].FromS;

    /// <summary>The time up to which the age is known, s.</summary>
    public double EndS => _pieces[^1].ToS;

    /// <summary>Age at the end.</summary>
    public double Last => _pieces[^1].ToAge;

    /// <param name="curve">Gel times.</param>
    /// <param name="history">Temperatures; ageing starts with it.</param>
    /// <param name="ceiling">The age that is not passed at a temperature, or null without a ceiling.</param>
    /// <param name="enough">Age at which to stop.</param>
    /// <param name="standsBelowK">Colder than this nothing ages.</param>
    public static GelAge Along(GelCurve curve, TemperatureHistory history, CureCeiling? ceiling = null,
        double enough = double.PositiveInfinity, double standsBelowK = 0)
    {
        var age = new GelAge();
        var seconds = history.Seconds;
        var kelvins = history.Kelvins;
        double[] edges = [.. curve.Lines.Skip(1).Select(line => line.FromK), .. ceiling is null ? [] : new[] { ceiling.LowestCureK },
            .. standsBelowK > 0 ? new[] { standsBelowK } : []];
        Array.Sort(edges);
        for (var i = 1; i < seconds.Length && (age._pieces.Count == 0 || age.Last < enough); i++)
        {
            age.AddPiece(curve, ceiling, standsBelowK, edges, (seconds[i - 1], kelvins[i - 1]), (seconds[i], kelvins[i]));
        }

        return age;
    }

    /// <summary>The age at a time; ageing has stopped outside of what is known.</summary>
    public double At(double seconds)
    {
        if (seconds <= StartS)
        {
            return 0;
        }

        var piece = _pieces[Find(piece => piece.ToS >= seconds)];
        return Math.Min(piece.ToAge, piece.FromAge + piece.Aged(Math.Min(seconds, piece.ToS)));
    }

    /// <summary>The time at which it is so old, or null where that is not within what is known.</summary>
    public double? TimeOf(double target)
    {
        if (!(target <= Last))
        {
            return null;
        }

        var piece = _pieces[Find(piece => piece.ToAge >= target)];
        return piece.TimeOf(target - piece.FromAge);
    }

    /// <summary>
    /// g = Δt·mean(1/t_gel) over a straight piece from one temperature (K) to another in a time (s), on one Arrhenius line; in gel times.
    /// </summary>
    [Formula("gel-age", "age integral ∫dt/t_gel over a straight piece, as maturity in ASTM C1074",
        "Arrhenius form; five-point Gauss–Legendre rule", Basis.Published, Symbol = "g", Name = "age in gel times",
        Expression = "∫exp(E/R·(1/T_ref − 1/T))/t_ref·dt", Kind = QuantityKind.Count, Range = "pieces of at most 10 K")]
    public static double OverPiece(double seconds, double fromK, double toK, double referenceK, double referenceS, double energyJPerMol,
        Trace trace) =>
        trace.Step("gel-age", new Piece(0, seconds, fromK, toK, new(0, referenceK, referenceS, energyJPerMol), 0).Aged(seconds),
            new("t_ref", Measure.Duration(referenceS)), new("E", new Measure(energyJPerMol, QuantityKind.MolarEnergy)),
            new("T_ref", Measure.Kelvins(referenceK)));

    private void AddPiece(GelCurve curve, CureCeiling? ceiling, double standsBelowK, double[] edges, (double S, double K) from,
        (double S, double K) to)
    {
        var rise = to.K - from.K;
        var at = from;
        // Edges between both ends, in the order in which the line meets them.
        for (var e = 0; e < edges.Length; e++)
        {
            var edge = edges[rise < 0 ? edges.Length - 1 - e : e];
            if ((edge - from.K) * (edge - to.K) < 0)
            {
                var meets = (from.S + ((edge - from.K) / rise * (to.S - from.S)), edge);
                AddSmooth(curve, ceiling, standsBelowK, at, meets);
                at = meets;
            }
        }

        AddSmooth(curve, ceiling, standsBelowK, at, to);
    }

    private void AddSmooth(GelCurve curve, CureCeiling? ceiling, double standsBelowK, (double S, double K) from, (double S, double K) to)
    {
        var isCold = ceiling is not null && (from.K + to.K) / 2 < ceiling.LowestCureK;
        var line = curve.LineAt((from.K + to.K) / 2);
        var parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(to.K - from.K) / (isCold ? WidestColdPieceK : WidestPieceK)));
        for (var part = 0; part < parts; part++)
        {
            (double S, double K) Point(int index) =>
                index == parts ? to : (from.S + ((to.S - from.S) * index / parts), from.K + ((to.K - from.K) * index / parts));
            var (start, end) = (Point(part), Point(part + 1));
            var before = _pieces.Count == 0 ? 0 : Last;
            var piece = new Piece(start.S, end.S, start.K, end.K, line, before);
            var after = before + piece.Aged(end.S);
            if (isCold)
            {
                after = Math.Max(before, Math.Min(after, ceiling!.AgeAt(Math.Min(start.K, end.K))));
            }

            _pieces.Add(piece with { ToAge = (start.K + end.K) / 2 < standsBelowK ? before : after });
        }
    }

    private int Find(Predicate<Piece> reached)
    {
        var (low, high) = (0, _pieces.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = reached(_pieces[middle]) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>A straight piece on one Arrhenius line.</summary>
    private readonly record struct Piece(double FromS, double ToS, double FromK, double ToK, GelLine Line, double FromAge) : IFunction
    {
        public double ToAge { get; init; }

        public double At(double x) => Line.RatePerS(FromK + ((ToK - FromK) * ((x - FromS) / (ToS - FromS))));

        public double Aged(double seconds) => seconds <= FromS ? 0 : GaussLegendre.Integral(this, FromS, seconds);

        /// <summary>Newton's method on a rising function whose slope is known, kept inside the piece.</summary>
        public double TimeOf(double age)
        {
            var (low, high) = (FromS, ToS);
            var time = ToAge > FromAge ? FromS + ((ToS - FromS) * Math.Min(1, age / (ToAge - FromAge))) : FromS;
            for (var i = 0; i < 60 && high > low; i++)
            {
                var off = Aged(time) - age;
                (low, high) = off < 0 ? (time, high) : (low, time);
                var next = time - (off / At(time));
                if (!(next >= low && next <= high))
                {
                    next = (low + high) / 2;
                }

                if (Math.Abs(next - time) <= 1e-9 * Math.Max(1, Math.Abs(time)))
                {
                    return next;
                }

                time = next;
            }

            return time;
        }
    }
}
