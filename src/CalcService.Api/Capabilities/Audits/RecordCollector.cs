using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Engine.Audits;
using CalcService.Engine.Rules;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>
/// Gathers the records of a batch by lot and by whoever mixed. Charts are held against the current edition, whatever the lines name.
/// </summary>
internal sealed class RecordCollector(RuleBook current) : ISummaryCollector
{
    private readonly RecordStatistics _statistics = new(current);

    public void Add(long line, in Processed processed)
    {
        if (processed is not { Body: Answer<RecordAuditResult> answer, Request: RecordAuditRequest request })
        {
            return;
        }

        _statistics.Add(new(
            line,
            request.Record?.Number,
            [.. (request.Mix?.Kits ?? []).Select(kit => kit.Lot)],
            [.. (request.People ?? []).Where(person => person.Role == WorkRole.Mixer).Select(person => person.Name).OfType<string>()],
            answer.Result.Recomputed.Gel.Ratio?.Si,
            answer.Decision));
    }

    public object Result() => RecordBatchStatistics.From(_statistics.Result());
}
