namespace CalcService.Engine.Cones;

/// <summary>One place along the loaded cone.</summary>
/// <param name="XM">Distance from the small end.</param>
/// <param name="SeatM">How far the cone has moved in the socket there, towards the small end.</param>
/// <param name="ForceN">Force still in the cone: what the wall beyond this place takes.</param>
/// <param name="PressurePa">Pressure between cone and wall.</param>
/// <param name="HoopPa">Hoop stress of the socket at its bore.</param>
public sealed record ConeStation(double XM, double SeatM, double ForceN, double PressurePa, double HoopPa);

/// <summary>Share of the load that the wall takes in each third of its length.</summary>
public sealed record ThirdShares(double Lower, double Middle, double Upper);

/// <summary>A cone under a load that pulls at its small end.</summary>
/// <param name="LoadN">The load.</param>
/// <param name="ContactToM">The cone bears from the small end to here; the whole length where the load is high enough.</param>
/// <param name="Shares">Share of the load by thirds; null without a load.</param>
/// <param name="LipPressurePa">Mean pressure over the first millimetres from the small end.</param>
/// <param name="MeanPressurePa">Load over the wall, as if it bore evenly all along.</param>
/// <param name="Stations">Places from the small end to the mouth, evenly.</param>
public sealed record ConeState(
    double LoadN, double ContactToM, ThirdShares? Shares, double LipPressurePa, double MeanPressurePa, IReadOnlyList<ConeStation> Stations)
{
    /// <summary>How far the cone has moved at the small end.</summary>
    public double SeatAtSmallEndM => Stations[0].SeatM;

    /// <summary>How far it has moved at the mouth, where it can be measured.</summary>
    public double SeatAtMouthM => Stations[^1].SeatM;

    /// <summary>Pressure at the edge of the small end.</summary>
    public double EdgePressurePa => Stations[0].PressurePa;

    /// <summary>Highest hoop stress at the bore of the socket that the cone was solved in.</summary>
    public double HoopPa => Stations.Max(station => station.HoopPa);

    /// <summary>
    /// Where the bore is stressed most if the wall is another than the cone was solved in, as in a worn socket: its pressure
    /// with the outside over the bore there. A place without a wall is stressed without end; not a number where one isn't known.
    /// </summary>
    public (double PressurePa, double WallRatio) MostStressed(Func<double, double> wallRatioAt)
    {
        var places = Stations.Select(station => (station.PressurePa, WallRatio: wallRatioAt(station.XM))).ToArray();
        return places.Any(place => double.IsNaN(place.WallRatio)) ? (double.NaN, double.NaN)
            : places.MaxBy(place => place.WallRatio > 1 ? place.PressurePa * ConeFormulas.LameFactor(place.WallRatio)
                : double.PositiveInfinity);
    }
}
