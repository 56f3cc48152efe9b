using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Audits;

/// <summary>What the checks of one audit share: the record and the rules.</summary>
internal sealed record AuditScope(AuditInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CheckScope(Book, Budget)
{
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    /// <summary>Items that were asked for, each once.</summary>
    public int ItemsAsked => _asked.Count;

    /// <summary>Those that the record doesn't hold.</summary>
    public SortedSet<string> Missing { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether a fact is missing that a safety rule needs.</summary>
    public bool LacksFacts => Gaps.Exists(gap => gap.Finding == AuditFindings.FactMissing);

    protected override IReadOnlyList<FindingDefinition> Lists { get; } = [AuditFindings.FactMissing, AuditFindings.TrailMissing];

    /// <summary>A record of work that lies ahead, or is only quoted, may still be open.</summary>
    public override void FindGaps() => FindGaps(Gaps.DistinctBy(gap => gap.Pointer).OrderBy(gap => gap.Pointer, StringComparer.Ordinal),
        severity: Input.Purpose == Purpose.Pour ? null : Severity.Caution);

    /// <summary>A list of items that a check can't do without.</summary>
    public Asked Ask() => new(this);

    /// <summary>A check that hangs on nothing but what the record holds.</summary>
    public void MustHold(string id, FindingDefinition rule, Asked asked)
    {
        if (!IsOpen(id, rule, asked.Gaps))
        {
            Write(id, CheckOutcome.Pass, rule);
        }
    }

    /// <summary>Items of the record that are asked for together, and the gaps among them.</summary>
    internal sealed class Asked(AuditScope scope)
    {
        private readonly List<Gap> _gaps = [];

        public IReadOnlyList<Gap> Gaps => _gaps;

        /// <summary>A fact that a safety rule needs.</summary>
        public Asked Fact(bool isThere, string pointer, string what) => Add(isThere, AuditFindings.FactMissing, pointer, what);

        /// <summary>What lets others trace the end.</summary>
        public Asked Trail(bool isThere, string pointer, string what) => Add(isThere, AuditFindings.TrailMissing, pointer, what);

        /// <summary>A text that lets others trace the end.</summary>
        public Asked Trail(string? text, string pointer, string what) => Trail(!string.IsNullOrWhiteSpace(text), pointer, what);

        /// <summary>
        /// A fact that was or wasn't written down; said to be unknown it is missing, else it is a trail that nobody left.
        /// </summary>
        public Asked Told(Stated stated, string pointer, string what) =>
            stated == Stated.Unknown ? Fact(false, pointer, what) : Trail(stated == Stated.Known, pointer, what);

        /// <summary>The same for a fact as a request states it.</summary>
        public Asked Told(StatedFact fact) => Told(fact.Stated, fact.Pointer, fact.What);

        /// <summary>A time that a safety rule needs.</summary>
        public Asked Time(DateTimeOffset? at, string member, string what) => Fact(at is not null, AuditPointers.Time(member), what);

        private Asked Add(bool isThere, FindingDefinition finding, string pointer, string what)
        {
            scope._asked.Add(pointer);
            if (!isThere)
            {
                scope.Missing.Add(pointer);
                _gaps.Add(new(finding, pointer, what));
            }

            return this;
        }
    }
}
