using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>
/// What was found, held against its limit: the one comparison of the service, which finding and check carry on. What equals its limit keeps
/// it; what rounding and conversion of units add, a billionth of the limit, is no reason to exceed it. Where either is missing, nothing is
/// exceeded.
/// </summary>
public readonly record struct Judged
{
    private const double Slack = 1e-9;

    public Judged(Measure? measured, Limit? limit)
    {
        if (measured is { } found && limit is { } held && found.Kind != held.Kind)
        {
            throw new ArgumentException($"{found.Kind} is held against {held.Kind}.", nameof(limit));
        }

        (Measured, Limit) = (measured, limit);
    }

    /// <summary>What was found.</summary>
    public Measure? Measured { get; }

    /// <summary>What it is held against.</summary>
    public Limit? Limit { get; }

    /// <summary>Whether it is more than may be.</summary>
    public bool IsAbove => Number is { } limit && Measured is { } found && found.Si > limit.Si + (Slack * Math.Abs(limit.Si));

    /// <summary>Whether it is less than must be.</summary>
    public bool IsBelow => Number is { } limit && Measured is { } found && found.Si < limit.Si - (Slack * Math.Abs(limit.Si));

    /// <summary>How many times the limit it is.</summary>
    internal double? Share => Measured?.Si / Number?.Si;

    /// <summary>How many times what was found the limit is.</summary>
    internal double? Need => Number?.Si / Measured?.Si;

    /// <summary>How far it lies above its limit, to be told.</summary>
    internal Measure Excess => Measured!.Value with { Si = Measured.Value.Si - Number!.Value.Si };

    private Measure? Number => (Measure?)Limit;

    /// <summary>What was found where there is nothing to hold it against.</summary>
    public static implicit operator Judged(Measure measured) => new(measured, null);

    internal static Judged Length(double foundM, double limitM) => Of(Measure.Length(foundM), Measure.Length(limitM));

    internal static Judged Force(double foundN, double limitN) => Of(Measure.Force(foundN), Measure.Force(limitN));

    internal static Judged Temperature(double foundK, double limitK) => Of(Measure.Temperature(foundK), Measure.Temperature(limitK));

    internal static Judged Duration(double foundS, double limitS) => Of(Measure.Duration(foundS), Measure.Duration(limitS));

    internal static Judged Count(double found, double limit) => Of(Measure.Count(found), Measure.Count(limit));

    internal static Judged Fraction(double found, double limit) => Of(Measure.Fraction(found), Measure.Fraction(limit));

    /// <summary>The end of a range that something lies beyond; null where it lies inside.</summary>
    internal static Judged? Outside(Measure found, Measure least, Measure most) =>
        Of(found, least) is { IsBelow: true } below ? below : Of(found, most) is { IsAbove: true } above ? above : null;

    private static Judged Of(Measure found, Measure limit) => new(found, Findings.Limit.Of(limit));
}
