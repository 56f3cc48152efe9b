using CalcService.Engine.Provenance;

namespace CalcService.Engine.Cones;

/// <summary>
/// How a cone hands its load to the socket (docs/termination-matches.md). The load pulls at the small end; where the cone
/// leaves the wall, or at the mouth, no force is left. From that free edge the equations are marched to the small end,
/// the direction in which they are stable, and the edge, or how far the mouth has seated, is sought that meets the load.
/// </summary>
public static class ConeLoad
{
    /// <summary>
    /// Stretch from the small end over which the pressure is averaged: at the edge itself elasticity has no finite answer.
    /// </summary>
    public const double LipM = .005;

    /// <summary>Stations of a result unless asked otherwise; a multiple of three, so that the thirds are among them.</summary>
    public const int Intervals = 24;

    /// <summary>The cone under a load; null where the socket has no wall, the budget is spent or a number overflows.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="loadN">The load, 0 or more.</param>
    /// <param name="budget">Steps that may be spent.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <param name="intervals">Intervals of the stations, a multiple of three.</param>
    /// <param name="trace">Gets the laws of the cone at its small end, where it presses hardest; null for none.</param>
    public static ConeState? Solve(Cone cone, double loadN, Budget budget, CancellationToken cancellationToken, int intervals = Intervals,
        Trace? trace = null) =>
        !HasWall(cone) ? null
            : loadN > 0
            ? new ConeShot(cone, loadN, trace ?? Trace.None, budget, cancellationToken).Solve(intervals)
            : new ConeShot(cone, MeanLoadN(cone), Trace.None, budget, cancellationToken).Rest(intervals);

    /// <summary>The load at which the cone just bears along its whole length; null as for a solution.</summary>
    public static double? FullContactLoadN(Cone cone, Budget budget, CancellationToken cancellationToken)
    {
        if (!HasWall(cone))
        {
            return null;
        }

        var scale = MeanLoadN(cone);
        var share = new ConeShot(cone, scale, Trace.None, budget, cancellationToken).ForceAt(new ConeEdge(cone.Basket.LengthM, 0));
        // Where nothing holds the shrinkage back along the axis, the cone bears all along at once.
        return share * scale is { } load && load > 1e-9 * scale ? load : share is null ? null : 0;
    }

    private static bool HasWall(Cone cone) => cone.WallRatioAt(0) > 1 && cone.WallRatioAt(cone.Basket.LengthM) > 1;

    /// <summary>A load that squeezes the cone by a thousandth: a scale for where none is given.</summary>
    private static double MeanLoadN(Cone cone) =>
        1e-3 * cone.RadialModulusPa * Math.PI * cone.RadiusAtM(cone.Basket.LengthM) * cone.Basket.LengthM * (cone.Basket.Taper
        + cone.Friction);
}
