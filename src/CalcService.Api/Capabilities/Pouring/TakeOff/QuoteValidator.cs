using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>What a quote may say.</summary>
public sealed class QuoteValidator : AbstractValidator<Quote>
{
    public QuoteValidator()
    {
        RuleFor(quote => quote.Prices!).SetValidator(new QuotePricesValidator());
        RuleFor(quote => quote.HourlyRate).Amount();
        RuleFor(quote => quote.TaskRates!).SetValidator(new TaskRatesValidator());
        RuleFor(quote => quote.TaskTimes!).SetValidator(new TaskTimesValidator());
        RuleFor(quote => quote.Seizing!).SetValidator(new QuoteSeizingValidator());
        this.Ranges()
            .Of(quote => quote.SealPerEnd, 0, 10, "L", QuantityKind.Volume)
            .Of(quote => quote.CleanerPerEnd, 0, 100, "L", QuantityKind.Volume)
            .Of(quote => quote.LeadTime, 0, 730, "d", QuantityKind.Days);
        RuleFor(quote => quote.SpareKits!).SetValidator(new SpareKitsValidator());
    }

    /// <summary>Looks for what contradicts the rest of the request.</summary>
    public static void CheckWhole(PourPlanRequest request, CompoundSheet? sheet, ValidationContext<PourPlanRequest> context)
    {
        if (request.Quote?.Currency is { } currency && sheet?.Currency is { } other && other != currency && sheet.Kits.Any(kit => kit.Cost is not null))
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

/// <summary>What seizing may be.</summary>
public sealed class QuoteSeizingValidator : AbstractValidator<QuoteSeizing>
{
    public QuoteSeizingValidator()
    {
        this.Ranges()
            .Of(seizing => seizing.WireDiameter, .1, 20, "mm", QuantityKind.Length)
            .Of(seizing => seizing.Count, 0, 100);
    }
}

/// <summary>What spare kits may be.</summary>
public sealed class SpareKitsValidator : AbstractValidator<SpareKits>
{
    public SpareKitsValidator()
    {
        this.Ranges()
            .Of(spare => spare.Share, 0, 100, "%", QuantityKind.Fraction)
            .Of(spare => spare.Count, 0, 100000);
        RuleFor(spare => spare).Custom((spare, context) =>
        {
            if ((spare.Count is null) == (spare.Share is null))
            {
                context.Contradict(nameof(SpareKits.Count), nameof(SpareKits.Share), "Exactly one of count and share is expected.");
            }
        });
    }
}

/// <summary>What prices may be.</summary>
public sealed class QuotePricesValidator : AbstractValidator<QuotePrices>
{
    public QuotePricesValidator()
    {
        RuleFor(prices => prices.Dose).Amount();
        RuleFor(prices => prices.SeizingWire!).SetValidator(new LengthPriceValidator());
        RuleFor(prices => prices.Seal!).SetValidator(new VolumePriceValidator());
        RuleFor(prices => prices.Cleaner!).SetValidator(new VolumePriceValidator());
    }
}

/// <summary>What a price by length may be.</summary>
public sealed class LengthPriceValidator : AbstractValidator<LengthPrice>
{
    public LengthPriceValidator()
    {
        RuleFor(price => price.Amount).Amount();
        this.Ranges().Of(price => price.Per, .01, 100000, "m", QuantityKind.Length);
    }
}

/// <summary>What a price by volume may be.</summary>
public sealed class VolumePriceValidator : AbstractValidator<VolumePrice>
{
    public VolumePriceValidator()
    {
        RuleFor(price => price.Amount).Amount();
        this.Ranges().Of(price => price.Per, .001, 10000, "L", QuantityKind.Volume);
    }
}
