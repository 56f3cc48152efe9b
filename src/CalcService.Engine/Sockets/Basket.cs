using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Sockets;

/// <summary>The conical basket of a socket. The rope comes in through the small end; the mouth is the large end.</summary>
public sealed record Basket
{
    public required double SmallEndDiameterM { get; init; }

    public required double LargeEndDiameterM { get; init; }

    public required double LengthM { get; init; }

    /// <summary>How far each of the three sizes may be off, either way.</summary>
    public double ToleranceM { get; init; }

    /// <summary>Whether an end of this rope, basket and compound was type tested.</summary>
    public bool? IsTypeTested { get; init; }

    /// <summary>tan α of the half-angle.</summary>
    public double Taper => (LargeEndDiameterM - SmallEndDiameterM) / (2 * LengthM);

    /// <summary>Bore at a share of the length from the small end.</summary>
    public double DiameterAtM(double share) => SmallEndDiameterM + (share * (LargeEndDiameterM - SmallEndDiameterM));

    /// <summary>The basket with every size larger by this much, negative for smaller.</summary>
    public Basket GrownBy(double metres) => this with
    {
        SmallEndDiameterM = SmallEndDiameterM + metres,
        LargeEndDiameterM = LargeEndDiameterM + metres,
        LengthM = LengthM + metres,
    };

    /// <summary>V = π·L/12·(D² + D·d + d²), the frustum of a cone; in m³.</summary>
    [Formula("basket-volume", "volume of the frustum of a cone", "solid geometry", Basis.Derived, Symbol = "V",
        Name = "volume of the basket",
        Expression = "π·L/12·(D² + D·d + d²)", Kind = QuantityKind.Volume, Range = "straight taper from small end to mouth")]
    public static double VolumeM3(double smallEndM, double largeEndM, double lengthM, Trace trace) =>
        trace.Step("basket-volume", Math.PI * lengthM / 12 * ((largeEndM * largeEndM) + (largeEndM * smallEndM) + (smallEndM * smallEndM)),
            new("L", Measure.Length(lengthM)), new("D", Measure.Length(largeEndM)), new("d", Measure.Length(smallEndM)));

    /// <summary>2α = 2·arctan((D − d)/(2·L)); in rad.</summary>
    [Formula("included-angle", "cone through both ends", "plane geometry", Basis.Derived, Symbol = "2α",
        Name = "included angle of the cone",
        Expression = "2·arctan((D − d)/(2·L))", Kind = QuantityKind.Angle, Range = "straight taper from small end to mouth")]
    public static double IncludedAngleRad(double smallEndM, double largeEndM, double lengthM, Trace trace) =>
        trace.Step("included-angle", 2 * Elementary.Atan((largeEndM - smallEndM) / (2 * lengthM)),
            new("D", Measure.Length(largeEndM)), new("d", Measure.Length(smallEndM)), new("L", Measure.Length(lengthM)));
}
