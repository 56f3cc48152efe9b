using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Seizing wire, seal and cleaner of the job.</summary>
internal static class MaterialLines
{
    public static IReadOnlyList<MaterialLine> Of(PourScope scope, Quote quote, IReadOnlyList<PlannedEnd> ends, List<string> missing)
    {
        var needs = scope.Input.Ends.Select((end, i) => EndNeeds.Of(scope, quote, end, ends[i])).ToArray();
        if (scope.HasPrices)
        {
            Assume(scope, quote, needs);
        }

        decimal Sum(Func<EndNeeds, double> each) => Exact.Sum(scope.Input, i => each(needs[i]));
        return
        [
            Line("seizingWire", Sum(need => need.WireM), QuantityKind.Length, quote.SeizingWireDiameterM, quote.SeizingWirePrice, missing),
            Line("seal", Sum(need => need.SealM3), QuantityKind.Volume, quote.SealPerEndM3, quote.SealPrice, missing),
            Line("cleaner", Sum(need => need.CleanerM3), QuantityKind.Volume, quote.CleanerPerEndM3, quote.CleanerPrice, missing),
        ];
    }

    private static MaterialLine Line(string material, decimal amount, QuantityKind kind, double? given, Price? price, List<string> missing)
    {
        var cost = Exact.Cost(amount, price);
        if (cost is null)
        {
            missing.Add(QuotePointers.Prices + material);
        }

        return new(material, new((double)amount, kind), given is null ? "estimate" : "request", price, cost);
    }

    private static void Assume(PourScope scope, Quote quote, EndNeeds[] needs)
    {
        void Say(bool isGiven, string pointer, string text, Func<EndNeeds, Measure> valueOf, AssumptionOrigin origin)
        {
            if (!isGiven)
            {
                var values = needs.Select(valueOf).Distinct().ToArray();
                // Where the ends differ it is not one number.
                scope.Assume(pointer, text, values.Length == 1 ? values[0] : null, origin);
            }
        }

        Say(quote.SeizingCount is not null, QuotePointers.SeizingCount, "seizings of one end by the rule set, each as wide as it allows",
            need => Measure.Count(need.Seizings), AssumptionOrigin.RuleSet);
        Say(quote.SeizingWireDiameterM is not null, QuotePointers.SeizingWire,
            "seizing wire a twelfth as thick as the rope; common practice, no source",
            need => Measure.Length(need.WireDiameterM), AssumptionOrigin.Estimate);
        Say(quote.SealPerEndM3 is not null, QuotePointers.SealPerEnd,
            "for one end a collar of putty half a rope diameter thick and one high; common practice, no source",
            need => Measure.Volume(need.SealM3), AssumptionOrigin.Estimate);
        Say(quote.CleanerPerEndM3 is not null, QuotePointers.CleanerPerEnd,
            "for one end cleaner for a wash and a fresh rinse, each as much as the basket holds; common practice, no source",
            need => Measure.Volume(need.CleanerM3), AssumptionOrigin.Estimate);
    }
}
