using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>
/// How far a size may be off its drawing before wear is seen: the drawing's tolerance and the reading's uncertainty, and never more
/// than the general tolerance of such a size. Else the coarser the reading, the sounder the socket.
/// </summary>
/// <param name="LengthM">Both together.</param>
/// <param name="Source">Who grants it.</param>
internal readonly record struct WearAllowance(double LengthM, Source Source)
{
    private static readonly Source Stated = new("tolerance of the drawing and uncertainty of the reading, as the request states them",
        "socket", Basis.DataSheet);

    /// <summary>A size of the basket, which has a tolerance of its own; without it the drawing is taken as exact.</summary>
    public static WearAllowance OfBore(ReuseScope scope, double drawnM) => AtMost(scope, drawnM, scope.Socket.Nominal.Basket.ToleranceM);

    /// <summary>What only grows where steel has yielded, holes and gaps: no tolerance is granted that nobody states.</summary>
    public static WearAllowance OfHole(ReuseScope scope, double? drawnM) => AtMost(scope, drawnM, scope.Socket.Nominal.ToleranceM ?? 0);

    /// <summary>A face that wears: the drawing's tolerance, else the general one for machined sizes.</summary>
    public static WearAllowance OfFace(ReuseScope scope, double? drawnM) =>
        AtMost(scope, drawnM, scope.Socket.Nominal.ToleranceM ?? double.PositiveInfinity);

    /// <summary>What a drawing doesn't have at all.</summary>
    public static WearAllowance OfReading(ReuseScope scope) => AtMost(scope, null, 0);

    /// <summary>As a share of the drawing's size.</summary>
    public double Over(double? drawnM) => drawnM is { } size ? LengthM / size : 0;

    private static WearAllowance AtMost(ReuseScope scope, double? drawnM, double toleranceM)
    {
        var (stated, general) = (toleranceM + scope.Socket.Measured.UncertaintyM, scope.Rules.GeneralTolerance(drawnM ?? 0));
        return stated > general.Si ? new(general.Si, general.Source) : new(stated, Stated);
    }
}
