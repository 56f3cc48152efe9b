using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Numerics;
using CalcService.Engine.Numerics.Charts;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Audits;

/// <summary>The records of one lot, or of one who mixed.</summary>
internal sealed class RecordGroup
{
    private const int MostSignals = 20;

    private readonly IndividualsChart _chart = new(RecordStatistics.MostKept);
    private readonly List<long> _lines = [];
    private double _logs;
    private long _records, _refused;

    public void Add(AuditedRecord record)
    {
        _records++;
        _refused += record.Decision == Decision.DoNotProceed ? 1 : 0;
        if (record.Ratio is { } ratio)
        {
            _chart.Add(ratio);
            _logs += Elementary.Log(ratio);
            if (_lines.Count < RecordStatistics.MostKept)
            {
                _lines.Add(record.Line);
            }
        }
    }

    public GroupStatistics Statistics(string name, RuleBook book, Func<long, double> factor)
    {
        var (rules, count) = (book.Audits, _chart.Count);
        var statistics = new GroupStatistics
        {
            Name = name,
            Records = _records,
            Refused = _refused,
            Charted = count,
            Tested = _chart.Kept.Count,
            Mean = count > 0 ? _chart.Mean : null,
            IsProvisional = rules.FirmFrom.Judge(Measure.Count(count)).IsBelow,
            IsOutOfFamily = count > 0 && !GelFamily.Of(book.Curing).Contains(_logs / count, count),
        };
        if (_chart.Deviation is not { } deviation)
        {
            return statistics;
        }

        var (k, mean, all) = (rules.ControlLimit.Si, _chart.Mean, ZoneRules.Find(_chart.Kept, _chart.Mean, deviation));
        var (average, outside) = (mean, 0);
        var width = ChartFormulas.AverageWidth(k, deviation, rules.EwmaWeight.Si, Trace.None);
        foreach (var value in _chart.Kept)
        {
            average = ChartFormulas.Average(rules.EwmaWeight.Si, value, average, Trace.None);
            outside += Math.Abs(average - mean) > width ? 1 : 0;
        }

        var tolerance = factor(count);
        return statistics with
        {
            Deviation = deviation,
            Lower = ChartFormulas.Limit(mean, -k, deviation, Trace.None),
            Upper = ChartFormulas.Limit(mean, k, deviation, Trace.None),
            Ewma = new(average, mean - width, mean + width, outside),
            Tolerance = new(tolerance, ChartFormulas.Limit(mean, -tolerance, deviation, Trace.None),
            ChartFormulas.Limit(mean, tolerance, deviation, Trace.None)),
            SignalCount = all.Count,
            Signals = [.. all.Take(MostSignals).Select(signal => new GroupSignal(signal.Rule, _lines[signal.Index]))],
        };
    }
}
