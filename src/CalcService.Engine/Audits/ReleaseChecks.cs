using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Audits;

/// <summary>Whether the end rested until it had gelled, and was loaded only from its release on.</summary>
internal static class ReleaseChecks
{
    /// <summary>What the end has to have its strength for.</summary>
    /// <param name="Id">Its check.</param>
    /// <param name="Member">The time that tells of it.</param>
    /// <param name="What">What was done.</param>
    /// <param name="Asked">The time in words.</param>
    /// <param name="At">When, where the record says.</param>
    private sealed record Event(string Id, string Member, string What, string Asked, DateTimeOffset? At)
    {
        public string Pointer => AuditPointers.Time(Member);
    }

    private static Event Move(RecordedTimes times) => new("moved", "movedAt", "moved", "when the end was first moved", times.MovedAt);

    private static Event[] Loads(RecordedTimes times) =>
    [
        new("released-cured", "releasedAt", "released", "when the end was released for loading", times.ReleasedAt),
        new("proof-cured", "proofAt", "proof loaded", "when the end was proof loaded", times.ProofAt),
        new("service-cured", "inServiceAt", "put to service", "", times.InServiceAt),
    ];

    public static RecomputedPlan Check(AuditScope scope, ReleaseTimes release, AuditedGel gel, RecomputedPlan plan)
    {
        var (input, mixedAt) = (scope.Input, scope.Input.Times.MixedAt!.Value);
        if (input.Compound.MinimumHoldS is null)
        {
            scope.Assume("/compound/sheet/minimumHold", "no hold after gel: the sheet gives none", Measure.Duration(0),
                AssumptionOrigin.Default);
        }

        CheckMove(scope, mixedAt, release);
        var gaps = CureDayChecks.Basis(scope).Gaps;
        var early = Loads(input.Times).Select(load => (Load: load, Verdict: CheckLoad(scope, mixedAt, load, release, gaps)))
            .Where(one => one.Verdict != LoadVerdict.Released).ToArray();
        FindEarly(scope, mixedAt, release, early);
        CheckSeenGel(scope);
        CheckAir(scope);
        return plan with { Gel = gel, UndisturbedUntil = From(mixedAt, release.UndisturbedS), LoadFrom = From(mixedAt, release.LoadS) };
    }

    /// <summary>The same checks where gel and cure can't be computed.</summary>
    public static RecomputedPlan Open(AuditScope scope, RecomputedPlan plan)
    {
        var basis = CureDayChecks.Basis(scope);
        string[] missing = [.. basis.Gaps.Select(gap => gap.Pointer), .. basis.Gaps.Count == 0 ? [AuditPointers.SheetGelTimes]
            : Array.Empty<string>()];
        scope.Write("gel", CheckOutcome.Undetermined, CompoundFindings.GelOutOfFamily, missing: missing);
        scope.Write("moved", CheckOutcome.Undetermined, AuditFindings.MovedEarly, missing: missing);
        foreach (var load in Loads(scope.Input.Times))
        {
            scope.Write(load.Id, IsLeftOut(scope, load.Id, load.At) ? CheckOutcome.NotApplicable : CheckOutcome.Undetermined,
                AuditFindings.LoadedEarly,
                missing: IsLeftOut(scope, load.Id, load.At) ? [] : missing);
        }

        CheckSeenGel(scope);
        CheckAir(scope);
        return plan;
    }

    /// <summary>Moved or loaded before anybody saw it gelled: the record itself says so, whatever temperatures it lacks.</summary>
    private static void CheckSeenGel(AuditScope scope)
    {
        var times = scope.Input.Times;
        if (scope.Input.GelSeenIn is GelPlace.Cup or GelPlace.Vessel)
        {
            // It says nothing of the cone but by the law.
            return;
        }

        var early = Loads(times).Prepend(Move(times))
            .Where(one => one.At < times.GelAt && !scope.Checks.Exists(check => check.Id == one.Id && check.Outcome == CheckOutcome.Fail))
            .ToArray();
        if (early.Length == 0)
        {
            return;
        }

        scope.Find(AuditFindings.BeforeSeenGel, early[0].Pointer,
            related: [.. early.Skip(1).Select(one => one.Pointer), AuditPointers.Time("gelAt")],
            words: new FindingWord("what", string.Join(", ", early.Select(one => one.What))));
        foreach (var one in early)
        {
            scope.Checks.RemoveAll(check => check.Id == one.Id);
            scope.Write(one.Id, CheckOutcome.Fail, AuditFindings.BeforeSeenGel);
        }
    }

    private static void CheckMove(AuditScope scope, DateTimeOffset mixedAt, ReleaseTimes release)
    {
        var (moved, until) = (scope.Input.Times.MovedAt, From(mixedAt, release.UndisturbedS));
        var judged = Rest(mixedAt, moved, until);
        if (until is null && IsBeyond(mixedAt, moved, release))
        {
            NotFollowed(scope, "moved", AuditFindings.MovedEarly, judged.Measured);
            return;
        }

        var isEarly = moved is { } at && (until is null || at < until);
        if (isEarly)
        {
            scope.Find(AuditFindings.MovedEarly, AuditPointers.Time("movedAt"), judged,
                [AuditPointers.Time("mixedAt"), AuditPointers.Time("gelAt")]);
        }

        scope.Judge("moved", isEarly ? Severity.Stop : null, AuditFindings.MovedEarly,
            CureDayChecks.Basis(scope).Time(moved, "movedAt", "when the end was first moved").Gaps, judged);
    }

    private static LoadVerdict CheckLoad(AuditScope scope, DateTimeOffset mixedAt, Event load,
        ReleaseTimes release, IReadOnlyList<Gap> gaps)
    {
        if (IsLeftOut(scope, load.Id, load.At))
        {
            scope.Skip(load.Id, AuditFindings.LoadedEarly);
            return LoadVerdict.Released;
        }

        var judged = Rest(mixedAt, load.At, From(mixedAt, release.LoadS));
        // Within what is known it never had its strength, or had it later.
        var verdict = load.At is { } at ? release.Judge(mixedAt, at) : LoadVerdict.Released;
        if (release.LoadS is null && IsBeyond(mixedAt, load.At, release))
        {
            NotFollowed(scope, load.Id, AuditFindings.LoadedEarly, judged.Measured);
            return LoadVerdict.Released;
        }

        var asked = scope.Ask().Time(load.At, load.Member, load.Asked);
        if (verdict == LoadVerdict.Undetermined)
        {
            scope.Write(load.Id, CheckOutcome.Undetermined, AuditFindings.LoadedEarly, judged, missing: [AuditPointers.SheetFullStrength]);
            return verdict;
        }

        scope.Judge(load.Id, verdict == LoadVerdict.Early ? Severity.Stop : null, AuditFindings.LoadedEarly, [.. gaps, .. asked.Gaps],
            judged);
        return verdict;
    }

    /// <summary>Released, proof loaded and put to service too early is one fact: the first of them, with the others beside it.</summary>
    private static void FindEarly(AuditScope scope, DateTimeOffset mixedAt, ReleaseTimes release,
        (Event Load, LoadVerdict Verdict)[] early)
    {
        if (early.Length == 0)
        {
            return;
        }

        var (load, verdict) = early.MaxBy(one => one.Verdict);
        scope.Find(AuditFindings.LoadedEarly, load.Pointer, Rest(mixedAt, load.At, From(mixedAt, release.LoadS)),
            [.. early.Select(one => one.Load.Pointer).Where(at => at != load.Pointer), AuditPointers.Time("mixedAt"), AuditPointers.Air],
            verdict == LoadVerdict.Early ? Severity.Stop : Severity.Unknown,
                words: new FindingWord("what", string.Join(", ", early.Select(one => one.Load.What))));
    }

    private static void NotFollowed(AuditScope scope, string id, FindingDefinition rule, Measure? found)
    {
        scope.Find(AuditFindings.CureNotFollowed, AuditPointers.AirSeries);
        scope.Write(id, CheckOutcome.Undetermined, rule, new(found, null), [AuditPointers.AirSeries]);
    }

    private static bool IsBeyond(DateTimeOffset mixedAt, DateTimeOffset? at, ReleaseTimes release) => at is { } moment
        && (moment - mixedAt).TotalSeconds > release.Path.KnownUntilS;

    private static Measure? Since(DateTimeOffset mixedAt, DateTimeOffset? at) => at is { } moment
        ? Measure.Duration((moment - mixedAt).TotalSeconds) : null;

    /// <summary>How long it rested, and how long it has to.</summary>
    private static Judged Rest(DateTimeOffset mixedAt, DateTimeOffset? at, DateTimeOffset? until) =>
        new(Since(mixedAt, at), Since(mixedAt, until) is { } least ? Limit.Of(least) : null);

    private static DateTimeOffset? From(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.From(mixedAt, known)
        : null;

    /// <summary>An end that isn't to be proof loaded has no proof, and one that isn't in service yet no service.</summary>
    private static bool IsLeftOut(AuditScope scope, string id, DateTimeOffset? at) =>
        at is null && (id == "service-cured" || (id == "proof-cured" && !scope.Input.IsTested));

    private static void CheckAir(AuditScope scope)
    {
        if (scope.Input.Readings.ConstantAirK is { } constant)
        {
            scope.Find(AuditFindings.AirAssumed, AuditPointers.Air, Measure.Temperature(constant));
            scope.Write("air-during-cure", CheckOutcome.Undetermined, AuditFindings.AirAssumed, Measure.Temperature(constant),
                missing: [AuditPointers.AirSeries]);
        }
        else
        {
            scope.MustHold("air-during-cure", AuditFindings.AirAssumed,
                scope.Ask().Fact(HeldChecks.HasAir(scope.Input.Readings), AuditPointers.Air, "the air temperature"));
        }
    }
}
