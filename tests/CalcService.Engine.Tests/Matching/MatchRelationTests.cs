using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Pouring;
using CsCheck;

namespace CalcService.Engine.Tests.Matching;

/// <summary>
/// What has to hold between the answers to two matches, or to a match and a pour plan. The numbers are those of the list of relations.
/// </summary>
public sealed class MatchRelationTests
{
    /// <summary>Facts, each with what takes it away and the members that a finding would name where it did not satisfy its rule.</summary>
    private static readonly (string[] Pointers, Func<MatchInput, MatchInput> Remove)[] Facts =
    [
        (["/rope/construction", "/rope"], match => match with { Rope = match.Rope with { Construction = null } }),
        (["/rope/core", "/rope", "/preparation/core"], match => match with { Rope = match.Rope with { Core = RopeCore.Unknown } }),
        (["/rope/grade"], match => match with { Rope = match.Rope with { Grade = null } }),
        (["/rope/finish"], match => match with { Rope = match.Rope with { Finish = WireFinish.Unknown } }),
        (["/rope/function"], match => match with { Rope = match.Rope with { Function = RopeFunction.Unknown } }),
        (["/rope/certificate/breakingForce", "/socket/breakingForce", "/duty"],
        match => match with { Rope = match.Rope with { CertifiedBreakingForceN = null } }),
        (["/socket/breakingForce"], match => match with { Socket = match.Socket with { BreakingForceN = null } }),
        (["/socket/ratedLoad"], match => match with { Socket = match.Socket with { RatedLoadN = null } }),
        (["/socket/proofRating"], match => match with { Socket = match.Socket with { ProofRatingN = null } }),
        (["/socket/ropeRange"], match => match with { Socket = match.Socket with { RopeRange = null } }),
        (["/socket/standard"], match => match with { Socket = match.Socket with { Standard = null } }),
        (["/socket/outerAtMouth", "/socket/basket"], match => match with { Socket = match.Socket with { OuterAtMouthM = null } }),
        (["/duty"], match => match with { Duty = match.Duty with { Use = DutyUse.Unknown } }),
        (["/duty"], match => match with { Duty = match.Duty with { DesignFactor = null } }),
        (["/duty"], match => match with { Duty = match.Duty with { Efficiency = null } }),
        (["/duty/typeTested"], match => match with { Duty = match.Duty with { TypeTested = null } }),
        (["/duty/resinByDesign"], match => match with { Duty = match.Duty with { ResinByDesign = null } }),
        (["/duty"], match => match with { Duty = match.Duty with { MakersApproval = null } }),
        (["/duty"], match => match with { Duty = match.Duty with { RotationResistance = RotationResistance.Unknown } }),
        (["/service/lowest"], match => match with { Service = match.Service with { LowestK = null } }),
        (["/service/highest"], match => match with { Service = match.Service with { HighestK = null } }),
        (["/service/chemicals"], match => match with { Service = match.Service with { Chemicals = null } }),
        (["/preparation"], match => match with { Preparation = null }),
        (["/compound/sheet/service", "/service"], match => match with { Compound = match.Compound with { Service = null } }),
        (["/compound/sheet/cured", "/socket/basket"], match => match with { Compound = match.Compound with { Cured = new() } }),
    ];

    private static readonly Gen<bool?> AnyFact = Gen.Int[0, 2].Select(choice => choice switch { 0 => (bool?)null, 1 => false, _ => true });

    private static readonly Gen<MatchInput> AnyHoist = Gen.Select(
        Gen.Enum<RopeFunction>(), Gen.Enum<RotationResistance>(), Gen.OneOf(3.0, 3.5, 3.6, 4.9, 5, 9.9, 10),
        AnyFact, AnyFact, AnyFact, Gen.OneOf("6x36", "18x7"))
        .Select((function, type, factor, approval, cycle, persons, construction) => GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { Function = function, Construction = construction },
            Duty = GoodMatch.Input.Duty with
            {
                Use = DutyUse.HoistRope, LoadN = 15e3, DesignFactor = factor, RotationResistance = type, MakersApproval = approval,
                    DutyCycle = cycle, LiftsPersons = persons switch { true => Fact.Yes, false => Fact.No, _ => null },
            },
        });

    /// <summary>500 random ropes in random sockets: one verdict on wires, entry and strength in match and pour plan.</summary>
    [Fact]
    public void Relation_19_match_and_pour_plan_have_one_verdict_on_rope_and_socket() =>
        Gen.Select(Gen.Double[.016, .026], Gen.Double[.7, 1.6], Gen.Double[200e3, 320e3], Gen.Double[0, .001],
        Gen.OneOf("6x7", "6x19", "6x36", "8x36", "18x7"), Gen.OneOf(RopeCore.Iwrc, RopeCore.Fibre))
        .Sample((smallEnd, metal, strength, tolerance, construction, core) =>
        {
            var rope = GoodMatch.Input.Rope with { Construction = construction, Core = core, MetallicAreaM2 = metal * 184e-6 * 1.4 };
            var basket = new Basket { SmallEndDiameterM = smallEnd, LargeEndDiameterM = smallEnd + .022, LengthM = .1,
                ToleranceM = tolerance };
            var match = GoodMatch.Match(GoodMatch.Input with
            {
                Rope = rope,
                Socket = GoodMatch.Input.Socket with { Basket = basket, OuterAtSmallEndM = null, OuterAtMouthM = null,
                BreakingForceN = strength },
                Preparation = null,
            });
            var end = GoodPour.End("A", 1) with { Rope = rope, Basket = basket, SocketBreakingForceN = strength };
            var plan = PourPlan.Calculate(GoodPour.Input with { Ends = [end] }, Editions.Known.Current, new Budget(Budget.DefaultSteps),
                TestContext.Current.CancellationToken);
            string[] shared = ["wires-do-not-fit", "rope-does-not-enter", "socket-weaker-than-rope", "fit-depends-on-tolerance",
                "rope-loose"];
            string[] Of(IEnumerable<Finding> findings) =>
                [.. findings.Where(finding => shared.Contains(finding.Definition.Code))
                .Select(finding => $"{finding.Definition.Code} {finding.Severity}").Order(StringComparer.Ordinal)];
            Assert.Equal(Of(match.Findings), Of(plan.Findings));
        }, iter: 500);

    /// <summary>1,000 random pairs of faults, each with one fact taken away that no finding names.</summary>
    [Fact]
    public void Relation_27_fact_that_satisfied_its_rule_absent_or_unknown_never_betters_the_answer() =>
        Gen.Select(Gen.Int[0, MatchCases.All.Count - 1], Gen.Int[0, MatchCases.All.Count - 1], Gen.Int[0, Facts.Length - 1])
        .Sample((one, other, fact) =>
            NeverBetters(MatchCases.All[other].Change(MatchCases.All[one].Change(GoodMatch.Input)), fact), iter: 1000);

    /// <summary>1,000 random hoist ropes, each with one fact taken away that no finding names.</summary>
    [Fact]
    public void Relation_27_fact_of_a_hoist_rope_absent_or_unknown_never_betters_the_answer() =>
        Gen.Select(AnyHoist, Gen.Int[0, Facts.Length - 1]).Sample(NeverBetters, iter: 1000);

    /// <summary>500 random hoist ropes under a limit made stricter.</summary>
    [Fact]
    public void Relation_27_stricter_factor_never_betters_the_answer() => Gen.Select(AnyHoist, Gen.Int[0, 3]).Sample((match, which) =>
    {
        var book = Editions.Known.Current;
        static RuleLimit More(RuleLimit limit) => new(limit.RuleSet, limit.Text, Measure.Count(1.3 * ((Measure?)limit)!.Value.Si),
            limit.Source);
        var rules = book.Matching;
        var stricter = which switch
        {
            0 => rules with { RotationResistantLeast = More(rules.RotationResistantLeast) },
            1 => rules with { RotationResistant = More(rules.RotationResistant) },
            2 => rules with { Persons = More(rules.Persons) },
            _ => rules with { PersonsRotationResistant = More(rules.PersonsRotationResistant) },
        };
        var strict = TerminationMatch.Calculate(match, book with { Matching = stricter }, new Budget(Budget.DefaultSteps),
            TestContext.Current.CancellationToken);
        Assert.True(GoodMatch.Match(match).Decision <= strict.Decision);
    }, iter: 500);

    private static void NeverBetters(MatchInput match, int fact)
    {
        var before = GoodMatch.Match(match);
        var (pointers, remove) = Facts[fact];
        if (before.Findings.Any(finding =>
            finding.Related.Append(finding.Pointer)
            .Any(named => pointers.Any(pointer => named == pointer || named.StartsWith(pointer + "/", StringComparison.Ordinal)))))
        {
            return;
        }

        Assert.True(before.Decision <= GoodMatch.Match(remove(match)).Decision, pointers[0]);
    }
}
