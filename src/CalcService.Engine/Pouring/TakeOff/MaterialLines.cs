using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Seizing wire, seal and cleaner of the job.</summary>
internal static class MaterialLines
{
    private const string Request = "request";
    private const string Estimate = "estimate";

    public static IReadOnlyList<MaterialLine> Of(PourScope scope, Quote quote, IReadOnlyList<PlannedEnd> ends, List<string> missing)
    {
        Assume(scope, quote);
        var wire = Sum(scope, i => SeizingWireM(scope, quote, scope.Input.Ends[i]));
        var seal = Sum(scope, i => quote.SealPerEndM3 ?? SealM3(scope, scope.Input.Ends[i].Rope.DiameterM));
        var cleaner = Sum(scope, i => quote.CleanerPerEndM3 ?? EndMaterials.CleanerM3(EndMaterials.CleanerBaths, ends[i].Fill.BasketM3, scope.Trace));
        return
        [
            Line("seizingWire", wire, QuantityKind.Length, quote.SeizingWireDiameterM is null ? Estimate : Request, quote.SeizingWirePrice, missing),
            Line("seal", seal, QuantityKind.Volume, quote.SealPerEndM3 is null ? Estimate : Request, quote.SealPrice, missing),
            Line("cleaner", cleaner, QuantityKind.Volume, quote.CleanerPerEndM3 is null ? Estimate : Request, quote.CleanerPrice, missing),
        ];
    }

    private static decimal Sum(PourScope scope, Func<int, double> each)
    {
        var sum = Exact.Sum(scope.Input, i =>
        {
            scope.Trace.Of = scope.Input.Ends[i].Id;
            return each(i);
        });
        scope.Trace.Of = "";
        return sum;
    }

    private static double SeizingWireM(PourScope scope, Quote quote, PourEnd end)
    {
        var diameter = end.Rope.DiameterM;
        var rules = scope.Rules.Seizing;
        var count = quote.SeizingCount
            ?? Seizing.Count(diameter, rules.CountPerInch.Value!.Value.Si, rules.CountLeast.Value!.Value.Si, scope.Trace);
        // The widest that the rule allows: a quote that runs short of wire is no use.
        var width = Seizing.SizeM(diameter, rules.WidthMost.Value!.Value.Si, scope.Trace);
        return Seizing.WireM(count, width, diameter, quote.SeizingWireDiameterM ?? (diameter / EndMaterials.RopePerSeizingWire), scope.Trace);
    }

    private static double SealM3(PourScope scope, double diameter) =>
        EndMaterials.SealCollarM3(diameter, EndMaterials.CollarThickness * diameter, EndMaterials.CollarHeight * diameter, scope.Trace);

    private static MaterialLine Line(string material, decimal amount, QuantityKind kind, string from, Price? price, List<string> missing)
    {
        var cost = Exact.Cost(amount, price);
        if (cost is null)
        {
            missing.Add(QuotePointers.Prices + material);
        }

        return new(material, new((double)amount, kind), from, price, cost);
    }

    private static void Assume(PourScope scope, Quote quote)
    {
        void Say(bool isGiven, string pointer, string text, Measure? value, AssumptionOrigin origin)
        {
            if (!isGiven)
            {
                scope.Assume(pointer, text, value, origin);
            }
        }

        Say(quote.SeizingCount is not null, QuotePointers.SeizingCount, "seizings of one end by the rule set, each as wide as it allows", null, AssumptionOrigin.RuleSet);
        Say(quote.SeizingWireDiameterM is not null, QuotePointers.SeizingWire, "seizing wire a twelfth as thick as the rope; common practice, no source",
            null, AssumptionOrigin.Estimate);
        Say(quote.SealPerEndM3 is not null, QuotePointers.SealPerEnd,
            "a collar of putty half a rope diameter thick and one high; common practice, no source", null, AssumptionOrigin.Estimate);
        Say(quote.CleanerPerEndM3 is not null, QuotePointers.CleanerPerEnd,
            "cleaner for a wash and a fresh rinse, each as much as the basket holds; common practice, no source", null, AssumptionOrigin.Estimate);
    }
}
