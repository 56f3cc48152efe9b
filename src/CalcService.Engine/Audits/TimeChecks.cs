using CalcService.Engine.Findings;

namespace CalcService.Engine.Audits;

/// <summary>The times of the record among each other.</summary>
internal static class TimeChecks
{
    public static void Check(AuditScope scope)
    {
        var times = scope.Input.Times;
        (string Member, string What, DateTimeOffset? At)[] order =
        [
            ("preparedAt", "the preparation", times.PreparedAt), ("mixedAt", "the mixing", times.MixedAt), ("pouredAt", "the full basket", times.PouredAt),
            ("gelAt", "the gel", times.GelAt), ("movedAt", "the first move", times.MovedAt), ("releasedAt", "the release", times.ReleasedAt),
            ("proofAt", "the proof load", times.ProofAt), ("inServiceAt", "the service", times.InServiceAt),
        ];
        scope.MustHold("times", AuditFindings.FactMissing, Held(scope, times));
        var wrong = new List<string>();
        for (var later = 1; later < order.Length; later++)
        {
            var earlier = Array.FindLastIndex(order, later - 1, one => one.At is not null);
            // A move before the gel is no slip of the pen: it has a check of its own.
            if (order[later].At is not null && earlier >= 0 && (order[earlier].Member, order[later].Member) != ("gelAt", "movedAt"))
            {
                Compare(scope, order[earlier], order[later], wrong);
            }
        }

        Compare(scope, ("readAt", "the readings", times.ReadAt), order[1], wrong);
        Write(scope, "time-order", AuditFindings.TimesContradict, wrong);
        CheckDay(scope, [.. order, ("readAt", "the readings", times.ReadAt)]);
    }

    private static AuditScope.Asked Held(AuditScope scope, RecordedTimes times)
    {
        var asked = scope.Ask()
            .Trail(times.PreparedAt is not null, AuditPointers.Time("preparedAt"), "when the end was prepared")
            .Time(times.MixedAt, "mixedAt", "when the compound was mixed")
            .Time(times.PouredAt, "pouredAt", "when the basket was full")
            .Time(times.GelAt, "gelAt", "when the compound was seen gelled")
            .Time(times.MovedAt, "movedAt", "when the end was first moved")
            .Time(times.ReleasedAt, "releasedAt", "when the end was released for loading");
        return scope.Input.Proof.IsAsked == false ? asked : asked.Time(times.ProofAt, "proofAt", "when the end was proof loaded");
    }

    private static void Compare(AuditScope scope, (string Member, string What, DateTimeOffset? At) earlier, (string Member, string What, DateTimeOffset? At) later, List<string> wrong)
    {
        if (later.At < earlier.At)
        {
            var pointer = AuditPointers.Time(later.Member);
            wrong.Add(pointer);
            scope.Find(AuditFindings.TimesContradict, pointer, related: [AuditPointers.Time(earlier.Member)], words: [new("later", later.What), new("earlier", earlier.What)]);
        }
    }

    private static void CheckDay(AuditScope scope, (string Member, string What, DateTimeOffset? At)[] all)
    {
        var wrong = new List<string>();
        foreach (var (member, what, at) in all)
        {
            if (at is { } moment && DateOnly.FromDateTime(moment.DateTime) > scope.Input.AuditedOn)
            {
                wrong.Add(AuditPointers.Time(member));
                scope.Find(AuditFindings.TimeAfterAudit, AuditPointers.Time(member), related: [AuditPointers.AuditedOn], words: new FindingWord("what", what));
            }
        }

        Write(scope, "time-of-audit", AuditFindings.TimeAfterAudit, wrong);
    }

    /// <summary>Where two facts contradict each other, neither is known.</summary>
    private static void Write(AuditScope scope, string id, FindingDefinition rule, List<string> wrong) =>
        scope.Write(id, wrong.Count > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass, rule, missing: [.. wrong.Distinct(StringComparer.Ordinal)]);
}
