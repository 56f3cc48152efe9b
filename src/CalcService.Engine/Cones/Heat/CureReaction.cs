using System.Runtime.Intrinsics;
using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>
/// The compound's law as what goes on in the nodes; temperatures in K. Nearly all the time of a run goes into it, so the bare law is
/// computed for four nodes at once: k₁₀·e^(−E₁/RT)·(1 − α)^n + k₂₀·e^(−E₂/RT)·α^m·(1 − α)^n, each product as one exponential.
/// </summary>
public sealed class CureReaction : IReaction
{
    private readonly ICureRate _rate;

    /// <summary>Null for a rate that is more than one law: it is computed by itself.</summary>
    private readonly CureLaw? _law;
    private readonly Vector256<double> _logK1;
    private readonly Vector256<double> _logK2;

    public CureReaction(ICureRate rate)
    {
        _rate = rate;
        _law = rate as CureLaw;
        _logK1 = Vector256.Create(Math.Log(_law?.K10PerS ?? 0));
        _logK2 = Vector256.Create(Math.Log(_law?.K20PerS ?? 0));
    }

    public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS)
    {
        var i = 0;
        if (_law is { } law)
        {
            for (; i <= ratePerS.Length - Vector256<double>.Count; i += Vector256<double>.Count)
            {
                Four(law, Vector256.Create(progress[i..]), Vector256.Create(temperature[i..])).CopyTo(ratePerS[i..]);
            }
        }

        for (; i < ratePerS.Length; i++)
        {
            ratePerS[i] = _rate.RatePerS(progress[i], temperature[i]);
        }
    }

    private Vector256<double> Four(CureLaw law, Vector256<double> progress, Vector256<double> temperature)
    {
        // The logarithm of nothing is minus infinity, and its exponential is nothing again.
        var done = Vector256.Min(Vector256.Max(progress, Vector256<double>.Zero), Vector256<double>.One);
        var logLeft = LogPower(Vector256<double>.One - done, law.N);
        var inverse = Vector256.Create(-1 / CureLaw.GasConstant) / temperature;
        return Vector256.Exp(_logK1 + (inverse * law.E1JPerMol) + logLeft)
            + Vector256.Exp(_logK2 + (inverse * law.E2JPerMol) + LogPower(done, law.M) + logLeft);
    }

    private static Vector256<double> LogPower(Vector256<double> of, double exponent) =>
        exponent == 0 ? Vector256<double>.Zero : Vector256.Log(of) * exponent;
}
