using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>Whether the end rested until it had gelled, and was loaded only when it had its strength.</summary>
internal static class ReleaseChecks
{
    private static (string Id, string Member, string What, string Asked, DateTimeOffset? At)[] Loads(RecordedTimes times) =>
    [
        ("released-cured", "releasedAt", "released", "when the end was released for loading", times.ReleasedAt),
        ("proof-cured", "proofAt", "proof loaded", "when the end was proof loaded", times.ProofAt),
        ("service-cured", "inServiceAt", "put to service", "", times.InServiceAt),
    ];

    public static RecomputedPlan Check(AuditScope scope, UniformTimes times, AuditedGel gel, RecomputedPlan plan)
    {
        var (input, mixedAt) = (scope.Input, scope.Input.Times.MixedAt!.Value);
        var slower = gel.Ratio is { } ratio ? GelFamily.Of(scope.Book.Curing).Slower(ratio, input.GelSeenIn, scope.Trace) : 1;
        var hold = input.Compound.MinimumHoldS ?? 0;
        if (input.Compound.MinimumHoldS is null)
        {
            scope.Assume("/compound/sheet/minimumHold", "no hold after gel: the sheet gives none", Measure.Duration(0), AssumptionOrigin.Default);
        }

        // In the cone a gel that was seen is a fact; at the mouth the depth of the basket can still be behind.
        var byModel = UniformTimes.GelOf(times.Latest(slower));
        var latest = (input.GelSeenIn, gel.ObservedS) switch
        {
            (GelPlace.Cone, { } seen) => seen,
            (GelPlace.Mouth, { } seen) => byModel is { } model ? Math.Max(model, seen) : null,
            _ => byModel,
        };
        var still = latest + hold;
        var full = times.FullOf(times.Full(slower));
        double? strong = full is { } cured && still is { } rested ? Math.Max(cured, rested) : null;
        CheckMove(scope, mixedAt, still, times.Colder.EndS);
        var gaps = CureDayChecks.Basis(scope).Gaps;
        foreach (var load in Loads(input.Times))
        {
            CheckLoad(scope, mixedAt, load, strong, times.ColderAfterGel.EndS, gaps);
        }

        CheckAir(scope);
        return plan with { Gel = gel, UndisturbedUntil = From(mixedAt, still), LoadFrom = From(mixedAt, strong) };
    }

    /// <summary>The same checks where gel and cure can't be computed.</summary>
    public static RecomputedPlan Open(AuditScope scope, RecomputedPlan plan)
    {
        var basis = CureDayChecks.Basis(scope);
        string[] missing = [.. basis.Gaps.Select(gap => gap.Pointer), .. basis.Gaps.Count == 0 ? [AuditPointers.SheetGelTimes] : Array.Empty<string>()];
        scope.Write("gel", CheckOutcome.Undetermined, CompoundFindings.GelOutOfFamily, missing: missing);
        scope.Write("moved", CheckOutcome.Undetermined, AuditFindings.MovedEarly, missing: missing);
        foreach (var load in Loads(scope.Input.Times))
        {
            scope.Write(load.Id, IsLeftOut(scope, load.Id, load.At) ? CheckOutcome.NotApplicable : CheckOutcome.Undetermined, AuditFindings.LoadedEarly,
                missing: IsLeftOut(scope, load.Id, load.At) ? [] : missing);
        }

        CheckAir(scope);
        return plan;
    }

    private static void CheckMove(AuditScope scope, DateTimeOffset mixedAt, double? still, double knownUntilS)
    {
        var moved = scope.Input.Times.MovedAt;
        double? seconds = moved is { } at ? (at - mixedAt).TotalSeconds : null;
        var isEarly = seconds is not null && (still is null || seconds < still);
        Measure? found = seconds is { } known ? Measure.Duration(known) : null;
        Measure? limit = still is { } until ? Measure.Duration(until) : null;
        if (still is null && seconds > knownUntilS)
        {
            scope.Find(AuditFindings.CureNotFollowed, AuditPointers.AirSeries);
            scope.Write("moved", CheckOutcome.Undetermined, AuditFindings.MovedEarly, found, missing: [AuditPointers.AirSeries]);
            return;
        }

        if (isEarly)
        {
            scope.Find(AuditFindings.MovedEarly, AuditPointers.Time("movedAt"), found, limit, [AuditPointers.Time("mixedAt"), AuditPointers.Time("gelAt")]);
        }

        scope.Judge("moved", isEarly, AuditFindings.MovedEarly, CureDayChecks.Basis(scope).Time(moved, "movedAt", "when the end was first moved").Gaps, found, limit);
    }

    private static void CheckLoad(AuditScope scope, DateTimeOffset mixedAt, (string Id, string Member, string What, string Asked, DateTimeOffset? At) load,
        double? strong, double knownUntilS, IReadOnlyList<Gap> gaps)
    {
        if (IsLeftOut(scope, load.Id, load.At))
        {
            scope.Skip(load.Id, AuditFindings.LoadedEarly);
            return;
        }

        double? seconds = load.At is { } at ? (at - mixedAt).TotalSeconds : null;
        Measure? found = seconds is { } known ? Measure.Duration(known) : null;
        Measure? limit = strong is { } cured ? Measure.Duration(cured) : null;
        if (strong is null && seconds > knownUntilS)
        {
            scope.Find(AuditFindings.CureNotFollowed, AuditPointers.AirSeries);
            scope.Write(load.Id, CheckOutcome.Undetermined, AuditFindings.LoadedEarly, found, missing: [AuditPointers.AirSeries]);
            return;
        }

        // Within what is known it never had its strength, or had it later.
        var isEarly = seconds is not null && (strong is null || seconds < strong);
        if (isEarly)
        {
            scope.Find(AuditFindings.LoadedEarly, AuditPointers.Time(load.Member), found, limit, [AuditPointers.Time("mixedAt"), AuditPointers.Air], words: new FindingWord("what", load.What));
        }

        var asked = scope.Ask().Time(load.At, load.Member, load.Asked);
        scope.Judge(load.Id, isEarly, AuditFindings.LoadedEarly, [.. gaps, .. asked.Gaps], found, limit);
    }

    private static DateTimeOffset? From(DateTimeOffset mixedAt, double? seconds) => seconds is { } known ? CureClock.From(mixedAt, known) : null;

    /// <summary>An end that isn't to be proof loaded has no proof, and one that isn't in service yet no service.</summary>
    private static bool IsLeftOut(AuditScope scope, string id, DateTimeOffset? at) =>
        at is null && (id == "service-cured" || (id == "proof-cured" && scope.Input.Proof.IsAsked == false));

    private static void CheckAir(AuditScope scope)
    {
        if (scope.Input.Readings.ConstantAirK is { } constant)
        {
            scope.Find(AuditFindings.AirAssumed, AuditPointers.Air, Measure.Temperature(constant));
            scope.Write("air-during-cure", CheckOutcome.Undetermined, AuditFindings.AirAssumed, Measure.Temperature(constant), missing: [AuditPointers.AirSeries]);
        }
        else
        {
            scope.MustHold("air-during-cure", AuditFindings.AirAssumed,
                scope.Ask().Fact(HeldChecks.HasAir(scope.Input.Readings), AuditPointers.Air, "the air temperature"));
        }
    }
}
