using CalcService.Engine.Findings;
using CalcService.Engine.Numerics.Covering;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Divides the ends into mixes that are used up inside the pot life, and chooses whole kits for each. Stock that
/// covers the job is used before anything is bought.
/// </summary>
internal static class MixPlanner
{
    private const double MillisecondsPerSecond = 1000;

    /// <summary>A whole millisecond that rounding missed is one, to this many decimals.</summary>
    private const int RoundingDecimals = 6;

    /// <summary>The mixes, or null where none could be found.</summary>
    public static MixPlan? Plan(PourScope scope, PlannedEnd[] ends, int? dosesPerKit, double? potLifeS)
    {
        var shelf = new Shelf(scope, dosesPerKit);
        var problem = Problem(scope, ends, potLifeS);
        var need = problem.PerGroup + problem.Demands.Sum(demand => demand.Size * demand.Count);
        var usable = scope.Input.Compound.Kits.Sum(kit => (long)KitChoice.SizeOf(kit) * shelf.Count(kit.Code));
        var isShort = scope.Input.Stock is not null && usable < need;
        var isBarred = isShort
            && usable + scope.Input.Compound.Kits.Sum(kit => KitChoice.SizeOf(kit) * shelf.CountBarred(kit.Code)) >= need;
        shelf.ReportBarred(needed: isBarred);
        // A lot that may not be used is the one fact where it would have been enough; no lots at all have been asked for.
        if (isShort && !isBarred && scope.HasLots)
        {
            scope.Find(PouringFindings.StockShort, PourPointers.Stock, new(Measure.Volume(usable / 1e9),
                Limit.Of(Measure.Volume(need / 1e9))));
        }

        var choice = new KitChoice(scope.Input.Compound.Kits, shelf, mayBuy: scope.Input.Stock is null || isShort);
        var cover = GroupedCovering.Solve(problem with { Items = choice.Items }, scope.Budget, scope.CancellationToken);
        if (cover is null && scope.Input.Stock is not null && !isShort)
        {
            // Enough in all, but not in whole kits for each mix.
            choice = new KitChoice(scope.Input.Compound.Kits, shelf, mayBuy: true);
            cover = GroupedCovering.Solve(problem with { Items = choice.Items }, scope.Budget, scope.CancellationToken);
            if (cover is not null)
            {
                scope.Find(PouringFindings.StockDoesNotDivide, PourPointers.Stock, related: [PourPointers.Ends]);
            }
        }

        if (cover is null)
        {
            scope.Find(PouringFindings.BudgetSpent, PourPointers.Ends);
            return null;
        }

        var plan = MixPlan.From(scope, ends, cover, choice, shelf, potLifeS);
        shelf.AskUsed();
        return plan;
    }

    /// <summary>
    /// The baskets as demands. Where pot life, pour or mixing time isn't known, or a basket can't be filled in time at
    /// all, everything is one mix: the finding that says so has been made.
    /// </summary>
    private static GroupedProblem Problem(PourScope scope, PlannedEnd[] ends, double? potLifeS)
    {
        var isTimed = PotLifeChecks.CanFillEach(scope, ends, potLifeS);
        var mixingTime = isTimed ? UpToTheMillisecond(scope.Input.Compound.MixingTimeS!.Value) : 0;
        return new()
        {
            Items = [],
            Demands = [.. ends.Select((end, i) => new CoverDemand(
                KitChoice.NeedOf((1 + scope.Allowance) * end.Fill.HighM3!.Value),
                isTimed ? UpToTheMillisecond(scope.PourTimeS(i)!.Value) : 0,
                end.Quantity))],
            PerGroup = KitChoice.NeedOf(scope.VesselResidueM3),
            TimeLimit = isTimed ? (long)Math.Floor(Math.Round(potLifeS!.Value * MillisecondsPerSecond, RoundingDecimals)) : long.MaxValue,
            RoundTime = mixingTime,
            SideBySide = scope.Mixers,
            Objective = Objective(scope),
        };
    }

    private static long UpToTheMillisecond(double seconds) =>
        (long)Math.Ceiling(Math.Round(seconds * MillisecondsPerSecond, RoundingDecimals));

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
