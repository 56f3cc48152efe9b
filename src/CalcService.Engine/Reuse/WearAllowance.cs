using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>How far a size may be off its drawing before wear is seen: the drawing's tolerance and the reading's uncertainty.</summary>
/// <param name="LengthM">Both together.</param>
/// <param name="Source">Who grants it.</param>
internal readonly record struct WearAllowance(double LengthM, Source Source)
{
    private static readonly Source Stated = new("tolerance of the drawing and uncertainty of the reading, as the request states them",
        "socket", Basis.DataSheet);

    /// <summary>A size of the basket, which has a tolerance of its own; without it the drawing is taken as exact.</summary>
    public static WearAllowance OfBore(UsedSocket socket) => new(socket.Nominal.Basket.ToleranceM + socket.Measured.UncertaintyM, Stated);

    /// <summary>What only grows where steel has yielded, holes and gaps: no tolerance is granted that nobody states.</summary>
    public static WearAllowance OfHole(UsedSocket socket) => new((socket.Nominal.ToleranceM ?? 0) + socket.Measured.UncertaintyM, Stated);

    /// <summary>A face that wears: the drawing's tolerance, else the general one for machined sizes.</summary>
    public static WearAllowance OfFace(ReuseScope scope, double? drawnM)
    {
        var (socket, general) = (scope.Socket, scope.Rules.GeneralTolerance(drawnM ?? 0));
        var tolerance = socket.Nominal.ToleranceM;
        return new((tolerance ?? general.Si) + socket.Measured.UncertaintyM, tolerance is null ? general.Source : Stated);
    }

    /// <summary>What a drawing doesn't have at all.</summary>
    public static WearAllowance OfReading(UsedSocket socket) => new(socket.Measured.UncertaintyM, Stated);

    /// <summary>As a share of the drawing's size.</summary>
    public double Over(double? drawnM) => drawnM is { } size ? LengthM / size : 0;
}
