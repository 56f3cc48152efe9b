using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring;

/// <summary>The temperature at which resin, wires and socket meet when heat has evened out and nothing has reacted yet.</summary>
public static class EvenedTemperature
{
    /// <summary>
    /// T_e = (C_r·T_r + C_w·T_w + C_s·T_s)/(C_r + C_w + C_s), heat capacities in J/K of resin, wires and socket; in K.
    /// </summary>
    [Formula("evened-temperature", "heat given is heat taken", "/docs/pour-plans", Basis.Derived, Symbol = "T_e",
        Name = "evened temperature of the cone",
        Expression = "(C_r·T_r + C_w·T_w + C_s·T_s)/(C_r + C_w + C_s)", Kind = QuantityKind.Temperature,
        Range = "before the reaction gives heat; nothing lost to the air or along the rope")]
    public static double Of(double resinJPerK, double resinK, double wiresJPerK, double wiresK, double socketJPerK, double socketK,
        Trace trace) =>
        trace.Step("evened-temperature",
        ((resinJPerK * resinK) + (wiresJPerK * wiresK) + (socketJPerK * socketK)) / (resinJPerK + wiresJPerK + socketJPerK),
            Substitution.In("C_r", resinJPerK, "J/K"), new("T_r", Measure.Kelvins(resinK)),
            Substitution.In("C_w", wiresJPerK, "J/K"), new("T_w", Measure.Kelvins(wiresK)),
            Substitution.In("C_s", socketJPerK, "J/K"), new("T_s", Measure.Kelvins(socketK)));

    /// <summary>For one end, or null where a heat capacity or a reading is missing.</summary>
    internal static double? For(PourScope scope, PourEnd end, PlannedEnd planned)
    {
        var sheet = scope.Input.Compound;
        if (planned.Fill is not { NominalM3: { } resin, SteelM3: { } steel }
            || sheet is not { DensityKgPerM3: { } density, SpecificHeatJPerKgK: { } specific }
            || SocketMassKg(end, planned) is not { } mass || scope.Conditions.CompoundK is not { } compound
            || (end.SocketTemperatureK ?? scope.Conditions.SteelK) is not { } socket)
        {
            return null;
        }

        var wires = end.Rope.TemperatureK ?? scope.Conditions.SteelK ?? socket;
        return Of(resin * density * specific, compound, steel * Steel.DensityKgPerM3 * Steel.SpecificHeatJPerKgK, wires,
            mass * Steel.SpecificHeatJPerKgK, socket, scope.Trace);
    }

    /// <summary>
    /// The socket's stated mass, or that of the wall around the basket; what hangs on it besides would only hold the cone nearer to the
    /// steel.
    /// </summary>
    private static double? SocketMassKg(PourEnd end, PlannedEnd planned) =>
        end.SocketMassKg ?? (end.SocketOuterDiameterM is { } outer
            ? ((Math.PI / 4 * outer * outer * end.Basket.LengthM) - planned.Fill.BasketM3) * Steel.DensityKgPerM3
            : null);
}
