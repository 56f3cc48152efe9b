using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>A place in the cone or its socket.</summary>
/// <param name="AboveSmallEndM">Along the axis.</param>
/// <param name="RadiusM">From the axis.</param>
public readonly record struct ConePlace(double AboveSmallEndM, double RadiusM);

/// <summary>The highest temperature of a part.</summary>
public sealed record ConePeak(double TemperatureK, double TimeS, ConePlace Place);

/// <summary>When a degree of cure is reached first, and when everywhere; null where not before the end.</summary>
public sealed record ConeDegreeTimes(double Degree, double? FirstS, ConePlace? First, double? EverywhereS, ConePlace? Last);

/// <summary>The curve at one time, at the section asked for; the least degree is that of the whole cone.</summary>
public sealed record ConeMoment(
    double TimeS, double AirK, double CentreK, double SkinK, double OuterK, double CentreDegree, double SkinDegree, double LeastDegree);

/// <summary>What the cone went through.</summary>
public sealed record ConeHeatResult
{
    /// <summary>Where the run ended: at the horizon, or earlier at the degree that ends it.</summary>
    public required double EndS { get; init; }

    /// <summary>How it ended.</summary>
    public required ConductionEnd End { get; init; }

    /// <summary>Hottest place of the compound.</summary>
    public required ConePeak Peak { get; init; }

    /// <summary>
    /// Whether the peak is above what the compound reaches when it keeps all its heat. Then fronts of cure run into each other where it
    /// stands, thinner than the grid, and the peak is an upper estimate; the times of the degrees are not touched by it.
    /// </summary>
    public required bool FrontsMeet { get; init; }

    /// <summary>Hottest place on the outside of the steel.</summary>
    public required ConePeak OuterPeak { get; init; }

    public required IReadOnlyList<ConeDegreeTimes> Degrees { get; init; }

    /// <summary>Those of the times asked for that lie before the end.</summary>
    public required IReadOnlyList<ConeMoment> Curve { get; init; }

    /// <summary>The least cured place at the end.</summary>
    public required ConePlace LeastCured { get; init; }

    public required double LeastDegree { get; init; }

    public required EnergyBalance Balance { get; init; }

    public required int Steps { get; init; }
}
