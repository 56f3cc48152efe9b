using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>The cones of a request, each kind followed once however often it is asked for.</summary>
internal sealed class CoupledCones
{
    private readonly CureScope _scope;
    private readonly ConeCure?[] _cones;
    private readonly Dictionary<(ConeKind Kind, double Slower), ModelledCone?> _known = [];
    private readonly Dictionary<(ConeKind Kind, double Slower, double UntilS), IReadOnlyList<ConeMoment>?> _curves = [];
    private readonly Dictionary<(ConeKind Kind, double UntilS), TemperatureHistory?> _coldest = [];
    private bool _isSpent;

    public CoupledCones(CureScope scope, CureKinetics kinetics, TemperatureHistory air, double steelK, double compoundK)
    {
        _scope = scope;
        scope.CheckHeat(scope.Input.Compound, kinetics.Doses, scope.Rules.FilmCoefficient);
        _cones = [.. scope.Input.Ends.Select((end, index) => scope.ConeOf(scope.Input.Compound, kinetics, air, steelK, compoundK,
            new(end.Id, $"{CurePointers.Ends}/{index}", end.Rope, end.Basket, end.OuterAtSmallEndM, end.OuterAtMouthM), scope.Rules,
            scope.CancellationToken))];
        CheckPeaks();
    }

    /// <summary>The cone of an end; null where something is missing that it needs, or the steps are spent.</summary>
    public ConeCure? Of(int index) => _isSpent ? null : _cones[index];

    /// <summary>An end with every time longer by a factor; null where it can't be followed.</summary>
    public ModelledCone? At(int index, double slower)
    {
        if (Of(index) is not { } cone)
        {
            return null;
        }

        var key = (KindOf(index), slower);
        if (!_known.TryGetValue(key, out var known))
        {
            _scope.Trace.Of = _scope.Input.Ends[index].Id;
            _known[key] = known = Paid(cone.At(slower, slower == 1 ? _scope.Trace : Trace.None));
            _scope.Trace.Of = "";
        }

        return known;
    }

    /// <summary>The expected cure of an end over time; null where it can't be followed.</summary>
    public IReadOnlyList<ConeMoment>? Curve(int index, double slower, double untilS)
    {
        var key = (KindOf(index), slower, untilS);
        if (!_curves.TryGetValue(key, out var known) && Of(index) is { } cone)
        {
            _curves[key] = known = Paid(cone.Curve(slower, untilS));
        }

        return known;
    }

    /// <summary>The coldest place of an end that makes no heat.</summary>
    public TemperatureHistory? Coldest(int index, double untilS)
    {
        if (Of(index) is not { } cone)
        {
            return null;
        }

        var key = (KindOf(index), untilS);
        if (!_coldest.TryGetValue(key, out var known))
        {
            _coldest[key] = known = Paid(cone.Coldest(untilS));
        }

        return known;
    }

    /// <summary>Says once where the steps that a request may take are spent.</summary>
    public T? Paid<T>(T? answer)
    {
        if (answer is null && !_isSpent)
        {
            _isSpent = true;
            _scope.Find(HeatFindings.BudgetSpent, CurePointers.Ends);
        }

        return answer;
    }

    private void CheckPeaks()
    {
        for (var i = 0; i < _cones.Length; i++)
        {
            if (At(i, slower: 1) is not { Peak.TemperatureK: var peak } cure)
            {
                continue;
            }

            var (pointer, end, found) = ($"{CurePointers.Ends}/{i}", new FindingWord("end", _scope.Input.Ends[i].Id),
                Measure.Temperature(peak));
            if (_scope.Input.Compound.PeakLimitK is { } limit && Judged.Temperature(peak, limit) is { IsAbove: true } hot)
            {
                _scope.Find(CuringFindings.PeakAboveSheet, pointer, hot, [CurePointers.PeakLimit], words: end);
            }

            if (cure.PeakIsUpper)
            {
                _scope.Find(CuringFindings.PeakUpperEstimate, pointer, found, words: end);
            }
        }
    }

    private ConeKind KindOf(int index) =>
        _scope.Input.Ends[index] is var end ? new(end.Rope, end.Basket, end.OuterAtSmallEndM, end.OuterAtMouthM) : default;

    /// <summary>What makes two cones the same.</summary>
    private readonly record struct ConeKind(Rope Rope, Basket Basket, double? OuterAtSmallEndM, double? OuterAtMouthM);
}
