using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Findings;

/// <summary>How a fact stands in a request.</summary>
public enum Stated
{
    /// <summary>Nobody said.</summary>
    Absent,

    /// <summary>Somebody said that it is not known.</summary>
    Unknown,

    /// <summary>It is there.</summary>
    Known,
}

/// <summary>A fact behind a stop rule.</summary>
/// <param name="Pointer">The member that gives it.</param>
/// <param name="What">The fact in words, as in "the state of the bore".</param>
/// <param name="Stated">How it stands.</param>
/// <param name="IsNeeded">Whether nothing is done without it; else its absence is a caution.</param>
public sealed record StatedFact(string Pointer, string What, Stated Stated, bool IsNeeded)
{
    /// <summary>A fact that is an enum whose first word is unknown.</summary>
    public static StatedFact Of<T>(string pointer, string what, T? fact, bool isNeeded)
        where T : struct, Enum =>
        new(pointer, what, fact is not { } said ? Stated.Absent : EqualityComparer<T>.Default.Equals(said, default) ? Stated.Unknown
        : Stated.Known, isNeeded);

    /// <summary>A fact that is a number or a time.</summary>
    public static StatedFact Of(string pointer, string what, bool isThere, bool isNeeded) =>
        new(pointer, what, isThere ? Stated.Known : Stated.Absent, isNeeded);
}

/// <summary>
/// Facts behind stop rules that nobody stated: one finding for all of one place. For work that is being done, what is said to be unknown
/// and what is needed is a missing fact, the rest a caution; for work ahead all of it is a caution, since it is asked for again at its hold
/// point; a quote asks for none.
/// </summary>
public static class StatedFacts
{
    /// <summary>Facts that nobody stated.</summary>
    public static FindingDefinition NotStated { get; } = Define("facts-not-stated", "2026-12", Actor.Crew,
        [Severity.Unknown, Severity.Caution],
        "Facts that could stop the work are not stated, or are said to be unknown. What nobody looked at is not in order because nobody "
            + "said otherwise.",
        "Not stated: {what}.",
        "Look, measure or ask, and send each of them before the work goes on.",
        NoPermission);

    /// <summary>Facts that nobody stated, and without which an answer goes by something less than them.</summary>
    public static FindingDefinition Taken { get; } = Caution("facts-taken", "2026-12", Actor.Office,
        "A fact that a stop rule reads is not stated: the answer goes by a drawing, by an estimate, or past that rule.",
        "Not stated: {what}.",
        "Measure, look it up or ask, and send each of them, so that the rule is held against the fact itself.",
        NoPermission);

    private static Provenance.Source NoPermission =>
        new("no permission on facts that nobody stated", "/docs/facts", Provenance.Basis.Derived);

    /// <summary>Finds those that the answer does without, as one finding; nothing where all are stated.</summary>
    internal static void CheckTaken(this CalculationScope scope, IEnumerable<(string Pointer, string What, bool IsStated)> facts) =>
        scope.FindMissing(Taken, [.. facts.Where(fact => !fact.IsStated).Select(fact => (fact.Pointer, fact.What))]);

    /// <summary>Finds those that are not stated; nothing where all are.</summary>
    internal static void CheckStated(this CalculationScope scope, Purpose purpose, IEnumerable<StatedFact> facts)
    {
        if (purpose == Purpose.Quote)
        {
            return;
        }

        bool Weighs(StatedFact fact) => fact.IsNeeded || fact.Stated == Stated.Unknown;
        var missing = facts.Where(fact => fact.Stated != Stated.Known).OrderByDescending(Weighs).ToArray();
        var isUnknown = purpose == Purpose.Pour && missing.Any(Weighs);
        scope.FindMissing(NotStated, [.. missing.Select(fact => (fact.Pointer, fact.What))], severity: isUnknown ? Severity.Unknown
            : Severity.Caution);
    }
}
