using CalcService.Engine.Compounds;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Kits and doses of the job, spare ones too.</summary>
internal static class KitLines
{
    /// <summary>A share of kits that should be whole isn't, for rounding alone, beyond this many decimals.</summary>
    private const int CountDecimals = 9;

    /// <summary>The sizes that the plan takes.</summary>
    public static IReadOnlyList<KitLine> Of(PourScope scope, Quote quote, MixPlan? plan, List<string> missing)
    {
        if (plan is null)
        {
            // No kits, no quote: the finding that says why has been made.
            missing.Add(PourPointers.Ends);
            return [];
        }

        var lines = new List<KitLine>();
        for (var i = 0; i < plan.Counts.Count; i++)
        {
            var (kit, count) = (scope.Input.Compound.Kits[i], plan.Counts[i]);
            var needed = (long)count.FromStock + count.ToBuy;
            if (needed == 0)
            {
                continue;
            }

            var spare = Spare(quote.SpareKits, needed);
            var spareFromStock = Math.Min(spare, plan.LeftOnShelf[i]);
            var toBuy = count.ToBuy + spare - spareFromStock;
            var cost = Exact.Cost(toBuy, kit.Cost);
            if (cost is null)
            {
                missing.Add(QuotePointers.KitCost(i));
            }

            lines.Add(new(kit.Code, kit.PartNumber, needed, spare, count.FromStock + spareFromStock, toBuy, kit.Cost, cost));
        }

        return lines;
    }

    /// <summary>Doses for the kits, or null where they can't be known.</summary>
    public static DoseLine? Doses(PourScope scope, Quote quote, MixPlan? plan, IReadOnlyList<KitLine> kits, DosePlan? dose,
        List<string> missing)
    {
        if (dose is null)
        {
            missing.Add(DoseLacks(scope));
        }

        if (dose is null || plan is null)
        {
            return null;
        }

        var needed = dose.PerKit * kits.Sum(kit => kit.Needed + kit.Spare);
        var fromStock = Math.Min(needed, plan.DosesOnShelf);
        var cost = Exact.Cost(needed - fromStock, quote.DosePrice);
        if (cost is null)
        {
            missing.Add(QuotePointers.Prices + "dose");
        }

        return new(dose.PerKit, needed, fromStock, needed - fromStock, quote.DosePrice, cost);
    }

    /// <summary>The reading that the dose goes by, where it is missing, else the sheet's doses.</summary>
    private static string DoseLacks(PourScope scope)
    {
        var (place, conditions, steel) = (scope.Input.Compound.DoseByTemperatureOf, scope.Conditions, scope.Steel.Coldest);
        return place switch
        {
            DosePlace.Compound => conditions.CompoundK is null ? PourPointers.Compound : PourPointers.Doses,
            not DosePlace.Steel when conditions.AirK is null => PourPointers.Air,
            not DosePlace.Air when steel is null => PourPointers.Steel,
            _ => PourPointers.Doses,
        };
    }

    private static long Spare(SpareKits? spare, long needed) =>
        spare?.Count ?? (spare?.Share is { } share ? (long)Math.Ceiling(Math.Round(share * needed, CountDecimals)) : 0);
}
