using System.Security.Cryptography;
using System.Text;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Audits;

/// <summary>What the statistics take from an audited record.</summary>
/// <param name="Line">Its line in the batch.</param>
/// <param name="Number">Number of the record.</param>
/// <param name="Lots">Lots of its mix.</param>
/// <param name="Crew">Who mixed.</param>
/// <param name="Ratio">Observed gel over the expected one.</param>
/// <param name="Decision">What the audit came to.</param>
public sealed record AuditedRecord(long Line, string? Number, IReadOnlyList<string> Lots, IReadOnlyList<string> Crew, double? Ratio,
    Findings.Decision Decision);

/// <summary>
/// What many records say together, gathered one by one in memory that doesn't grow with them: by lot and by whoever mixed a chart of
/// the gel ratio, and numbers of records that come twice. What no longer found room is counted and told.
/// </summary>
public sealed class RecordStatistics(RuleBook book)
{
    /// <summary>Lots, and crews, that are charted.</summary>
    public const int MostGroups = 1000;

    /// <summary>Ratios of a group that are held against the zone rules; its limits hold over all.</summary>
    public const int MostKept = 500;

    /// <summary>Numbers of records that are remembered.</summary>
    public const int MostNumbers = 250_000;

    /// <summary>Numbers that come again which are listed.</summary>
    public const int MostListed = 100;

    private readonly Dictionary<string, RecordGroup> _lots = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RecordGroup> _crews = new(StringComparer.Ordinal);
    private readonly HashSet<UInt128> _numbers = [];
    private readonly List<RepeatedNumber> _repeated = [];
    private long _records, _withoutRatio, _withoutNumber, _numbersBeyond, _repeatedCount, _lotsBeyond, _crewsBeyond;

    public void Add(AuditedRecord record)
    {
        _records++;
        _withoutRatio += record.Ratio is null ? 1 : 0;
        Remember(record);
        _lotsBeyond += Add(_lots, record.Lots, record);
        _crewsBeyond += Add(_crews, record.Crew, record);
    }

    public BatchStatistics Result()
    {
        // Many groups are of the same size.
        var factors = new Dictionary<long, double>();
        double Factor(long count) => factors.TryGetValue(count, out var known) ? known
            : factors[count] = ChartFormulas.ToleranceFactor(count, book.Audits.Coverage.Si, book.Audits.Confidence.Si, Trace.None);
        return new()
        {
            Records = _records,
            WithoutRatio = _withoutRatio,
            Numbers = new(_numbers.Count, _withoutNumber, _numbersBeyond, _repeatedCount, _repeated),
            Lots = Groups(_lots, Factor),
            LotsBeyond = _lotsBeyond,
            Crews = Groups(_crews, Factor),
            CrewsBeyond = _crewsBeyond,
        };
    }

    private void Remember(AuditedRecord record)
    {
        if (string.IsNullOrWhiteSpace(record.Number))
        {
            _withoutNumber++;
            return;
        }

        // Sixteen bytes stand for a number of any length; that two numbers share them doesn't happen.
        var key = BitConverter.ToUInt128(SHA256.HashData(Encoding.UTF8.GetBytes(record.Number)).AsSpan(0, 16));
        if (_numbers.Contains(key))
        {
            _repeatedCount++;
            if (_repeated.Count < MostListed)
            {
                _repeated.Add(new(record.Number, record.Line));
            }
        }
        else if (_numbers.Count < MostNumbers)
        {
            _numbers.Add(key);
        }
        else
        {
            _numbersBeyond++;
        }
    }

    /// <summary>Records that found no room in a group of their own.</summary>
    private static long Add(Dictionary<string, RecordGroup> groups, IReadOnlyList<string> names, AuditedRecord record)
    {
        var beyond = 0;
        foreach (var name in names.Distinct(StringComparer.Ordinal))
        {
            if (!groups.TryGetValue(name, out var group) && groups.Count < MostGroups)
            {
                groups.Add(name, group = new());
            }

            group?.Add(record);
            beyond = group is null ? 1 : beyond;
        }

        return beyond;
    }

    private List<GroupStatistics> Groups(Dictionary<string, RecordGroup> groups, Func<long, double> factor) =>
        [.. groups.OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => group.Value.Statistics(group.Key, book, factor))];
}
