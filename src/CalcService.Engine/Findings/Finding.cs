using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>A word of a finding's message: text, or a measure that is written in the units of the answer.</summary>
public readonly record struct FindingWord(string Name, string? Text, Measure? Value)
{
    public FindingWord(string name, string text)
        : this(name, text, null)
    {
    }

    public FindingWord(string name, Measure value)
        : this(name, null, value)
    {
    }

    public FindingWord(string name, DateOnly day)
        : this(name, day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))
    {
    }

    public FindingWord(string name, Limit limit)
        : this(name, null, (Measure)limit)
    {
    }

    public FindingWord(string name, Rule rule)
        : this(name, null, (Measure?)rule)
    {
    }
}

/// <summary>Something that the calculation found, with the member to act on.</summary>
public sealed record Finding(FindingDefinition Definition, Severity Severity, string Pointer)
{
    /// <summary>Other members that take part.</summary>
    public IReadOnlyList<string> Related { get; init; } = [];

    /// <summary>What was found, and what it was held against, as far as they are numbers.</summary>
    public Judged Judged { get; init; }

    /// <summary>What was found, as a number.</summary>
    public Measure? Measured => Judged.Measured;

    /// <summary>What would have been allowed, as a number.</summary>
    public Measure? Limit => (Measure?)Judged.Limit;

    /// <summary>Further words for the message.</summary>
    public IReadOnlyList<FindingWord> Words { get; init; } = [];

    /// <summary>Where this limit comes from, if not from the definition's own source.</summary>
    public Source? Source { get => field ?? Judged.Limit?.Source; init; }
}
