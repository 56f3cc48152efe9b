using CalcService.Api.Contract;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>Where a quote contradicts the rest of the request.</summary>
public static class QuoteCheck
{
    public static void Check(PourPlanRequest request, CompoundSheet? sheet, ValidationContext<PourPlanRequest> context)
    {
        if (request.Quote?.Currency is { } currency && sheet?.Currency is { } other && other != currency
            && sheet.Kits.Any(kit => kit.Cost is not null))
        {
            context.Contradict("Quote.Currency", nameof(PourPlanRequest.Compound), $"The sheet's costs are in {other}.");
        }

        for (var i = 0; i < request.Ends.Count; i++)
        {
            if (request.Quote?.Seizing?.WireDiameter is { } wire && wire.Si > request.Ends[i].Rope.Diameter.Si)
            {
                context.Contradict("Quote.Seizing.WireDiameter", $"Ends[{i}].Rope.Diameter", "The seizing wire is thicker than the rope.");
            }
        }
    }
}

/// <summary>What spare kits may be.</summary>
public sealed class SpareKitsValidator : Contradictions<SpareKits>
{
    protected override void Check(SpareKits spare, ValidationContext<SpareKits> context)
    {
        if ((spare.Count is null) == (spare.Share is null))
        {
            context.Contradict(nameof(SpareKits.Count), nameof(SpareKits.Share), "Exactly one of count and share is expected.");
        }
    }
}
