using CalcService.Engine.Provenance;

namespace CalcService.Engine.SelfTest;

/// <summary>A number that is known from outside, and what this build computes for it on this machine.</summary>
/// <param name="Id">Short id.</param>
/// <param name="What">What is computed.</param>
/// <param name="Expected">The known number.</param>
/// <param name="Tolerance">How far the computed one may be off, in the same unit.</param>
/// <param name="Actual">The computed number.</param>
/// <param name="Unit">Unit of all three.</param>
/// <param name="Source">Where the known number comes from.</param>
public sealed record KnownAnswer(string Id, string What, double Expected, double Tolerance, double Actual, string Unit, Source Source)
{
    public double Delta => Actual - Expected;

    public bool Passed => Math.Abs(Delta) <= Tolerance;
}
