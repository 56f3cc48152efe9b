using CalcService.Engine.Numerics;

namespace CalcService.Engine.Compounds;

/// <summary>
/// How fast the compound cures: dα/dt = (k₁ + k₂·α^m)·(1 − α)^n with kᵢ = kᵢ₀·e^(−Eᵢ/RT), α from 0 to 1.
/// </summary>
/// <param name="K10PerS">k₁₀, 1/s.</param>
/// <param name="E1JPerMol">E₁, J/mol.</param>
/// <param name="K20PerS">k₂₀, 1/s.</param>
/// <param name="E2JPerMol">E₂, J/mol.</param>
/// <param name="M">Exponent of what has cured.</param>
/// <param name="N">Exponent of what is left.</param>
public sealed record CureLaw(double K10PerS, double E1JPerMol, double K20PerS, double E2JPerMol, double M, double N) : ICureRate
{
    /// <summary>Molar gas constant as the published laws were computed with, J/(mol·K).</summary>
    internal const double GasConstant = 8.314462618;

    /// <summary>dα/dt at a degree of cure and a temperature; a degree outside 0 to 1 counts as its nearest end.</summary>
    public double RatePerS(double degree, double temperatureK)
    {
        // Each product as one exponential. The logarithm of nothing is minus infinity, and its exponential is nothing again.
        var done = Math.Clamp(degree, 0, 1);
        var inverse = -1 / (GasConstant * temperatureK);
        var left = LogPower(1 - done, N);
        return (K10PerS * Elementary.Exp((E1JPerMol * inverse) + left))
            + (K20PerS * Elementary.Exp((E2JPerMol * inverse) + LogPower(done, M) + left));
    }

    private static double LogPower(double of, double exponent) => exponent == 0 ? 0 : exponent * Elementary.Log(of);
}
