using CalcService.Api.Capabilities.Pouring.TakeOff;
using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>What a pour plan's request may be. Cautions of the trade are findings, not errors.</summary>
public sealed class PourPlanValidator : AbstractValidator<PourPlanRequest>
{
    /// <summary>Most baskets in one request.</summary>
    public const int MostBaskets = 1000;

    private readonly CompoundCatalogue _compounds;

    public PourPlanValidator(CompoundCatalogue compounds)
    {
        _compounds = compounds;
        RuleFor(request => request.Compound).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Conditions!).SetValidator(new PourConditionsValidator());
        RuleFor(request => request.Ends).NotEmpty().WithErrorCode("required").WithMessage("At least one end is required.");
        RuleForEach(request => request.Ends).SetValidator(new PourEndValidator());
        RuleForEach(request => request.Stock).SetValidator(new StockLotValidator());
        RuleFor(request => request.Crew!).SetValidator(new CrewValidator());
        this.Ranges()
            .Of(request => request.Allowance, 0, 200, "%", QuantityKind.Fraction)
            .Of(request => request.VesselResidue, 0, 10, "L", QuantityKind.Volume)
            .Of(request => request.WitnessSample, 0, 2, "L", QuantityKind.Volume);
        RuleFor(request => request.Dose!).SetValidator(new IntendedDoseValidator());
        RuleFor(request => request.Quote!).SetValidator(new QuoteValidator());
        RuleFor(request => request).Custom(CheckWhole);
    }

    private void CheckWhole(PourPlanRequest request, ValidationContext<PourPlanRequest> context)
    {
        var baskets = request.Ends.Sum(end => (long)end.Quantity);
        if (baskets > MostBaskets)
        {
            context.Fail(nameof(PourPlanRequest.Ends), $"{baskets} baskets; at most {MostBaskets} are allowed.", RuleWords.RangeCode);
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
                context.Contradict($"Ends[{i}].Socket.Temperature.ReadAt", nameof(PourPlanRequest.PourAt), "The socket is read after the pour.");
            }
        }

        for (var i = 0; i < request.Stock?.Count; i++)
        {
            if (request.Stock[i].MadeOn > pourOn)
            {
                context.Contradict($"Stock[{i}].MadeOn", nameof(PourPlanRequest.PourAt), "The lot is made after the pour.");
            }
        }

        QuoteValidator.CheckWhole(request, _compounds.SheetOf(request.Compound), context);
        if (_compounds.SheetOf(request.Compound) is { } sheet)
        {
            CheckAgainstSheet(request, sheet, context);
        }
    }

    private static void CheckAgainstSheet(PourPlanRequest request, CompoundSheet sheet, ValidationContext<PourPlanRequest> context)
    {
        if (request.Objective == PourObjective.LeastCost && sheet.Kits.Any(kit => kit.Cost is null))
        {
            context.Contradict(nameof(PourPlanRequest.Objective), nameof(PourPlanRequest.Compound), "leastCost needs the cost of every kit.");
        }

        for (var i = 0; i < request.Stock?.Count; i++)
        {
            if (sheet.Kits.All(kit => kit.Code != request.Stock[i].Kit))
            {
                context.Fail($"Stock[{i}].Kit", $"No such kit on the sheet; known: {string.Join(", ", sheet.Kits.Select(kit => kit.Code))}.", "unknown-kit");
            }
        }
    }
}

/// <summary>What readings may be.</summary>
public sealed class PourConditionsValidator : AbstractValidator<PourConditions>
{
    private static IReadOnlyList<string> Jurisdictions { get; } =
        [.. Editions.Known.Current.Pouring.Air.SelectMany(air => air.Laws).Select(law => law.Jurisdiction).Distinct()];

    public PourConditionsValidator()
    {
        this.Ranges()
            .Of(conditions => conditions.AirTemperature, -45, 60, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.SteelTemperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.CompoundTemperature, -30, 100, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.RelativeHumidity, 1, 100, "%", QuantityKind.Fraction)
            .Of(conditions => conditions.Uncertainty, 0, 20, "K", QuantityKind.TemperatureDifference)
            .Of(conditions => conditions.AirSpeed, 0, 20, "m/s", QuantityKind.Speed)
            .Of(conditions => conditions.MixingFactor, 1, 100, "1", QuantityKind.Count)
            .Of(conditions => conditions.ValidFor, 1, 1440, "min", QuantityKind.Duration);
        RuleFor(conditions => conditions.Jurisdiction)
            .Must(code => code is null || Jurisdictions.Contains(code))
            .WithErrorCode("unknown-jurisdiction").WithMessage($"No limits for the air are known there; known: {string.Join(", ", Jurisdictions)}.");
        RuleFor(conditions => conditions.AirLimits!).SetValidator(new AirLimitsValidator());
        RuleFor(conditions => conditions.Room!).SetValidator(new RoomValidator());
    }
}

/// <summary>What limits of the request may be.</summary>
public sealed class AirLimitsValidator : AbstractValidator<AirLimits>
{
    public AirLimitsValidator()
    {
        this.Ranges()
            .Of(limits => limits.ShortTerm, .001, 10000, "ppm", QuantityKind.AirFraction)
            .Of(limits => limits.TimeWeighted, .001, 10000, "ppm", QuantityKind.AirFraction);
    }
}

/// <summary>What a meant dose may be.</summary>
public sealed class IntendedDoseValidator : AbstractValidator<IntendedDose>
{
    public IntendedDoseValidator() => this.Ranges().Of(dose => dose.PerKit, 0, 100);
}

/// <summary>What a room may be.</summary>
public sealed class RoomValidator : AbstractValidator<Room>
{
    public RoomValidator()
    {
        this.Ranges()
            .Of(room => room.Volume, .5, 1000000, "m3", QuantityKind.Volume)
            .Of(room => room.AirChanges, 0, 1000, "1/h", QuantityKind.Rate);
    }
}

/// <summary>What an end may be.</summary>
public sealed class PourEndValidator : AbstractValidator<PourEnd>
{
    public PourEndValidator()
    {
        RuleFor(end => end.Rope).SetValidator(new RopeValidator());
        RuleFor(end => end.Socket).SetValidator(new SocketValidator());
        this.Ranges()
            .Of(end => end.PourTime, 1, 28800, "s", QuantityKind.Duration)
            .Of(end => end.ServingInBasket, 0, 3000, "mm", QuantityKind.Length)
            .Of(end => end.ServingDiameter, 1, 400, "mm", QuantityKind.Length)
            .Of(end => end.WireEndsBelowMouth, 0, 300, "mm", QuantityKind.Length)
            .Of(end => end.Tilt, 0, 30, "deg", QuantityKind.Angle)
            .Of(end => end.StraightBelow, 0, 1000, "m", QuantityKind.Length)
            .Of(end => end.BroomAngle, 0, 180, "deg", QuantityKind.Angle)
            .Of(end => end.Quantity, 1, PourPlanValidator.MostBaskets);
        RuleFor(end => end).Custom((end, context) =>
        {
            if ((end.ServingInBasket?.Si ?? 0) + (end.WireEndsBelowMouth?.Si ?? 0) >= end.Socket.Basket.Length.Si)
            {
                context.Contradict(end.ServingInBasket is null ? nameof(PourEnd.WireEndsBelowMouth) : nameof(PourEnd.ServingInBasket), "Socket.Basket.Length",
                    "Serving and wire ends leave no basket in which compound grips.");
            }

            if (end.ServingDiameter is { } serving && serving.Si < end.Rope.Diameter.Si)
            {
                context.Contradict(nameof(PourEnd.ServingDiameter), "Rope.Diameter", "The serving is thinner than the rope.");
            }
        });
    }
}

/// <summary>What a crew may be.</summary>
public sealed class CrewValidator : AbstractValidator<Crew>
{
    public CrewValidator()
    {
        this.Ranges()
            .Of(crew => crew.PourTime, 1, 28800, "s", QuantityKind.Duration)
            .Of(crew => crew.Mixers, 1, 100);
    }
}
