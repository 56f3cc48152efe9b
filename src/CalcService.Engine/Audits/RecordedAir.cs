using CalcService.Engine.Compounds;

namespace CalcService.Engine.Audits;

/// <summary>The recorded air from mixing on.</summary>
internal static class RecordedAir
{
    /// <summary>How long a single temperature is taken to have stayed, s: as long as a cure schedule follows one.</summary>
    private const double Longest = 14 * 86400;

    /// <summary>
    /// In seconds from mixing; null where the record says nothing about the mixing. Without a time of mixing the first of the series
    /// counts.
    /// </summary>
    public static TemperatureHistory? Of(AuditInput input)
    {
        var readings = input.Readings;
        if (readings.ConstantAirK is { } constant)
        {
            return TemperatureHistory.Constant(constant, 0, Longest);
        }

        if (readings.AirSeries.Count == 0)
        {
            return null;
        }

        var mixedAt = input.Times.MixedAt ?? readings.AirSeries[0].At;
        var history = new TemperatureHistory([.. readings.AirSeries.Select(point => (point.At - mixedAt).TotalSeconds)],
            [.. readings.AirSeries.Select(point => point.Kelvins)]);
        return history.Covers(0) && history.EndS > 0 ? history.From(0) : null;
    }
}
