namespace CalcService.Engine.Curing;

/// <summary>When an end gels. Null where it can't be known.</summary>
public sealed record GelMoments(DateTimeOffset? Earliest, DateTimeOffset? Expected, DateTimeOffset? Latest);

/// <summary>What set each time, a word of <see cref="Releases.Governor"/>. Null without a time.</summary>
public sealed record Governors(string? GelAt, string? UndisturbedUntil, string? ProofLoadFrom, string? ServiceFrom);

/// <summary>What each part of the law of release asks for. Null where it asks for nothing, or isn't known.</summary>
/// <param name="GelledBy">Gelled by then in the coldest case, or seen gelled later.</param>
/// <param name="SheetFrom">The sheet's time after gel is over.</param>
/// <param name="ModelFrom">The least cured place of the modelled cone has its degree.</param>
/// <param name="HoldFrom">The sheet's hold after gel is over.</param>
/// <param name="CooledFrom">Cooled below the highest service temperature.</param>
/// <param name="Slower">How much longer everything takes than the sheet says.</param>
/// <param name="IsByOwnHeat">Whether the sheet's own time was left out, since it was measured at a temperature that was held.</param>
public sealed record ReleaseMoments(DateTimeOffset? GelledBy, DateTimeOffset? SheetFrom, DateTimeOffset? ModelFrom,
    DateTimeOffset? HoldFrom, DateTimeOffset? CooledFrom,
    double Slower, bool IsByOwnHeat);

/// <summary>The hottest that a place of the cone gets.</summary>
public sealed record PeakTemperature(double Kelvins, DateTimeOffset At);

/// <summary>
/// The place that cures last, smallEnd, middle or mouth with Axis or Skin, and its degree of cure when it counts as fully strong.
/// </summary>
public sealed record LeastCuredPlace(string Where, double DegreeOfCure);

/// <summary>A moment of the cure.</summary>
public sealed record CurvePoint(DateTimeOffset At, double AirK, double CentreK, double SkinK, double CureCentre, double CureSkin)
{
    /// <summary>Degree of cure by the earliest times.</summary>
    public double? CureEarliest { get; init; }

    /// <summary>Degree of cure by the latest times.</summary>
    public double? CureLatest { get; init; }

    /// <summary>The share of the sheet's time after gel that has passed.</summary>
    public double? SheetShare { get; init; }
}

/// <summary>The times of one kind of end. "From" times are whole minutes, rounded up.</summary>
public sealed record CuredEnd
{
    public required string Id { get; init; }

    public required int Quantity { get; init; }

    public required GelMoments GelAt { get; init; }

    /// <summary>Nobody moves the rope before.</summary>
    public DateTimeOffset? UndisturbedUntil { get; init; }

    public DateTimeOffset? ProofLoadFrom { get; init; }

    public DateTimeOffset? ServiceFrom { get; init; }

    public required Governors GovernedBy { get; init; }

    /// <summary>What sheet, model, hold and cooling ask for; null where the readings aren't there.</summary>
    public ReleaseMoments? Release { get; init; }

    /// <summary>Null where the model doesn't know the cone's own heat.</summary>
    public PeakTemperature? Peak { get; init; }

    public LeastCuredPlace? LeastCured { get; init; }

    public IReadOnlyList<CurvePoint> Curve { get; init; } = [];

    /// <summary>Heat that the solver lost or made up, as a share of the heat released.</summary>
    public double? EnergyBalanceError { get; init; }
}

/// <summary>A cure schedule. Whatever could not be computed is null and has its finding.</summary>
public sealed record CureScheduleResult
{
    /// <summary>Doses in each kit that it was computed with.</summary>
    public int? Doses { get; init; }

    /// <summary>Times of ends that are mixed at the mixing that is given.</summary>
    public required IReadOnlyList<CuredEnd> Ends { get; init; }

    /// <summary>Tasks of the shop; null without a shop, or where it has no schedule.</summary>
    public ShopSchedule? Shop { get; init; }
}
