using System.Globalization;

namespace CalcService.Api.Hosting;

/// <summary>A whole number that whoever runs the service may set.</summary>
/// <param name="Key">Where it stands in the configuration.</param>
/// <param name="Default">Its value where nobody sets it.</param>
/// <param name="Least">The least it may be.</param>
/// <param name="Most">The most it may be.</param>
public sealed record Setting(string Key, int Default, int Least, int Most)
{
    /// <exception cref="StartRefusedException">What stands there is no such number.</exception>
    public int In(IConfiguration configuration) =>
        configuration[Key] is not { } text ? Default
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value >= Least && value <= Most ? value
        : throw new StartRefusedException($"{Key} is \"{text}\"; a whole number from {Least} to {Most} is expected.");
}
