using CalcService.Engine.Cones;

namespace CalcService.Engine.Matching;

/// <summary>The laws of the cone at its small end, where it presses hardest, with the numbers of a solution.</summary>
internal static class ConeTrace
{
    public static void Write(MatchScope scope, string name, Cone cone, ConeState state)
    {
        if (!scope.Budget.Trace)
        {
            return;
        }

        var trace = scope.Trace;
        trace.Of = name;
        var (basket, radius, ratio) = (cone.Basket, cone.RadiusAtM(0), cone.WallRatioAt(0));
        var (area, mouthRadius) = (Math.PI * radius * radius, cone.RadiusAtM(basket.LengthM));
        var stiffness = ConeFormulas.RadialStiffnessPa(cone.RadialModulusPa, cone.PoissonRatio, ratio, cone.SocketModulusPa, cone.SocketPoissonRatio, trace);
        var axial = ConeFormulas.AxialStiffnessN(cone.WireModulusPa, cone.WireAreaM2, cone.CompoundModulusPa, area, trace);
        ConeFormulas.AxialShrinkage(cone.Shrinkage, cone.CompoundModulusPa, area, cone.WireAreaM2, axial, trace);
        ConeFormulas.RigidSeatM(state.LoadN, cone.Shrinkage, basket.Taper, cone.Friction, radius, mouthRadius, basket.LengthM, stiffness, trace);
        var pressure = ConeFormulas.PressurePa(stiffness, state.SeatAtSmallEndM, basket.Taper, radius, cone.Shrinkage, cone.PoissonRatio, state.LoadN, axial,
            cone.SocketPoissonRatio, cone.SocketModulusPa * area * ((ratio * ratio) - 1), trace);
        ConeFormulas.MeanPressurePa(state.LoadN, basket.Taper, cone.Friction, radius, mouthRadius, trace);
        ConeFormulas.HoopStressPa(pressure, ratio, trace);
        trace.Of = "";
    }
}
