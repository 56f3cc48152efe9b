using CalcService.Api.Units;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>One outside all along, or one at each end.</summary>
internal static class OneOutside
{
    public static void Check<T>(Quantity? everywhere, Quantity? small, Quantity? mouth, ValidationContext<T> context)
    {
        foreach (var (name, end) in ((string, Quantity?)[])[("OuterAtSmallEnd", small), ("OuterAtMouth", mouth)])
        {
            if (everywhere is not null && end is not null)
            {
                context.Contradict("OuterDiameter", name, "One outside diameter all along, or one at each end: not both.");
            }
        }
    }
}
