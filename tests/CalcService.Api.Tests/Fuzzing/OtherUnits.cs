using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>The same request with its quantities in other units. The factors are those of their definitions (NIST SP 811).</summary>
internal static class OtherUnits
{
    private const double Inch = 25.4, PoundForce = 4.4482216152605, Psi = 6894.757293168;

    private static readonly Dictionary<string, (string Unit, Func<double, double> From)[]> Table = new(StringComparer.Ordinal)
    {
        ["mm"] = [("m", value => value / 1000), ("cm", value => value / 10), ("in", value => value / Inch)],
        ["m"] = [("mm", value => value * 1000), ("in", value => value * 1000 / Inch)],
        ["in"] = [("mm", value => value * Inch)],
        ["kN"] = [("N", value => value * 1000), ("lbf", value => value * 1000 / PoundForce)],
        ["MPa"] = [("N/mm2", value => value), ("psi", value => value * 1e6 / Psi)],
        ["degC"] = [("degF", value => (value * 1.8) + 32), ("K", value => value + 273.15)],
        ["%"] = [("1", value => value / 100)],
    };

    /// <summary>Some of its quantities in other units, its members in another order, written in another way.</summary>
    public static Gen<string> Of(JsonObject request) => Gen.Int[0, 3].Array[request.Walk().Count()].SelectMany(choices =>
    {
        var copy = request.DeepClone();
        foreach (var (quantity, choice) in copy.Walk().Select(node => node.Value).Zip(choices).ToArray())
        {
            if (choice > 0 && quantity is JsonObject { Count: 2 } members && members["unit"] is { } unit
                && Table.TryGetValue((string)unit!, out var others))
            {
                var (other, from) = others[(choice - 1) % others.Length];
                (members["value"], members["unit"]) = (from((double)members["value"]!), other);
            }
        }

        return Respelling.Of(copy);
    });
}
