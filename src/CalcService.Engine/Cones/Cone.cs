using CalcService.Engine.Sockets;

namespace CalcService.Engine.Cones;

/// <summary>A set cone of compound and wires in its socket: what the transfer of load depends on.</summary>
public sealed record Cone
{
    public required Basket Basket { get; init; }

    /// <summary>Outside diameter of the socket at the small end.</summary>
    public required double OuterAtSmallEndM { get; init; }

    /// <summary>Outside diameter of the socket at the mouth.</summary>
    public required double OuterAtMouthM { get; init; }

    /// <summary>μ between cone and socket.</summary>
    public required double Friction { get; init; }

    /// <summary>ε, linear shrinkage after gel.</summary>
    public required double Shrinkage { get; init; }

    /// <summary>E_m of the set compound.</summary>
    public required double CompoundModulusPa { get; init; }

    /// <summary>E_r, stiffness of the cone across its axis: about 1.5·E_m when it is full of wires.</summary>
    public required double RadialModulusPa { get; init; }

    /// <summary>ν of the cone, across as along.</summary>
    public required double PoissonRatio { get; init; }

    /// <summary>A_w, section of the wires; 0 for plain compound.</summary>
    public double WireAreaM2 { get; init; }

    /// <summary>E_w.</summary>
    public double WireModulusPa { get; init; } = 200e9;

    /// <summary>E_s.</summary>
    public double SocketModulusPa { get; init; } = 205e9;

    /// <summary>ν_s.</summary>
    public double SocketPoissonRatio { get; init; } = .29;

    /// <summary>R at a place: outside over bore of the socket.</summary>
    public double WallRatioAt(double xM)
    {
        var share = xM / Basket.LengthM;
        return (OuterAtSmallEndM + (share * (OuterAtMouthM - OuterAtSmallEndM))) / Basket.DiameterAtM(share);
    }

    /// <summary>r at a place.</summary>
    public double RadiusAtM(double xM) => (Basket.SmallEndDiameterM / 2) + (xM * Basket.Taper);
}
