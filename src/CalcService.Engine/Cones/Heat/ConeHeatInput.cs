using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Cones.Heat;

/// <summary>
/// The cone in its socket, with the rope that hangs from it. The socket has a wall all along, and the wires leave room for compound.
/// </summary>
public sealed record ConeBody
{
    public required double SmallEndDiameterM { get; init; }

    public required double LargeEndDiameterM { get; init; }

    public required double LengthM { get; init; }

    /// <summary>Outside of the steel around the small end.</summary>
    public required double OuterAtSmallEndM { get; init; }

    /// <summary>Outside of the steel around the mouth.</summary>
    public required double OuterAtMouthM { get; init; }

    /// <summary>Metal of all wires together; 0 for a cone of compound alone.</summary>
    public required double MetallicAreaM2 { get; init; }

    public required double RopeDiameterM { get; init; }

    /// <summary>How much of the rope below is looked at. Further down it keeps its temperature while the cone cures.</summary>
    public double RopeBelowM { get; init; } = .6;
}

/// <summary>What compound and steel do with heat.</summary>
public sealed record ConeMaterials
{
    public required double CompoundDensityKgPerM3 { get; init; }

    public required double CompoundSpecificHeatJPerKgK { get; init; }

    public required double CompoundConductivityWPerMK { get; init; }

    /// <summary>Heat of a full cure for each kg of resin.</summary>
    public required double ReactionHeatJPerKg { get; init; }

    /// <summary>Share of the compound's mass that is resin and reacts.</summary>
    public required double ResinFraction { get; init; }

    public double SteelDensityKgPerM3 { get; init; } = Steel.DensityKgPerM3;

    public double SteelSpecificHeatJPerKgK { get; init; } = Steel.SpecificHeatJPerKgK;

    public double SteelConductivityWPerMK { get; init; } = 50;
}

/// <summary>How warm it is, from the pour on.</summary>
public sealed record ConeSurroundings
{
    /// <summary>Compound when it is poured.</summary>
    public required double CompoundK { get; init; }

    /// <summary>Socket, wires and rope when the compound is poured.</summary>
    public required double SteelK { get; init; }

    /// <summary>Air over the seconds since the pour, K.</summary>
    public required PiecewiseLinear AirK { get; init; }

    /// <summary>Film coefficient to the air, radiation included.</summary>
    public double FilmWPerM2K { get; init; } = 8;

    /// <summary>Degree that the compound has reached in the vessel.</summary>
    public double StartDegree { get; init; }
}

/// <summary>A cone that cures. Times are seconds since the pour.</summary>
public sealed record ConeHeatInput
{
    public required ConeBody Body { get; init; }

    public required ConeMaterials Materials { get; init; }

    public required ICureRate Law { get; init; }

    public required ConeSurroundings Surroundings { get; init; }

    /// <summary>How long is looked at most.</summary>
    public required double HorizonS { get; init; }

    /// <summary>Degrees whose times are asked for, such as that of the gel and that of full strength.</summary>
    public IReadOnlyList<double> Degrees { get; init; } = [];

    /// <summary>Rising times for the curve.</summary>
    public IReadOnlyList<double> CurveTimesS { get; init; } = [];

    /// <summary>Where between small end (0) and mouth (1) the curve is read.</summary>
    public double CurveShare { get; init; } = .5;

    /// <summary>Ends the run when the least cured place has this degree; null runs to the horizon.</summary>
    public double? EndDegree { get; init; }

    /// <summary>Null takes the grid that the answers of this service are made with.</summary>
    public ConeGrid? Grid { get; init; }
}
