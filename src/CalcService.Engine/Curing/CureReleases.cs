using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Releases;

namespace CalcService.Engine.Curing;

/// <summary>The releases of a request's ends, at the mixing and at later pours of a shop, all by the one law.</summary>
internal sealed class CureReleases
{
    private readonly CureScope _scope;
    private readonly CureKinetics _kinetics;
    private readonly TemperatureHistory _air;
    private readonly CurePath _uniform;
    private readonly CoupledCones? _cones;
    private readonly IReadOnlyList<SeenGel>[] _seen;

    /// <param name="scope">The schedule.</param>
    /// <param name="kinetics">Gel and cure by the sheet.</param>
    /// <param name="air">The air from mixing on.</param>
    /// <param name="uniform">Coldest of air, steel and compound.</param>
    /// <param name="cones">The modelled cones; null in the uniform model.</param>
    public CureReleases(CureScope scope, CureKinetics kinetics, TemperatureHistory air, CurePath uniform, CoupledCones? cones)
    {
        (_scope, _kinetics, _air, _uniform, _cones) = (scope, kinetics, air, uniform, cones);
        _seen = [.. scope.Input.Ends.Select(end => ObservedGels.Of(scope, end.Id))];
        Lot = Release.Lot(_seen.SelectMany((gels, index) => gels.Where(gel => gel.IsOfCone).Select(gel => AgeSeen(index, gel))),
            scope.Rules, scope.Trace);
    }

    /// <summary>How much slower the lot is than its sheet, by all gels that were seen in cones; never below 1.</summary>
    public double Lot { get; }

    /// <summary>The gels of an end that somebody saw.</summary>
    public IReadOnlyList<SeenGel> SeenOf(int index) => _seen[index];

    /// <summary>An end, mixed at the mixing; null where its cone can't be followed.</summary>
    public ReleaseTimes? Of(int index) => _cones is null ? Along(_uniform, index, null)
        : _cones.Of(index) is { } cone ? Along(PathOf(cone, _uniform, index), index, slower => _cones.At(index, slower))
        : null;

    /// <summary>The path of an end: the coldest place of its cone, or what was measured where the steel was read again.</summary>
    public CurePath PathOf(int index) => _cones?.Of(index) is { } cone ? PathOf(cone, _uniform, index) : _uniform;

    /// <summary>
    /// A later pour, in seconds from that pour: steel and compound as warm as read, gels of the first mix no gels of this one.
    /// </summary>
    public ReleaseTimes? Later(int index, double pourS)
    {
        var path = UniformSince(pourS);
        if (_cones is null)
        {
            return Release.Of(_kinetics, _scope.Input.Compound, path, [], SlowerOf(index), null, Provenance.Trace.None);
        }

        return _cones.Of(index)?.Since(pourS) is { } cone
            ? Release.Of(_kinetics, _scope.Input.Compound, ColdestOf(cone, path, until => _cones.Paid(cone.Coldest(until))), [],
            SlowerOf(index), slower => _cones.Paid(cone.At(slower, Provenance.Trace.None)), Provenance.Trace.None)
            : null;
    }

    /// <summary>
    /// Where the steel was followed, as it was; else it is as warm at that pour as it was read, and has to be read again then.
    /// </summary>
    private CurePath UniformSince(double pourS)
    {
        var (air, conditions) = (_air.Since(pourS), _scope.Input.Conditions);
        return conditions.SteelSeries.Count > 0 ? _uniform.Since(pourS)
            : CurePath.Uniform(air, SteelHistory.Of(conditions.SteelK!.Value, [], air.EndS), conditions.CompoundK!.Value);
    }

    /// <summary>How much slower an end was seen to be: its lot, or its own gel where that came later still.</summary>
    public double SlowerOf(int index) => _seen[index].Select(gel => gel.IsOfMix ? 1 : AgeSeen(index, gel) ?? 1).Append(Lot).Max();

    /// <summary>Age in gel times, by the sheet, at which a gel of an end was seen.</summary>
    public double? AgeSeen(int index, SeenGel gel) => Release.AgeSeen(_kinetics, PathOf(index), gel);

    private ReleaseTimes Along(CurePath path, int index, Func<double, ModelledCone?>? model) =>
        Release.Of(_kinetics, _scope.Input.Compound, path, _seen[index], Lot, model, _scope.Trace);

    private CurePath PathOf(ConeCure cone, CurePath uniform, int index) =>
        _scope.Input.Conditions.SteelSeries.Count > 0 ? uniform : ColdestOf(cone, uniform, until => _cones!.Coldest(index, until));

    /// <summary>The cone is followed as long as the uniform path needs, which is never earlier, and a gel that was seen.</summary>
    private CurePath ColdestOf(ConeCure cone, CurePath uniform, Func<double, TemperatureHistory?> coldest)
    {
        var bound = Release.Of(_kinetics, _scope.Input.Compound, uniform, [], 1, null, Provenance.Trace.None).LoadS;
        // A gel that came late makes everything later than that; the solver needs a little room.
        var until = _scope.Input.Observations.Count == 0 && bound is { } load ? (1.05 * load) + 600 : cone.Air.EndS;
        return coldest(until) is { } history ? CurePath.Of(history, uniform.MixK) with { KnownUntilS = uniform.KnownUntilS } : uniform;
    }
}
