using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>The lots that may be used on the day of the pour, first expiry first, and those that may not.</summary>
internal sealed class Shelf
{
    private readonly PourScope _scope;
    private readonly List<(int Index, DateOnly LastGoodDay)> _expired = [];
    private readonly List<int> _undated = [];
    private readonly List<(StockLot Lot, DateOnly LastGoodDay, int Index)> _usable = [];

    public Shelf(PourScope scope)
    {
        _scope = scope;
        var today = DateOnly.FromDateTime(scope.Input.PourAt.DateTime);
        var lots = scope.Input.Stock ?? [];
        for (var i = 0; i < lots.Count; i++)
        {
            CheckShelfLife(lots[i], i);
            if (lots[i].LastGoodDay(scope.Input.Compound.ShelfLifeMonths) is not { } lastGoodDay)
            {
                _undated.Add(i);
            }
            else if (lastGoodDay < today)
            {
                _expired.Add((i, lastGoodDay));
            }
            else
            {
                _usable.Add((lots[i], lastGoodDay, i));
            }
        }

        _usable.Sort((a, b) => (a.LastGoodDay, a.Index).CompareTo((b.LastGoodDay, b.Index)));
    }

    /// <summary>Kits of a size that may be used.</summary>
    public int Count(string kit) =>
        (int)Math.Min(int.MaxValue, _usable.Where(usable => usable.Lot.Kit == kit).Sum(usable => (long)usable.Lot.Count));

    /// <summary>Takes kits off the shelf, first expiry first.</summary>
    public IReadOnlyList<MixKit> Take(string kit, int count)
    {
        var taken = new List<MixKit>();
        for (var i = 0; i < _usable.Count && count > 0; i++)
        {
            var (lot, lastGoodDay, index) = _usable[i];
            var some = lot.Kit == kit ? Math.Min(count, lot.Count) : 0;
            if (some > 0)
            {
                count -= some;
                _usable[i] = (lot with { Count = lot.Count - some }, lastGoodDay, index);
                taken.Add(new(kit, lot.Lot, some));
            }
        }

        return taken;
    }

    /// <summary>Kits of a size that only their date, or its absence, keeps from being used.</summary>
    public long CountUnusable(string kit) =>
        _expired.Select(expired => expired.Index).Concat(_undated)
            .Select(index => _scope.Input.Stock![index])
            .Where(lot => lot.Kit == kit)
            .Sum(lot => (long)lot.Count);

    /// <summary>Says which lots were left on the shelf because of their date.</summary>
    /// <param name="needed">Whether the stock would have been enough with them.</param>
    public void ReportUnusable(bool needed)
    {
        var lots = _scope.Input.Stock ?? [];
        var today = DateOnly.FromDateTime(_scope.Input.PourAt.DateTime);
        foreach (var (index, lastGoodDay) in _expired)
        {
            var lot = lots[index];
            var pointer = $"{PourPointers.Stock}/{index}/" + (lot.ExpiresOn == lastGoodDay ? "expiresOn" : "madeOn");
            _scope.Find(PouringFindings.LotExpired, pointer, Measure.Days(lastGoodDay.DayNumber - today.DayNumber), Measure.Days(0),
                [PourPointers.PourAt], needed && lot.Count > 0 ? Severity.Stop : Severity.Note,
                words: [new("lot", lot.Lot), new("expiresOn", Day(lastGoodDay)),
                    new("days", (today.DayNumber - lastGoodDay.DayNumber).ToString(CultureInfo.InvariantCulture))]);
        }

        foreach (var index in _undated)
        {
            _scope.Find(PouringFindings.LotExpiryMissing, $"{PourPointers.Stock}/{index}/expiresOn",
                severity: needed && lots[index].Count > 0 ? Severity.Unknown : Severity.Note, words: new FindingWord("lot", lots[index].Lot));
        }
    }

    private void CheckShelfLife(StockLot lot, int index)
    {
        if (_scope.Input.Compound.ShelfLifeMonths is { } months && lot is { ExpiresOn: { } expires, MadeOn: { } made }
            && made.AddMonths(months) is var lastDay && expires > lastDay)
        {
            _scope.Find(PouringFindings.ExpiryBeyondShelfLife, $"{PourPointers.Stock}/{index}/expiresOn",
                limit: Measure.Months(months), related: [$"{PourPointers.Stock}/{index}/madeOn"],
                words: [new("lot", lot.Lot), new("expiresOn", Day(expires)), new("madeOn", Day(made)), new("lastDay", Day(lastDay))]);
        }
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
