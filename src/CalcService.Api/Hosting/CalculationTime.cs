using System.Globalization;

namespace CalcService.Api.Hosting;

/// <summary>
/// Longest time for one calculation before the service says that it is not available. What is computed never depends on it: the budget
/// of steps does that.
/// </summary>
/// <param name="Longest">The time.</param>
public sealed record CalculationTime(TimeSpan Longest)
{
    public const string Key = "Limits:CalculationSeconds";

    private const int DefaultSeconds = 30;
    private const int MostSeconds = 3600;

    /// <exception cref="StartRefusedException">The setting is no number of seconds from 1 to an hour.</exception>
    public static CalculationTime From(string? setting) =>
        setting is null ? new(TimeSpan.FromSeconds(DefaultSeconds))
        : int.TryParse(setting, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds is >= 1 and <= MostSeconds
            ? new(TimeSpan.FromSeconds(seconds))
            : throw new StartRefusedException($"{Key} is \"{setting}\"; a whole number of seconds from 1 to {MostSeconds} is expected.");
}
