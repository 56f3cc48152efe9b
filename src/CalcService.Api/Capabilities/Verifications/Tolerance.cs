using System.Text.Json;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>How close an archived number or time is to the computed one.</summary>
internal enum Nearness
{
    Same,
    Near,
    Other,
}

/// <summary>What another machine may round differently: one unit of the last digit that answers carry, and a minute.</summary>
internal static class Tolerance
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    public static Nearness OfNumbers(JsonElement archived, JsonElement computed)
    {
        if (archived.ValueKind != JsonValueKind.Number)
        {
            return Nearness.Other;
        }

        var (then, now) = (archived.GetDouble(), computed.GetDouble());
        // The smaller of two numbers that touch a power of ten has the finer last digit.
        var smaller = Math.Min(Math.Abs(then), Math.Abs(now));
        var unit = smaller > 0 ? Rounding.PowerOfTen(Rounding.DecimalExponent(smaller) - Rounding.AnswerDigits + 1) : 0;
        return then == now ? Nearness.Same : Math.Abs(then - now) <= unit * (1 + 1e-9) ? Nearness.Near : Nearness.Other;
    }

    public static Nearness OfTimes(JsonElement archived, JsonElement computed)
    {
        if (archived.ValueKind != JsonValueKind.String || !archived.TryGetDateTimeOffset(out var then))
        {
            return Nearness.Other;
        }

        var apart = (then - computed.GetDateTimeOffset()).Duration();
        return apart == TimeSpan.Zero ? Nearness.Same : apart <= Minute ? Nearness.Near : Nearness.Other;
    }
}
