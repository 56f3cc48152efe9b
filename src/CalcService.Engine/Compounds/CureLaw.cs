namespace CalcService.Engine.Compounds;

/// <summary>Rate of cure dα/dt = (k₁ + k₂·α^m)·(1 − α)^n with kᵢ = kᵢ₀·exp(−Eᵢ/(R·T)), after Kamal and Sourour.</summary>
/// <param name="K10PerS">k₁₀, 1/s.</param>
/// <param name="E1JPerMol">E₁, J/mol.</param>
/// <param name="K20PerS">k₂₀, 1/s.</param>
/// <param name="E2JPerMol">E₂, J/mol.</param>
/// <param name="M">Order of the self-acceleration.</param>
/// <param name="N">Order of the reaction.</param>
public sealed record CureLaw(double K10PerS, double E1JPerMol, double K20PerS, double E2JPerMol, double M, double N)
{
    /// <summary>Molar gas constant, J/(mol·K).</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>dα/dt, 1/s. Without k₁ nothing starts from α = 0: such a law needs a seed.</summary>
    public double RatePerS(double degree, double temperatureK)
    {
        if (degree >= 1)
        {
            return 0;
        }

        var k1 = K10PerS * Math.Exp(-E1JPerMol / (GasConstant * temperatureK));
        var k2 = K20PerS * Math.Exp(-E2JPerMol / (GasConstant * temperatureK));
        return (k1 + (k2 * Math.Pow(degree, M))) * Math.Pow(1 - degree, N);
    }
}
