namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Lists what a job takes and what it costs. A part without a price leaves its total null, never 0.</summary>
internal static class TakeOffPlanner
{
    public static TakeOffResult Plan(PourScope scope, IReadOnlyList<PlannedEnd> ends, MixPlan? plan, DosePlan? dose, GelPlan? gel)
    {
        var sheet = scope.Input.Compound;
        var quote = scope.Input.Quote ?? new Quote();
        var missing = new List<string>();
        var kits = KitLines.Of(scope, quote, plan, missing);
        var doses = KitLines.Doses(scope, quote, plan, kits, dose, missing);
        var materials = MaterialLines.Of(scope, quote, ends, missing);
        var labour = LabourLines.Of(scope, quote, plan, gel, missing);
        var isComplete = plan is not null && doses is not null;
        var hasToBuy = kits.Any(kit => kit.ToBuy > 0) || doses?.ToBuy > 0;
        return new()
        {
            Currency = quote.Currency ?? sheet.Currency,
            PriceDate = quote.PriceDate,
            Kits = kits,
            Doses = doses,
            Materials = materials,
            Labour = labour,
            Waste = plan is null ? null : new(plan.Mixes.Sum(mix => mix.NeededM3), plan.Mixes.Sum(mix => mix.MixedM3)),
            LeadTimeS = hasToBuy ? quote.LeadTimeS : null,
            DangerousGoods = sheet.DangerousGoods,
            MaterialsCost = isComplete ? Exact.Total([.. kits.Select(kit => kit.Cost), doses!.Cost, .. materials.Select(line => line.Cost)])
            : null,
            LabourCost = Exact.Total(labour.Select(line => line.Cost)),
            Missing = [.. missing.Distinct()],
        };
    }
}
