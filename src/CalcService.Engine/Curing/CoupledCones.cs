using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Curing;

/// <summary>The cones of a request, each kind followed once however often it is asked for.</summary>
internal sealed class CoupledCones
{
    private readonly CureScope _scope;
    private readonly CoupledCure?[] _models;
    private readonly Dictionary<(ConeKind Kind, double Slower), EndCure?> _known = [];
    private bool _isSpent;

    public CoupledCones(CureScope scope, CureKinetics kinetics, TemperatureHistory air)
    {
        _scope = scope;
        CoupledFacts.Check(scope, kinetics.Doses);
        _models = [.. scope.Input.Ends.Select((end, index) => CoupledCure.For(scope, kinetics, air, end, index))];
        scope.Assume("/conditions", scope.Rules.FilmCoefficient.Text, scope.Rules.FilmCoefficient.Value, AssumptionOrigin.RuleSet);
        var cures = _models.Select((_, index) => At(index, slower: 1)).OfType<EndCure>().ToArray();
        Slowest = cures.Length == 0 ? null : cures.MaxBy(cure => cure.FullS ?? double.PositiveInfinity)! with
        {
            EarliestGelS = cures.Min(cure => cure.EarliestGelS),
            LatestGelS = cures.All(cure => cure.LatestGelS is not null) ? cures.Max(cure => cure.LatestGelS) : null,
            Peak = cures.Max(cure => cure.Peak),
        };
        CheckPeaks();
    }

    /// <summary>The one that is last, with the earliest and latest gel and the highest peak of all; null where none could be followed.</summary>
    public EndCure? Slowest { get; }

    /// <summary>An end with every gel time longer by a factor; null where it can't be followed.</summary>
    public EndCure? At(int index, double slower)
    {
        var end = _scope.Input.Ends[index];
        var key = (new ConeKind(end.Rope, end.Basket, end.OuterAtSmallEndM, end.OuterAtMouthM), slower);
        if (_models[index] is not { } model || _known.TryGetValue(key, out var known) && known is null)
        {
            return null;
        }

        if (known is null)
        {
            _scope.Trace.Of = end.Id;
            _known[key] = known = model.At(slower, slower == 1 ? _scope.Trace : Trace.None);
            _scope.Trace.Of = "";
            SayWhereSpent(known is null);
        }

        return known;
    }

    /// <summary>An end by the sheet.</summary>
    public EndCure? BySheet(string id) => At(IndexOf(id), slower: 1);

    /// <summary>A later pour of an end; null where it can't be followed.</summary>
    public EndCure? ReleaseAt(int index, double pourS, double slower)
    {
        if (_models[index] is not { } model || _isSpent)
        {
            return null;
        }

        var release = model.ReleaseAt(pourS, slower);
        SayWhereSpent(release is null);
        return release;
    }

    /// <summary>The age at which a gel was seen.</summary>
    public double? AgeAt(GelObservation seen, double seconds) => _models[IndexOf(seen.End)]?.AgeAt(seconds, seen.SeenIn);

    private int IndexOf(string id) => _scope.Input.Ends.Select((end, index) => (end, index)).First(pair => pair.end.Id == id).index;

    private void CheckPeaks()
    {
        for (var i = 0; i < _models.Length; i++)
        {
            if (At(i, slower: 1) is not { Peak: { } peak } cure)
            {
                continue;
            }

            var (pointer, end, found) = ($"{CurePointers.Ends}/{i}", new Findings.FindingWord("end", _scope.Input.Ends[i].Id), Measure.Temperature(peak.Kelvins));
            if (_scope.Input.Compound.PeakLimitK is { } limit && peak.Kelvins > limit)
            {
                _scope.Find(CuringFindings.PeakAboveSheet, pointer, found, Measure.Temperature(limit), [CurePointers.PeakLimit], words: end);
            }

            if (cure.PeakIsUpper)
            {
                _scope.Find(CuringFindings.PeakUpperEstimate, pointer, found, words: end);
            }
        }
    }

    private void SayWhereSpent(bool isSpent)
    {
        if (isSpent && !_isSpent)
        {
            _scope.Find(CuringFindings.CureBudgetSpent, CurePointers.Ends);
        }

        _isSpent |= isSpent;
    }

    /// <summary>What makes two cones the same.</summary>
    private sealed record ConeKind(Rope Rope, Basket Basket, double? OuterAtSmallEndM, double? OuterAtMouthM);
}
