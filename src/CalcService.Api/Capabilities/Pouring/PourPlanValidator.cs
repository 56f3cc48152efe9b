using CalcService.Api.Capabilities.Pouring.TakeOff;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Pouring;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>What a pour plan's request may be. Cautions of the trade are findings, not errors.</summary>
public sealed class PourPlanValidator(CompoundCatalogue compounds) : Contradictions<PourPlanRequest>
{
    /// <summary>Most baskets in one request.</summary>
    public const int MostBaskets = 1000;

    protected override void Check(PourPlanRequest request, ValidationContext<PourPlanRequest> context)
    {
        var baskets = request.Ends.Sum(end => (long)end.Quantity);
        if (baskets > MostBaskets)
        {
            context.Fail(nameof(PourPlanRequest.Ends), $"{baskets} baskets; at most {MostBaskets} are allowed.",
                ContradictionWords.RangeCode);
        }

        CompoundSheetValidator.FindTwins(request.Ends, end => end.Id, (first, second) =>
            context.Contradict($"Ends[{first}].Id", $"Ends[{second}].Id", "Two entries have the same id."));
        var pourOn = DateOnly.FromDateTime(request.PourAt.DateTime);
        if (request.Conditions?.ReadAt > request.PourAt)
        {
            context.Contradict("Conditions.ReadAt", nameof(PourPlanRequest.PourAt), "The readings are taken after the pour.");
        }

        for (var i = 0; i < request.Ends.Count; i++)
        {
            if (request.Ends[i].Socket.Temperature?.ReadAt > request.PourAt)
            {
                context.Contradict($"Ends[{i}].Socket.Temperature.ReadAt", nameof(PourPlanRequest.PourAt),
                    "The socket is read after the pour.");
            }
        }

        for (var i = 0; i < request.Stock?.Count; i++)
        {
            if (request.Stock[i].MadeOn > pourOn)
            {
                context.Contradict($"Stock[{i}].MadeOn", nameof(PourPlanRequest.PourAt), "The lot is made after the pour.");
            }
        }

        QuoteCheck.Check(request, compounds.SheetOf(request.Compound), context);
        if (compounds.SheetOf(request.Compound) is { } sheet)
        {
            CheckAgainstSheet(request, sheet, context);
        }
    }

    private static void CheckAgainstSheet(PourPlanRequest request, CompoundSheet sheet, ValidationContext<PourPlanRequest> context)
    {
        if (request.Objective == PourObjective.LeastCost && sheet.Kits.Any(kit => kit.Cost is null))
        {
            context.Contradict(nameof(PourPlanRequest.Objective), nameof(PourPlanRequest.Compound),
                "leastCost needs the cost of every kit.");
        }

        context.MustBeOn(sheet, request.Stock, nameof(PourPlanRequest.Stock));
    }
}

/// <summary>What readings may be.</summary>
public sealed class PourConditionsValidator : Contradictions<PourConditions>
{
    private static IReadOnlyList<string> Jurisdictions { get; } =
        [.. Editions.Known.Current.Pouring.Air.SelectMany(air => air.Laws).Select(law => law.Jurisdiction).Distinct()];

    protected override void Check(PourConditions conditions, ValidationContext<PourConditions> context) =>
        context.MustKnow(nameof(PourConditions.Jurisdiction), conditions.Jurisdiction, Jurisdictions, "jurisdiction");
}

/// <summary>What an end may be.</summary>
public sealed class PourEndValidator : Contradictions<PourEnd>
{
    protected override void Check(PourEnd end, ValidationContext<PourEnd> context)
    {
        if ((end.ServingInBasket?.Si ?? 0) + (end.WireEndsBelowMouth?.Si ?? 0) >= end.Socket.Basket.Length.Si)
        {
            context.Contradict(end.ServingInBasket is null ? nameof(PourEnd.WireEndsBelowMouth) : nameof(PourEnd.ServingInBasket),
                "Socket.Basket.Length",
                "Serving and wire ends leave no basket in which compound grips.");
        }

        if (end.ServingDiameter is { } serving && serving.Si < end.Rope.Diameter.Si)
        {
            context.Contradict(nameof(PourEnd.ServingDiameter), "Rope.Diameter", "The serving is thinner than the rope.");
        }
    }
}
