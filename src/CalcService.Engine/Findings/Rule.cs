using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>What an edition of the rules sets.</summary>
/// <param name="RuleSet">The rule set that sets it.</param>
/// <param name="Text">It in words.</param>
/// <param name="Source">Where it comes from.</param>
public abstract record Rule(string RuleSet, string Text, Source Source)
{
    /// <summary>Its number for those who read it; null where it is none.</summary>
    public static explicit operator Measure?(Rule rule) => rule.Shown;

    /// <summary>The same.</summary>
    protected abstract Measure? Shown { get; }
}

/// <summary>A number that a formula takes, or an answer where the request gives none. Nothing is held against it.</summary>
public sealed record RuleNumber(string RuleSet, string Text, Measure Value, Source Source) : Rule(RuleSet, Text, Source)
{
    /// <summary>One of every rule set.</summary>
    public RuleNumber(string text, Measure value, Source source)
        : this(PouringRules.General, text, value, source)
    {
    }

    /// <summary>The number.</summary>
    public double Si => Value.Si;

    protected override Measure? Shown => Value;
}

/// <summary>What something is held against.</summary>
public sealed record RuleLimit : Rule
{
    private readonly Measure? _number;

    public RuleLimit(string ruleSet, string text, Measure? number, Source source)
        : base(ruleSet, text, source) => _number = number;

    /// <summary>One of every rule set.</summary>
    public RuleLimit(string text, Measure? number, Source source)
        : this(PouringRules.General, text, number, source)
    {
    }

    /// <summary>Limits among each other, the least number first; one that is no number counts as 0.</summary>
    public static IComparer<RuleLimit> ByNumber { get; } = Comparer<RuleLimit>.Create((one, other) =>
        (one._number?.Si ?? 0).CompareTo(other._number?.Si ?? 0));

    /// <summary>The limit, where it is a number.</summary>
    public Limit? Limit => _number is { } number ? Findings.Limit.Of(number, Source) : null;

    protected override Measure? Shown => _number;

    /// <summary>Holds what was found against it.</summary>
    internal Judged Judge(Measure? found) => new(found, Limit);

    /// <summary>So many times something, or such a share of it.</summary>
    internal Limit Times(Measure one) => Scaled(one, number => number);

    /// <summary>Something less such a share of it.</summary>
    internal Limit Below(Measure one) => Scaled(one, number => 1 - number);

    /// <summary>Something and such a share of it.</summary>
    internal Limit Above(Measure one) => Scaled(one, number => 1 + number);

    /// <summary>What a formula takes: what the request gives, else this.</summary>
    internal double InPlaceOf(double? given) => given ?? _number!.Value.Si;

    /// <summary>What lies so far above something.</summary>
    internal double KeptAbove(double si) => si + _number!.Value.Si;

    /// <summary>What lies so far below it.</summary>
    internal double KeptBelow(double si) => si - _number!.Value.Si;

    /// <summary>The day that lies so many calendar months after another, or before it.</summary>
    internal DateOnly MonthsFrom(DateOnly day, int sign = 1) => day.AddMonths(sign * (int)_number!.Value.Si);

    /// <summary>The days of so many calendar months.</summary>
    internal Limit DaysFrom(DateOnly day) => Findings.Limit.Of(Measure.Days(MonthsFrom(day).DayNumber - day.DayNumber), Source);

    private Limit Scaled(Measure one, Func<double, double> factor) =>
        Findings.Limit.Of(one with { Si = factor(_number!.Value.Si) * one.Si }, Source);
}
