using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Pouring;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>
/// Which law's limits for styrene hold. US general industry: 29 CFR 1910.1000 Table Z-2. Construction (29 CFR 1926.55 Appendix A),
/// shipyards (29 CFR 1915.1000) and California (2012) as OSHA lists them with CH_268200.
/// </summary>
public sealed class WorkplaceTests
{
    [Theory]
    [InlineData("US", Workplace.GeneralIndustry, 200, null, 100)]
    [InlineData("US", Workplace.Unknown, 200, null, 100)]
    [InlineData(null, Workplace.Unknown, 200, null, 100)]
    [InlineData("US", Workplace.Construction, 100, null, null)]
    [InlineData(null, Workplace.Construction, 100, null, null)]
    [InlineData("US", Workplace.Shipyard, null, null, 100)]
    [InlineData("US-CA", Workplace.Construction, 500, 100, 50)]
    [InlineData("US-CA", Workplace.Unknown, 500, 100, 50)]
    public void Limits_are_those_of_the_place_of_work(string? jurisdiction, Workplace workplace, int? ceiling, int? shortTerm, int? mean)
    {
        var law = Editions.Known.Current.Pouring.Air[0].LawAt(jurisdiction, workplace);
        static double? Ppm(RuleLimit? limit) => limit is null ? null : Math.Round(((Measure?)limit)!.Value.Si * 1e6, 6);
        Assert.Equal((ceiling, shortTerm, mean), (Ppm(law.Ceiling), Ppm(law.ShortTerm), Ppm(law.TimeWeighted)));
    }

    /// <summary>A closed cabinet, whose peak lies between 100 and 200 ppm.</summary>
    [Theory]
    [InlineData("US", Workplace.GeneralIndustry, false, null)]
    [InlineData("US", Workplace.Construction, true, null)]
    [InlineData("US", Workplace.Unknown, false, "US construction")]
    [InlineData(null, Workplace.GeneralIndustry, false, "California")]
    [InlineData(null, Workplace.Unknown, false, "US construction, California")]
    public void Peak_above_a_construction_ceiling_stops_on_a_construction_site_and_is_told_where_it_may_be_one(string? jurisdiction,
        Workplace workplace, bool stops, string? named)
    {
        var plan =
            GoodPour.Plan(GoodPour.Input with { Conditions = GoodPour.Input.Conditions with { Room = new(5.5, 1.0 / 3600),
            Jurisdiction = jurisdiction, Workplace = workplace, MixingFactor = 1 } });
        Assert.InRange(plan.Result.Vapour!.Peak, 100e-6, 200e-6);
        Assert.InRange(plan.Result.Vapour.TimeWeighted, 0, 100e-6);
        Assert.Equal(stops, plan.Findings.Any(finding => finding.Definition == PouringFindings.VapourAboveLaw));
        Assert.Equal(named,
            plan.Findings.SingleOrDefault(finding => finding.Definition == PouringFindings.VapourAboveStricterLaw)?.Words.Single(word =>
            word.Name == "law").Text);
    }
}
