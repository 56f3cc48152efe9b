using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Audits;

/// <summary>Gel and release of the recorded end, by the law and the model of the schedule that it followed.</summary>
internal static class AuditedCure
{
    public static RecomputedPlan Check(AuditScope scope, CureKinetics kinetics, TemperatureHistory air, RecomputedPlan plan)
    {
        var (input, readings, mixedAt) = (scope.Input, scope.Input.Readings, scope.Input.Times.MixedAt!.Value);
        var steel = readings.SteelK is { } steelK
            ? SteelHistory.Of(steelK, [.. readings.SteelSeries.Select(point => ((point.At - mixedAt).TotalSeconds, point.Kelvins))],
            air.EndS)
            : null;
        var times = new UniformTimes(kinetics, air, steel, readings.CompoundK);
        // A load that came too early for the air alone came too early whatever else is missing.
        var path = times.Path ?? CurePath.Of(air, air.At(0));
        var release = (input.ThermalModel == ThermalModel.Coupled ? ConeOf(scope, kinetics, air) : null) is { } cone
            ? Coupled(scope, kinetics, cone, path) ?? Of(scope, kinetics, path, null)
            : Of(scope, kinetics, path, null);
        var gel = GelCheck.Check(scope, kinetics, times, release.Path, Seen(input, mixedAt, release.Path) is [var first] ? first : null);
        if (times.Path is not null)
        {
            scope.CheckRelease(input.Compound, kinetics, release, steel!.LastReadS, air, AuditPointers.Air, AuditPointers.Steel);
        }

        return ReleaseChecks.Check(scope, release, gel, plan);
    }

    /// <summary>By the cone's heat; null, and said why, where the steps are spent.</summary>
    private static ReleaseTimes? Coupled(AuditScope scope, CureKinetics kinetics, ConeCure cone, CurePath uniform)
    {
        var path = scope.Input.Readings.SteelSeries.Count > 0 ? uniform : cone.Coldest(cone.Air.EndS) is { } coldest
            ? CurePath.Of(coldest, uniform.MixK) : null;
        var isSpent = path is null;
        var release = path is null ? null : Of(scope, kinetics, path, slower =>
        {
            var modelled = cone.At(slower, Trace.None);
            isSpent |= modelled is null;
            return modelled;
        });
        if (isSpent)
        {
            scope.Find(HeatFindings.BudgetSpent, AuditPointers.Basket);
        }

        return isSpent ? null : release;
    }

    private static ReleaseTimes Of(AuditScope scope, CureKinetics kinetics, CurePath path, Func<double, ModelledCone?>? model)
    {
        var seen = Seen(scope.Input, scope.Input.Times.MixedAt!.Value, path);
        var lot = Release.Lot(seen.Where(gel => gel.IsOfCone).Select(gel => Release.AgeSeen(kinetics, path, gel)), scope.Book.Curing,
            scope.Trace);
        return Release.Of(kinetics, scope.Input.Compound, path, seen, lot, model, scope.Trace);
    }

    /// <summary>The gel that the record tells of; one before the mixing is a slip of the pen, which the order of times finds.</summary>
    private static SeenGel[] Seen(AuditInput input, DateTimeOffset mixedAt, CurePath path) =>
        input.Times.GelAt is { } at && at > mixedAt && (at - mixedAt).TotalSeconds is var seconds && seconds <= path.BeforeGel.EndS
            ? [new(seconds, input.Times.StillSoftAt is { } soft ? (soft - mixedAt).TotalSeconds : null, input.GelSeenIn)]
            : [];

    /// <summary>The cone, where the record holds what it takes; what else is missing is found by the checks of the record.</summary>
    private static ConeCure? ConeOf(AuditScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        if (scope.Input is not { Rope: { } rope, Socket: { Basket: { } basket } socket,
            Readings: { SteelK: { } steel, CompoundK: { } compound } })
        {
            return null;
        }

        scope.CheckHeat(scope.Input.Compound, kinetics.Doses, scope.Book.Curing.FilmCoefficient);
        return scope.ConeOf(scope.Input.Compound, kinetics, air, steel, compound,
            new(scope.Input.End ?? "the end", "", rope, basket, socket.OuterAtSmallEndM, socket.OuterAtMouthM), scope.Book.Curing,
            scope.CancellationToken);
    }
}
