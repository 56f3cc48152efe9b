using CalcService.Engine.Compounds;

namespace CalcService.Engine.Releases;

/// <summary>What comes of a load at a time.</summary>
public enum LoadVerdict
{
    /// <summary>Not before its release.</summary>
    Released,

    /// <summary>Before it, but after the sheet's shortest time, and the release rests on extrapolation.</summary>
    Undetermined,

    /// <summary>Before its release.</summary>
    Early,
}

/// <summary>
/// When an end may be moved and loaded, in seconds from mixing, and what each part of the law asks for. Null where it can't be known.
/// </summary>
public sealed record ReleaseTimes
{
    /// <summary>Temperatures of a followed cone are known so well.</summary>
    internal const double ResolutionK = .01;

    /// <summary>Gelled by then in the coldest case, or seen gelled later still.</summary>
    public double? GelS { get; init; }

    /// <summary>The sheet's time after gel is over.</summary>
    public double? SheetS { get; init; }

    /// <summary>The least cured place of the modelled cone has its degree; null in the uniform model.</summary>
    public double? ModelS { get; init; }

    /// <summary>The sheet's hold after gel is over.</summary>
    public double? HoldS { get; init; }

    /// <summary>Cooled below the highest service temperature; null where nothing has to cool.</summary>
    public double? CooledS { get; init; }

    /// <summary>Nobody moves it before.</summary>
    public double? UndisturbedS { get; init; }

    /// <summary>Nobody loads it before: the latest of all.</summary>
    public double? LoadS { get; init; }

    /// <summary>How much longer everything takes than the sheet says.</summary>
    public double Slower { get; init; } = 1;

    /// <summary>What sets the load.</summary>
    public string? GovernedBy { get; init; }

    /// <summary>Whether the sheet's time was read colder than its coldest row, and sets the load.</summary>
    public bool IsExtrapolated { get; init; }

    /// <summary>Whether the sheet was left out because it was measured without the compound's own heat.</summary>
    public bool IsByOwnHeat { get; init; }

    /// <summary>Gel and the warmest row's time, both as slow as seen: the shortest that the sheet itself knows.</summary>
    public double? ShortestS { get; init; }

    /// <summary>Coldest from mixing to the end of the sheet's time.</summary>
    public double? ColdestK { get; init; }

    /// <summary>Coldest between gel and the end of the sheet's time.</summary>
    public double? ColdestAfterGelK { get; init; }

    /// <summary>The share of the sheet's time that has passed, over time.</summary>
    internal GelAge? Clock { get; init; }

    /// <summary>The path that it was computed along.</summary>
    public required CurePath Path { get; init; }

    /// <summary>
    /// The share of the sheet's time after gel that has passed at a time: 0 until gel, 1 from its end on; null where it isn't known.
    /// </summary>
    public double? ShareAt(double seconds) => Clock is null ? null : Math.Clamp(Clock.At(seconds), 0, 1);

    /// <summary>What a load at a moment means; released on the very minute that the answer prints.</summary>
    public LoadVerdict Judge(DateTimeOffset mixedAt, DateTimeOffset at) =>
        LoadS is { } load && at >= CureClock.From(mixedAt, load) ? LoadVerdict.Released
        : IsExtrapolated && ShortestS is { } shortest && at >= CureClock.From(mixedAt, shortest) ? LoadVerdict.Undetermined
        : LoadVerdict.Early;
}
