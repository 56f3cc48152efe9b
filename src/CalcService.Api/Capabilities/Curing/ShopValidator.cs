using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>What a shop may be.</summary>
public sealed class ShopValidator : AbstractValidator<Shop>
{
    /// <summary>Most shifts.</summary>
    public const int MostShifts = 100;

    private static readonly TimeSpan Longest = TimeSpan.FromDays(31);

    public ShopValidator()
    {
        this.Ranges()
            .Of(shop => shop.Crew, 1, 100)
            .Of(shop => shop.Stands, 1, 1000)
            .Of(shop => shop.Mixers, 1, 100)
            .Of(shop => shop.TestBeds, 1, 100);
        RuleFor(shop => shop.Shifts).NotEmpty().WithErrorCode("required").WithMessage("At least one shift is required.");
        RuleForEach(shop => shop.Shifts).SetValidator(new ShiftValidator());
        RuleFor(shop => shop.TaskTimes).SetValidator(new ShopTaskTimesValidator());
        RuleFor(shop => shop).Custom((shop, context) =>
        {
            for (var i = 1; i < shop.Shifts.Count; i++)
            {
                if (shop.Shifts[i].From < shop.Shifts[i - 1].To)
                {
                    context.Contradict($"{nameof(Shop.Shifts)}[{i - 1}].To", $"{nameof(Shop.Shifts)}[{i}].From", "The shifts overlap or are not in order.");
                }
            }

            if (shop.Shifts.Count > 0 && shop.Shifts[^1].To - shop.Shifts[0].From > Longest)
            {
                context.Contradict($"{nameof(Shop.Shifts)}[0].From", $"{nameof(Shop.Shifts)}[{shop.Shifts.Count - 1}].To", "The shifts span more than 31 days.");
            }
        });
    }
}

/// <summary>What a shift may be.</summary>
public sealed class ShiftValidator : AbstractValidator<Shift>
{
    public ShiftValidator() => RuleFor(shift => shift).Custom((shift, context) =>
    {
        if (shift.From >= shift.To)
        {
            context.Contradict(nameof(Shift.From), nameof(Shift.To), "The shift ends before it begins.");
        }
    });
}

/// <summary>What task times may be.</summary>
public sealed class ShopTaskTimesValidator : AbstractValidator<ShopTaskTimes>
{
    public ShopTaskTimesValidator()
    {
        this.Ranges()
            .Of(times => times.Prepare, 0, 1440, "min", QuantityKind.Duration)
            .Of(times => times.Position, 0, 1440, "min", QuantityKind.Duration)
            .Of(times => times.Proof, 0, 1440, "min", QuantityKind.Duration)
            .Of(times => times.Record, 0, 1440, "min", QuantityKind.Duration);
    }
}
