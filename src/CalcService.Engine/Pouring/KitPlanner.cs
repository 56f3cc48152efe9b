using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Covering;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>The kits of the job's one mix, with what they cost and what is needed of them.</summary>
internal sealed record KitPlan(
    IReadOnlyList<MixKit> MixKits, IReadOnlyList<KitCount> Counts, double MixedM3, decimal? Cost, decimal? StockValue);

/// <summary>Chooses whole kits. Stock that covers the job is used before anything is bought.</summary>
internal static class KitPlanner
{
    private const double MillilitresPerM3 = 1e6;
    private const decimal CostUnits = 10_000;

    /// <summary>V_n = (1 + a)·V_h + V_v: what has to be mixed, with V_h the most resin that all baskets take, a the
    /// allowance and V_v what stays in the vessel; in m³.</summary>
    [Formula("needed-volume", "sum over the baskets of a mix", "docs/pour-plans.md", Basis.Derived, Symbol = "V_n", Name = "compound needed",
        Expression = "(1 + a)·V_h + V_v", Kind = QuantityKind.Volume, Range = "one mix")]
    public static double NeededM3(double allowance, double highM3, double residueM3, Trace trace) =>
        trace.Step("needed-volume", ((1 + allowance) * highM3) + residueM3,
            new("a", Measure.Fraction(allowance)), new("V_h", Measure.Volume(highM3)), new("V_v", Measure.Volume(residueM3)));

    public static KitPlan? Plan(PourScope scope, double neededM3)
    {
        var kits = scope.Input.Compound.Kits;
        var shelf = new Shelf(scope);
        // A kit counts for its whole millilitres, the need for the next one: never the other way.
        var demand = (long)Math.Ceiling(Math.Round(neededM3 * MillilitresPerM3, 6));
        var sizes = kits.Select(kit => (int)Math.Floor(Math.Round(kit.VolumeM3 * MillilitresPerM3, 6))).ToArray();
        var onShelf = kits.Select(kit => shelf.Count(kit.Code)).ToArray();
        var usable = kits.Select((_, i) => (long)sizes[i] * onShelf[i]).Sum();
        var isQuote = scope.Input.Stock is null;
        var isShort = !isQuote && usable < demand;
        shelf.ReportUnusable(needed: isShort && usable + kits.Select((kit, i) => sizes[i] * shelf.CountUnusable(kit.Code)).Sum() >= demand);
        if (isShort)
        {
            scope.Find(PouringFindings.StockShort, PourPointers.Stock, Measure.Volume(usable / MillilitresPerM3), Measure.Volume(neededM3));
        }

        var objective = Objective(scope);
        var items = Items(kits, sizes, onShelf, mayBuy: isQuote || isShort).ToArray();
        if (CoveringTable.Solve([.. items.Select(item => item.Item)], demand, objective, scope.Budget, scope.CancellationToken) is not { } taken)
        {
            scope.Find(PouringFindings.BudgetSpent, PourPointers.Ends);
            return null;
        }

        int Taken(int kit, bool bought) => items.Select((item, i) => item.Kit == kit && item.Bought == bought ? taken[i] : 0).Sum();
        var counts = kits.Select((kit, i) => new KitCount(kit.Code, Taken(i, false), Taken(i, true))).ToArray();
        var mixKits = kits.SelectMany((kit, i) => shelf.Take(kit.Code, counts[i].FromStock)
            .Concat(counts[i].ToBuy > 0 ? [new MixKit(kit.Code, null, counts[i].ToBuy)] : [])).ToArray();
        var priced = kits.All(kit => kit.Cost is not null);
        return new(
            mixKits,
            counts,
            kits.Select((kit, i) => (counts[i].FromStock + counts[i].ToBuy) * kit.VolumeM3).Sum(),
            priced ? kits.Select((kit, i) => counts[i].ToBuy * kit.Cost!.Value).Sum() : null,
            priced ? kits.Select((kit, i) => counts[i].FromStock * kit.Cost!.Value).Sum() : null);
    }

    private static IEnumerable<(CoverItem Item, int Kit, bool Bought)> Items(
        IReadOnlyList<Kit> kits, int[] sizes, int[] onShelf, bool mayBuy)
    {
        for (var i = 0; i < kits.Count; i++)
        {
            var cost = (long)Math.Round((kits[i].Cost ?? 0) * CostUnits);
            if (onShelf[i] > 0)
            {
                yield return (new(sizes[i], 0, cost, onShelf[i]), i, false);
            }

            if (mayBuy)
            {
                yield return (new(sizes[i], cost, 0, null), i, true);
            }
        }
    }

    private static CoverObjective Objective(PourScope scope)
    {
        var priced = scope.Input.Compound.Kits.All(kit => kit.Cost is not null);
        var objective = scope.Input.Objective;
        if (objective is null)
        {
            objective = priced ? PourObjective.LeastCost : PourObjective.LeastWaste;
            scope.Assume("/objective", priced ? "least cost, since the sheet has costs" : "least waste, since the sheet has no costs",
                null, AssumptionOrigin.Default);
        }

        return objective switch
        {
            PourObjective.LeastCost => CoverObjective.Cost,
            PourObjective.LeastWaste => CoverObjective.Excess,
            _ => CoverObjective.Number,
        };
    }
}
