using CalcService.Engine.Rules.Edition202612;

namespace CalcService.Engine.Rules;

/// <summary>The editions of the rules by which something can be computed.</summary>
public sealed class Editions(IEnumerable<RuleBook> all)
{
    /// <summary>Those that came with this build.</summary>
    public static Editions Known { get; } = new(
    [
        new("2026-12", PouringRules2026Dec.Rules, CuringRules2026Dec.Rules, MatchingRules2026Dec.Rules, ReuseRules2026Dec.Rules,
            InspectionRules2026Dec.Rules,
            ProofRules2026Dec.Rules, AuditRules2026Dec.Rules),
    ]);

    /// <summary>Newest first.</summary>
    public IReadOnlyList<RuleBook> All { get; } = [.. all.OrderByDescending(book => book.Edition, StringComparer.Ordinal)];

    /// <summary>The edition used where the request names none.</summary>
    public RuleBook Current => All[0];

    /// <summary>The edition of this name, or null.</summary>
    public RuleBook? Find(string edition) => All.FirstOrDefault(book => string.Equals(book.Edition, edition, StringComparison.Ordinal));

    /// <summary>The edition before another; null before the first.</summary>
    public RuleBook? Before(RuleBook book) => All.FirstOrDefault(other => string.CompareOrdinal(other.Edition, book.Edition) < 0);

    /// <summary>Their names for whoever asked for another.</summary>
    public override string ToString() => string.Join(", ", All.Select(book => book.Edition));
}
