using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>What a shop may be.</summary>
public sealed class ShopValidator : Contradictions<Shop>
{
    /// <summary>Most shifts.</summary>
    public const int MostShifts = 100;

    private static readonly TimeSpan Longest = TimeSpan.FromDays(31);

    protected override void Check(Shop shop, ValidationContext<Shop> context)
    {
        for (var i = 1; i < shop.Shifts.Count; i++)
        {
            if (shop.Shifts[i].From < shop.Shifts[i - 1].To)
            {
                context.Contradict($"{nameof(Shop.Shifts)}[{i - 1}].To", $"{nameof(Shop.Shifts)}[{i}].From",
                    "The shifts overlap or are not in order.");
            }
        }

        if (shop.Shifts.Count > 0 && shop.Shifts[^1].To - shop.Shifts[0].From > Longest)
        {
            context.Contradict($"{nameof(Shop.Shifts)}[0].From", $"{nameof(Shop.Shifts)}[{shop.Shifts.Count - 1}].To",
                "The shifts span more than 31 days.");
        }
    }
}

/// <summary>What a shift may be.</summary>
public sealed class ShiftValidator : Contradictions<Shift>
{
    protected override void Check(Shift shift, ValidationContext<Shift> context)
    {
        if (shift.From >= shift.To)
        {
            context.Contradict(nameof(Shift.From), nameof(Shift.To), "The shift ends before it begins.");
        }
    }
}
