using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Audits;

/// <summary>Gel and release of the recorded end, by the law and the model of the schedule that it followed.</summary>
internal static class AuditedCure
{
    public static RecomputedPlan Check(AuditScope scope, CureKinetics kinetics, TemperatureHistory air, RecomputedPlan plan)
    {
        var (input, readings, mixedAt) = (scope.Input, scope.Input.Readings, scope.Input.Times.MixedAt!.Value);
        var steel = readings.SteelK is { } steelK
            ? SteelHistory.Of(steelK, [.. readings.SteelSeries.Select(point => ((point.At - mixedAt).TotalSeconds, point.Kelvins))], air.EndS)
            : null;
        var times = new UniformTimes(kinetics, air, steel, readings.CompoundK);
        // A load that came too early for the air alone came too early whatever else is missing.
        var path = times.Path ?? CurePath.Of(air, air.At(0));
        var cone = input.ThermalModel == ThermalModel.Coupled ? ConeOf(scope, kinetics, air) : null;
        if (cone is not null && readings.SteelSeries.Count == 0 && cone.Coldest(air.EndS) is { } coldest)
        {
            path = CurePath.Of(coldest, path.MixK);
        }

        var seen = Seen(input, mixedAt, path);
        var lot = Release.Lot(seen.Where(gel => gel.IsOfCone).Select(gel => Release.AgeSeen(kinetics, path, gel)), scope.Book.Curing, scope.Trace);
        var release = Release.Of(kinetics, input.Compound, path, seen, lot, cone is null ? null : cone.ReleaseAt, scope.Trace);
        var gel = GelCheck.Check(scope, kinetics, times, path, seen is [var first] ? first : null);
        if (times.Path is not null)
        {
            scope.CheckRelease(input.Compound, kinetics, release, steel!.LastReadS, AuditPointers.Steel);
        }

        return ReleaseChecks.Check(scope, release, gel, plan);
    }

    /// <summary>The gel that the record tells of; one before the mixing is a slip of the pen, which the order of times finds.</summary>
    private static SeenGel[] Seen(AuditInput input, DateTimeOffset mixedAt, CurePath path) =>
        input.Times.GelAt is { } at && at > mixedAt && (at - mixedAt).TotalSeconds is var seconds && seconds <= path.BeforeGel.EndS
            ? [new(seconds, input.Times.StillSoftAt is { } soft ? (soft - mixedAt).TotalSeconds : null, input.GelSeenIn)]
            : [];

    /// <summary>The cone, where the record holds what it takes; what else is missing is found by the checks of the record.</summary>
    private static ConeCure? ConeOf(AuditScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        if (scope.Input is not { Rope: { } rope, Socket: { Basket: { } basket } socket, Readings: { SteelK: { } steel, CompoundK: { } compound } })
        {
            return null;
        }

        scope.CheckHeat(scope.Input.Compound, kinetics.Doses, scope.Book.Curing.FilmCoefficient);
        return scope.ConeOf(scope.Input.Compound, kinetics, air, steel, compound,
            new(scope.Input.End ?? "the end", "", rope, basket, socket.OuterAtSmallEndM, socket.OuterAtMouthM), scope.Book.Curing, scope.CancellationToken);
    }
}
