using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>Exactly one of constant and series, the series in the order of time.</summary>
public sealed class CureAirValidator : Contradictions<CureAir>
{
    /// <summary>Most points of a series.</summary>
    public const int MostPoints = 10_000;

    protected override void Check(CureAir air, ValidationContext<CureAir> context)
    {
        if ((air.Constant is null) == (air.Series is null))
        {
            context.Contradict(nameof(CureAir.Constant), nameof(CureAir.Series), "Exactly one of constant and series is expected.");
            return;
        }

        if (air.Series is { Count: < 2 })
        {
            context.Fail(nameof(CureAir.Series), "A series has at least two points; one temperature that stays as it is is a constant.",
                ContradictionWords.RangeCode);
        }

        for (var i = 1; i < air.Series?.Count; i++)
        {
            if (air.Series[i].At <= air.Series[i - 1].At)
            {
                context.Contradict($"{nameof(CureAir.Series)}[{i - 1}].At", $"{nameof(CureAir.Series)}[{i}].At", "The times do not rise.");
                return;
            }
        }
    }
}
