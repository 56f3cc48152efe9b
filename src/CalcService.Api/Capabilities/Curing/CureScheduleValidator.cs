using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>What a cure schedule's request may be. Cautions of the trade are findings, not errors.</summary>
public sealed class CureScheduleValidator : AbstractValidator<CureScheduleRequest>
{
    /// <summary>Most baskets in one request.</summary>
    public const int MostBaskets = 1000;

    /// <summary>Most baskets whose tasks are scheduled together.</summary>
    public const int MostInShop = 200;

    public CureScheduleValidator(CompoundCatalogue compounds)
    {
        RuleFor(request => request.Compound).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Conditions).SetValidator(new CureConditionsValidator());
        RuleFor(request => request.Ends).NotEmpty().WithErrorCode("required").WithMessage("At least one end is required.");
        RuleForEach(request => request.Ends).SetValidator(new CureEndValidator());
        RuleForEach(request => request.Observations).SetValidator(new GelObservationValidator());
        this.Ranges()
            .Of(request => request.PourTime, 1, 28800, "s", QuantityKind.Duration)
            .Of(request => request.Doses, 0, 100);
        RuleFor(request => request.Shop!).SetValidator(new ShopValidator());
        RuleFor(request => request).Custom(CheckWhole);
    }

    private static void CheckWhole(CureScheduleRequest request, ValidationContext<CureScheduleRequest> context)
    {
        var baskets = request.Ends.Sum(end => (long)end.Quantity);
        if (request.Shop is not null && baskets is > MostInShop and <= MostBaskets)
        {
            context.Fail(nameof(CureScheduleRequest.Ends), $"{baskets} baskets; at most {MostInShop} are scheduled through a shop.", RuleWords.RangeCode);
        }

        if (baskets > MostBaskets)
        {
            context.Fail(nameof(CureScheduleRequest.Ends), $"{baskets} baskets; at most {MostBaskets} are allowed.", RuleWords.RangeCode);
        }

        CompoundSheetValidator.FindTwins(request.Ends, end => end.Id, (first, second) =>
            context.Contradict($"Ends[{first}].Id", $"Ends[{second}].Id", "Two entries have the same id."));
        SteelReadingValidator.CheckOrder(request.Conditions.SteelSeries, request.MixedAt, "Conditions.SteelSeries", nameof(CureScheduleRequest.MixedAt), context);
        for (var i = 0; i < request.Observations?.Count; i++)
        {
            if (request.Ends.All(end => end.Id != request.Observations[i].End))
            {
                context.Fail($"Observations[{i}].End", "No end has this id.", "unknown-end");
            }

            if (request.Observations[i].GelAt <= request.MixedAt)
            {
                context.Contradict($"Observations[{i}].GelAt", nameof(CureScheduleRequest.MixedAt), "It gelled before it was mixed.");
            }

            if (request.Observations[i].StillSoftAt >= request.Observations[i].GelAt)
            {
                context.Contradict($"Observations[{i}].StillSoftAt", $"Observations[{i}].GelAt", "It was still soft after it had gelled.");
            }
        }
    }
}

/// <summary>What the temperatures of a cure may be.</summary>
public sealed class CureConditionsValidator : AbstractValidator<CureConditions>
{
    public CureConditionsValidator()
    {
        RuleFor(conditions => conditions.Air).SetValidator(new CureAirValidator());
        RuleForEach(conditions => conditions.SteelSeries).SetValidator(new SteelReadingValidator());
        this.Ranges()
            .Of(conditions => conditions.SteelTemperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.CompoundTemperature, -30, 100, "degC", QuantityKind.Temperature);
    }
}

/// <summary>What an end may be.</summary>
public sealed class CureEndValidator : AbstractValidator<CureEnd>
{
    public CureEndValidator()
    {
        this.Ranges().Of(end => end.Quantity, 1, CureScheduleValidator.MostBaskets);
        RuleFor(end => end.Rope).SetValidator(new RopeValidator());
        RuleFor(end => end.Socket).SetValidator(new SocketValidator());
    }
}

/// <summary>Nothing about a gel that was seen can be judged alone.</summary>
public sealed class GelObservationValidator : AbstractValidator<GelObservation>;
