using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Tests.Ropes;

public sealed class RopeFactsTests
{
    private static readonly Rope Estimated = new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770 };

    [Fact]
    public void Rope_of_a_class_is_estimated_and_says_so_for_each_number()
    {
        var assumptions = new List<Assumption>();
        var facts = RopeFacts.Of(Estimated, "/rope", assumptions, Trace.None);

        Assert.False(facts.BreakingForceCertified);
        Assert.Equal(252.048e3, facts.BreakingForceN!.Value, 1.0);
        Assert.Equal(265, facts.WireCount);
        Assert.Equal(["/rope/metallicArea", "/rope/wireCount", "/rope/outerWireDiameter", "/rope/certificate/breakingForce"],
            assumptions.Select(assumption => assumption.Pointer));
        Assert.All(assumptions, assumption => Assert.Equal(AssumptionOrigin.Estimate, assumption.Origin));
    }

    [Fact]
    public void Rope_with_a_certificate_takes_its_numbers_and_estimates_nothing()
    {
        var assumptions = new List<Assumption>();
        var certified = Estimated with
        {
            CertifiedBreakingForceN = 260e3, MetallicAreaM2 = 190e-6, WireCount = 250, OuterWireDiameterM = .0012,
        };
        var facts = RopeFacts.Of(certified, "/rope", assumptions, Trace.None);

        Assert.True(facts.BreakingForceCertified);
        Assert.Equal((260e3, 190e-6, 250, .0012), (facts.BreakingForceN, facts.MetallicAreaM2, facts.WireCount, facts.WireDiameterM));
        Assert.Empty(assumptions);
    }

    [Fact]
    public void Rope_of_no_class_stays_without_numbers()
    {
        var assumptions = new List<Assumption>();
        var facts = RopeFacts.Of(Estimated with { Construction = "locked coil" }, "/rope", assumptions, Trace.None);

        Assert.Equal(new RopeFacts(), facts);
        Assert.Empty(assumptions);
    }

    [Fact]
    public void Rope_without_grade_has_no_breaking_force_but_the_rest() =>
        Assert.Multiple(
            () => Assert.Null(RopeFacts.Of(Estimated with { Grade = null }, "/rope", [], Trace.None).BreakingForceN),
            () => Assert.NotNull(RopeFacts.Of(Estimated with { Grade = null }, "/rope", [], Trace.None).MetallicAreaM2));
}
