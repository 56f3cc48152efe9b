using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Cones.Heat;

/// <summary>The compound's rate as what goes on in the nodes; temperatures in K. Nearly all the time of a run goes into it.</summary>
public sealed class CureReaction(ICureRate rate) : IReaction
{
    public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS)
    {
        for (var i = 0; i < ratePerS.Length; i++)
        {
            ratePerS[i] = rate.RatePerS(progress[i], temperature[i]);
        }
    }
}
