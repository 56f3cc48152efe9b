using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Conduction;

namespace CalcService.Engine.Curing;

/// <summary>The compound's law as what goes on in the nodes; temperatures in K.</summary>
internal sealed class CureReaction(ICureRate law) : IReaction
{
    public void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS)
    {
        for (var i = 0; i < ratePerS.Length; i++)
        {
            ratePerS[i] = law.RatePerS(progress[i], temperature[i]);
        }
    }
}
