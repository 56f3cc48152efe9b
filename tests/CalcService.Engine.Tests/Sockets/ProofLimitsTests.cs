using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Tests.Sockets;

public sealed class ProofLimitsTests
{
    private const double PoundForce = 4.4482216152605;

    /// <summary>Half of the breaking force is half, in whatever units it was sent: 20,000 lbf of 40,000 as 20,050 of 40,100.</summary>
    [Theory]
    [InlineData(20_000, 40_000, PoundForce, false)]
    [InlineData(20_050, 40_100, PoundForce, false)]
    [InlineData(20_001, 40_000, PoundForce, true)]
    [InlineData(126, 252, 1000, false)]
    [InlineData(126.1, 252, 1000, true)]
    public void Proof_load_of_half_the_breaking_force_is_not_above_it(double proof, double breaking, double newtons, bool isAbove) =>
        Assert.Equal(isAbove, ProofLimits.AboveShare(proof * newtons, breaking * newtons, RuleBook.Current.Matching, "/proof") is not null);

    [Theory]
    [InlineData(120e3, false)]
    [InlineData(120.001e3, true)]
    public void Proof_load_at_its_rating_is_not_above_it(double proofN, bool isAbove) =>
        Assert.Equal(isAbove, ProofLimits.AboveRating(proofN, 120e3, "/proof") is not null);
}
