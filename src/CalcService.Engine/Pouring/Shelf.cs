using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>The lots that may be used for the pour, first expiry first, and those that may not.</summary>
internal sealed class Shelf
{
    private readonly PourScope _scope;
    private readonly List<(StockLot Lot, int Index, LotReason Reason)> _barred = [];
    private readonly List<(StockLot Lot, int Index, DateOnly LastGoodDay)> _usable = [];
    private readonly SortedSet<int> _used = [];

    /// <param name="scope">The plan.</param>
    /// <param name="dosesPerKit">Doses for each kit; null where that isn't known.</param>
    public Shelf(PourScope scope, int? dosesPerKit)
    {
        _scope = scope;
        var lots = scope.Input.Stock ?? [];
        for (var i = 0; i < lots.Count; i++)
        {
            CheckShelfLife(lots[i], i);
            var dates = new LotDates(lots[i], scope.Input.Compound.ShelfLifeMonths, withDose: dosesPerKit != 0);
            if (LotChecks.Find(scope, lots[i], dates) is { } reason)
            {
                _barred.Add((lots[i], i, reason));
            }
            else
            {
                _usable.Add((lots[i], i, dates.Earliest!.Day!.Value));
            }
        }

        _usable.Sort((a, b) => (a.LastGoodDay, a.Index).CompareTo((b.LastGoodDay, b.Index)));
    }

    /// <summary>Kits of a size that may be used.</summary>
    public int Count(string kit)
    {
        long count = 0;
        foreach (var (lot, _, _) in _usable)
        {
            count += lot.Kit == kit ? lot.Count : 0;
        }

        return (int)Math.Min(int.MaxValue, count);
    }

    /// <summary>Doses that may be used.</summary>
    public long Doses => _usable.Sum(usable => (long)(usable.Lot.DoseCount ?? 0));

    /// <summary>Takes kits off the shelf, first expiry first.</summary>
    public IReadOnlyList<MixKit> Take(string kit, int count)
    {
        if (count == 0)
        {
            return [];
        }

        var taken = new List<MixKit>();
        for (var i = 0; i < _usable.Count && count > 0; i++)
        {
            var (lot, index, lastGoodDay) = _usable[i];
            var some = lot.Kit == kit ? Math.Min(count, lot.Count) : 0;
            if (some > 0)
            {
                count -= some;
                _usable[i] = (lot with { Count = lot.Count - some }, index, lastGoodDay);
                _used.Add(index);
                taken.Add(new(kit, lot.Lot, some));
            }
        }

        return taken;
    }

    /// <summary>Kits of a size that may not be used, for a reason that weighs more than a note where they are needed.</summary>
    public long CountBarred(string kit) =>
        _barred.Where(barred => barred.Lot.Kit == kit && barred.Reason.Definition.Severities[0] > Severity.Note)
            .Sum(barred => (long)barred.Lot.Count);

    /// <summary>Says which lots were left on the shelf, and why.</summary>
    /// <param name="needed">Whether the stock would have been enough with them.</param>
    public void ReportBarred(bool needed)
    {
        foreach (var (lot, index, reason) in _barred)
        {
            _scope.Find(reason.Definition, $"{PourPointers.Stock}/{index}/{reason.Member}", reason.Judged, reason.Related,
                needed && lot.Count > 0 ? reason.Definition.Severities[0] : Severity.Note, words: [new("lot", lot.Lot), .. reason.Words]);
        }
    }

    /// <summary>Asks of the lots that were taken what nobody stated.</summary>
    public void AskUsed()
    {
        foreach (var index in _used)
        {
            _scope.Ask(LotChecks.Facts(_scope.Input.Stock![index], _scope.Input.Compound.Storage, $"{PourPointers.Stock}/{index}"));
        }
    }

    private void CheckShelfLife(StockLot lot, int index)
    {
        if (_scope.Input.Compound.ShelfLifeMonths is { } months && lot is { ExpiresOn: { } expires, MadeOn: { } made }
            && made.AddMonths(months) is var lastDay && expires > lastDay)
        {
            _scope.Find(PouringFindings.ExpiryBeyondShelfLife, $"{PourPointers.Stock}/{index}/expiresOn",
                new(null, Limit.Of(Measure.Months(months))), related: [$"{PourPointers.Stock}/{index}/madeOn"],
                words: [new("lot", lot.Lot), new("expiresOn", expires), new("madeOn", made), new("lastDay", lastDay)]);
        }
    }
}
