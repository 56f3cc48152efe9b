using CalcService.Engine.Cones;

namespace CalcService.Engine.Tests.Cones;

/// <summary>Cones for tests. Basket of the contract's example; the compound is invented.</summary>
public static class SomeCones
{
    /// <summary>Plain compound, no wires.</summary>
    public static Cone Plain { get; } = new()
    {
        Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 },
        OuterAtSmallEndM = .023 * 1.6,
        OuterAtMouthM = .045 * 1.6,
        Friction = .2,
        Shrinkage = .002,
        CompoundModulusPa = 6e9,
        RadialModulusPa = 6e9,
        PoissonRatio = .25,
    };

    /// <summary>The same full of the wires of a 20 mm 6x36 rope.</summary>
    public static Cone Full { get; } = Plain with { WireAreaM2 = 184e-6, RadialModulusPa = 9e9, Shrinkage = .006 };

    /// <summary>
    /// The cone of the limits: nothing couples across and along, and the socket is stiff along its axis. Its give across
    /// is counted to the plug, whose compliance is then (1 − .25)/6000 + ((R² + 1)/(R² − 1) + .29)/205000 mm²/N, R 1.6.
    /// </summary>
    public static Cone Uncoupled { get; } = Plain with
    {
        Basket = new() { SmallEndDiameterM = .028, LargeEndDiameterM = .056, LengthM = .110 },
        OuterAtSmallEndM = .028 * 1.6,
        OuterAtMouthM = .056 * 1.6,
        Shrinkage = 0,
        PoissonRatio = 0,
        RadialModulusPa = 1e6 / ((.75 / 6000) + (((3.56 / 1.56) + .29) / 205e3)),
        SocketModulusPa = 1e30,
        SocketPoissonRatio = 0,
    };

    /// <summary>The same, stiff along its axis too, so that it neither stretches nor shrinks there.</summary>
    public static Cone Rigid { get; } = Uncoupled with { WireAreaM2 = 1e-6, WireModulusPa = 1e30 };

    public static ConeState At(this Cone cone, double loadN, int intervals = ConeLoad.Intervals) =>
        ConeLoad.Solve(cone, loadN, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken, intervals)!;

    public static double FullContactLoadN(this Cone cone) =>
        ConeLoad.FullContactLoadN(cone, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken)!.Value;

    /// <summary>The station at a share of the length that is one.</summary>
    public static ConeStation Station(this ConeState state, double share) =>
        state.Stations[(int)Math.Round(share * (state.Stations.Count - 1))];
}
