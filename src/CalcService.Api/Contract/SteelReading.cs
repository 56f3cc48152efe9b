using CalcService.Api.Units;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>The temperature of socket and wires at a time.</summary>
public sealed record SteelReading
{
    /// <summary>The time.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The temperature, measured on the steel.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity Temperature { get; init; }
}

/// <summary>Readings after the first one come in the order of time.</summary>
internal static class SteelReadingOrder
{
    public static void Check<T>(IReadOnlyList<SteelReading>? series, DateTimeOffset? mixedAt, string member, string mixedAtMember,
        ValidationContext<T> context)
    {
        for (var i = 0; i < series?.Count; i++)
        {
            if (i > 0 && series[i].At <= series[i - 1].At)
            {
                context.Contradict($"{member}[{i - 1}].At", $"{member}[{i}].At", "The times do not rise.");
                return;
            }

            if (i == 0 && series[0].At <= mixedAt)
            {
                context.Contradict($"{member}[0].At", mixedAtMember,
                    "The series has to begin later than the mixing; the reading at the mixing is steelTemperature.");
            }
        }
    }
}
