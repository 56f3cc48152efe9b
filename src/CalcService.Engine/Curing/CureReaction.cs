using System.Runtime.Intrinsics;
using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Curing;

/// <summary>
/// The compound's law as what goes on in the nodes; temperatures in K. Nearly all the time of a run goes into it, so the bare law is
/// computed for four nodes at once: k₁₀·e^(−E₁/RT)·(1 − α)^n + k₂₀·e^(−E₂/RT)·α^m·(1 − α)^n, each product as one exponential.
/// </summary>
public sealed class CureReaction : IReaction
{
    private const double GasConstant = 8.314462618;

    private readonly CureLaw _law;
    private readonly bool _isBare;
    private readonly Vector256<double> _logK1;
    private readonly Vector256<double> _logK2;

    public CureReaction(CureLaw law)
    {
        _law = law;
        // A law that says more than its six numbers is computed by itself.
        _isBare = law == new CureLaw(law.K10PerS, law.E1JPerMol, law.K20PerS, law.E2JPerMol, law.M, law.N);
        _logK1 = Vector256.Create(Math.Log(law.K10PerS));
        _logK2 = Vector256.Create(Math.Log(law.K20PerS));
    }

    public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS)
    {
        var i = 0;
        if (_isBare)
        {
            for (; i <= ratePerS.Length - Vector256<double>.Count; i += Vector256<double>.Count)
            {
                Four(Vector256.Create(progress[i..]), Vector256.Create(temperature[i..])).CopyTo(ratePerS[i..]);
            }
        }

        for (; i < ratePerS.Length; i++)
        {
            ratePerS[i] = _law.RatePerS(progress[i], temperature[i]);
        }
    }

    private Vector256<double> Four(Vector256<double> progress, Vector256<double> temperature)
    {
        // The logarithm of nothing is minus infinity, and its exponential is nothing again.
        var done = Vector256.Min(Vector256.Max(progress, Vector256<double>.Zero), Vector256<double>.One);
        var logLeft = LogPower(Vector256<double>.One - done, _law.N);
        var inverse = Vector256.Create(-1 / GasConstant) / temperature;
        return Vector256.Exp(_logK1 + (inverse * _law.E1JPerMol) + logLeft)
            + Vector256.Exp(_logK2 + (inverse * _law.E2JPerMol) + LogPower(done, _law.M) + logLeft);
    }

    private static Vector256<double> LogPower(Vector256<double> of, double exponent) =>
        exponent == 0 ? Vector256<double>.Zero : Vector256.Log(of) * exponent;
}
