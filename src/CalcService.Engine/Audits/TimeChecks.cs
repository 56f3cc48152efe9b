using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>The times of the record among each other.</summary>
internal static class TimeChecks
{
    public static void Check(AuditScope scope)
    {
        var times = scope.Input.Times;
        (string Member, string What, DateTimeOffset? At)[] order =
        [
            ("preparedAt", "the preparation", times.PreparedAt), ("mixedAt", "the mixing", times.MixedAt),
                ("pouredAt", "the full basket", times.PouredAt),
            ("gelAt", "the gel", times.GelAt), ("movedAt", "the first move", times.MovedAt),
            ("releasedAt", "the release", times.ReleasedAt),
            ("proofAt", "the proof load", times.ProofAt), ("inServiceAt", "the service", times.InServiceAt),
        ];
        scope.MustHold("times", AuditFindings.FactMissing, Held(scope, times));
        var wrong = new List<string>();
        for (var later = 1; later < order.Length; later++)
        {
            var earlier = Array.FindLastIndex(order, later - 1, one => one.At is not null);
            // A move before the gel, or a gel before the basket was full, is no slip of the pen: they have checks of their own.
            if (order[later].At is not null && earlier >= 0 && (order[earlier].Member, order[later].Member) != ("gelAt", "movedAt")
                && (order[later].Member != "gelAt" || order[earlier].Member != "pouredAt" || scope.Input.GelSeenIn == GelPlace.Unknown))
            {
                Compare(scope, order[earlier], order[later], wrong);
            }
        }

        Compare(scope, ("readAt", "the readings", times.ReadAt), order[1], wrong);
        Write(scope, "time-order", AuditFindings.TimesContradict, wrong);
        CheckGelDuringPour(scope, times);
        CheckLongAgo(scope, times);
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
        return !scope.Input.IsTested ? asked : asked.Time(times.ProofAt, "proofAt", "when the end was proof loaded");
    }

    private static void Compare(AuditScope scope, (string Member, string What, DateTimeOffset? At) earlier,
        (string Member, string What, DateTimeOffset? At) later, List<string> wrong)
    {
        if (later.At < earlier.At)
        {
            var pointer = AuditPointers.Time(later.Member);
            wrong.Add(pointer);
            scope.Find(AuditFindings.TimesContradict, pointer, related: [AuditPointers.Time(earlier.Member)],
                words: [new("later", later.What), new("earlier", earlier.What)]);
        }
    }

    /// <summary>What gels while it is poured doesn't flow between the wires. A cup warms itself and gels sooner.</summary>
    private static void CheckGelDuringPour(AuditScope scope, RecordedTimes times)
    {
        var isSooner = times.GelAt < times.PouredAt && scope.Input.GelSeenIn is (GelPlace.Vessel or GelPlace.Mouth or GelPlace.Cone);
        Measure? Since(DateTimeOffset? at) => at - times.MixedAt is { } span ? Measure.Duration(span.TotalSeconds) : null;
        var judged = new Judged(Since(times.GelAt), Since(times.PouredAt) is { } filled ? Limit.Of(filled) : null);
        if (isSooner)
        {
            scope.Find(CompoundFindings.GelBeforePourEnds, AuditPointers.Time("gelAt"), judged, [AuditPointers.Time("pouredAt")]);
        }

        scope.Write("gel-after-pour", times.GelAt is null || times.PouredAt is null ? CheckOutcome.Undetermined : isSooner
            ? CheckOutcome.Fail : CheckOutcome.Pass,
            CompoundFindings.GelBeforePourEnds, judged,
            missing: [.. new[] { ("gelAt", times.GelAt), ("pouredAt", times.PouredAt) }.Where(one => one.Item2 is null)
            .Select(one => AuditPointers.Time(one.Item1))]);
    }

    /// <summary>As a plan has it.</summary>
    private static void CheckLongAgo(AuditScope scope, RecordedTimes times)
    {
        if (times.MixedAt is not { } mixed)
        {
            return;
        }

        var (at, rules) = (AuditPointers.Time("mixedAt"), scope.Book.Pouring);
        scope.CheckSheetAge(scope.Input.Compound, DateOnly.FromDateTime(mixed.DateTime), at, rules.SheetAge);
        if (times.ReadAt is { } read)
        {
            scope.CheckReadings(read, AuditPointers.Time("readAt"), mixed, at, rules.ReadingsValidFor.Limit!.Value);
        }

        if (times.PreparedAt is { } prepared)
        {
            scope.CheckDried(prepared, AuditPointers.Time("preparedAt"), mixed, at, rules.Fit.DriedFor);
        }
    }

    private static void CheckDay(AuditScope scope, (string Member, string What, DateTimeOffset? At)[] all)
    {
        var after = all.Where(one => one.At is { } moment && DateOnly.FromDateTime(moment.DateTime) > scope.Input.AuditedOn).ToArray();
        List<string> wrong = [.. after.Select(one => AuditPointers.Time(one.Member))];
        if (after.Length > 0)
        {
            scope.Find(AuditFindings.TimeAfterAudit, wrong[0], related: [.. wrong.Skip(1), AuditPointers.AuditedOn],
                words: new FindingWord("what", string.Join(", ", after.Select(one => one.What))));
        }

        Write(scope, "time-of-audit", AuditFindings.TimeAfterAudit, wrong);
    }

    /// <summary>Where two facts contradict each other, neither is known.</summary>
    private static void Write(AuditScope scope, string id, FindingDefinition rule, List<string> wrong) =>
        scope.Write(id, wrong.Count > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass, rule,
        missing: [.. wrong.Distinct(StringComparer.Ordinal)]);
}
