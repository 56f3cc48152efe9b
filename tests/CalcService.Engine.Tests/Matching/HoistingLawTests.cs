using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Matching;

/// <summary>
/// 29 CFR 1926.1414(e)(2): a rotation resistant hoist rope has a design factor of at least 3.5 (ii); of type I 5 unless the makers of rope
/// and equipment both approve less in writing (iii); of types II and III 5 except under (e)(3) (iv), and never on duty cycle (i). 29 CFR
/// 1926.1431(g)(3): what hangs a personnel platform holds five times what is meant to hang, rotation resistant rope ten times.
/// </summary>
public sealed class HoistingLawTests
{
    private const RopeFunction Running = RopeFunction.Running, Resistant = RopeFunction.RotationResistant, NotSaid = RopeFunction.Unknown;
    private const RotationResistance TypeI = RotationResistance.TypeI, TypeII = RotationResistance.TypeII,
        TypeIII = RotationResistance.TypeIII;

    [Theory]
    [InlineData(Running, null, 3.5, null, null, Decision.Proceed, null)]
    [InlineData(Running, null, 3.4, null, null, Decision.Undetermined, "/duty/designFactor")]
    [InlineData(NotSaid, null, 4.99, null, null, Decision.Undetermined, "/rope/function")]
    [InlineData(NotSaid, null, 5, null, null, Decision.Proceed, null)]
    [InlineData(Resistant, null, 3.5, null, null, Decision.Undetermined, "/duty/rotationResistance")]
    [InlineData(Resistant, null, 3.49, null, null, Decision.DoNotProceed, "/duty/designFactor")]
    [InlineData(Resistant, null, 5, null, true, Decision.Proceed, null)]
    [InlineData(Resistant, TypeI, 3.5, true, true, Decision.Proceed, null)]
    [InlineData(Resistant, TypeI, 3.49, true, false, Decision.DoNotProceed, "/duty/designFactor")]
    [InlineData(Resistant, TypeI, 4.99, null, false, Decision.Undetermined, "/duty/makersApproval")]
    [InlineData(Resistant, TypeI, 4.99, false, false, Decision.DoNotProceed, "/duty/makersApproval")]
    [InlineData(Running, TypeI, 4.99, false, false, Decision.DoNotProceed, "/duty/makersApproval")]
    [InlineData(Resistant, TypeII, 4.99, true, true, Decision.DoNotProceed, "/duty/designFactor")]
    [InlineData(Resistant, TypeII, 4.99, true, false, Decision.Undetermined, "/duty/designFactor")]
    [InlineData(Resistant, TypeII, 5, null, true, Decision.Proceed, null)]
    [InlineData(Resistant, TypeIII, 4.99, null, true, Decision.DoNotProceed, "/duty/designFactor")]
    [InlineData(Resistant, TypeIII, 4.99, null, null, Decision.Undetermined, "/duty/designFactor")]
    [InlineData(Resistant, TypeIII, 3.49, null, null, Decision.DoNotProceed, "/duty/designFactor")]
    public void Hoist_rope_that_resists_rotation_has_the_factors_of_the_law(
        RopeFunction function, RotationResistance? type, double factor, bool? approval, bool? dutyCycle, Decision decision, string? pointer)
    {
        var match = Hoist(function,
            d => d with { DesignFactor = factor, RotationResistance = type, MakersApproval = approval, DutyCycle = dutyCycle });
        Assert.Equal(decision, match.Decision);
        Assert.Equal(pointer, match.Findings.SingleOrDefault()?.Pointer);
    }

    [Theory]
    [InlineData(DutyUse.Sling, RopeFunction.Sling, 5, Decision.Proceed)]
    [InlineData(DutyUse.Sling, RopeFunction.Sling, 4.99, Decision.DoNotProceed)]
    [InlineData(DutyUse.Sling, NotSaid, 10, Decision.Proceed)]
    [InlineData(DutyUse.Sling, NotSaid, 9.99, Decision.Undetermined)]
    [InlineData(DutyUse.Sling, Resistant, 9.99, Decision.DoNotProceed)]
    [InlineData(DutyUse.Sling, Resistant, 10, Decision.Proceed)]
    [InlineData(DutyUse.Pendant, RopeFunction.Pendant, 4.99, Decision.DoNotProceed)]
    // The clause names a platform's rigging: of other ropes nobody knows.
    [InlineData(DutyUse.Other, Running, 4.99, Decision.Undetermined)]
    [InlineData(DutyUse.Mooring, Running, 4.99, Decision.Undetermined)]
    [InlineData(DutyUse.Mooring, Running, 5, Decision.Proceed)]
    [InlineData(DutyUse.HoistRope, Running, 4.99, Decision.Undetermined)]
    [InlineData(DutyUse.HoistRope, Resistant, 9.99, Decision.Undetermined)]
    public void What_hangs_persons_holds_five_times_and_rotation_resistant_rope_ten_times(DutyUse use, RopeFunction function, double factor,
        Decision decision)
    {
        var match = GoodMatch.Match(GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { Function = function },
            Duty = GoodMatch.Input.Duty with { Use = use, DesignFactor = factor, LoadN = 20e3, LiftsPersons = Fact.Yes },
        });
        Assert.Equal(decision, match.Decision);
    }

    /// <summary>Nobody knows whether it lifts persons: less than what persons ask for is open, whatever the machine asks for.</summary>
    [Theory]
    [InlineData(DutyUse.Pendant, Fact.Unknown, 4.99, Decision.Undetermined)]
    [InlineData(DutyUse.Pendant, Fact.Unknown, 5, Decision.Proceed)]
    [InlineData(DutyUse.Pendant, Fact.No, 3, Decision.Proceed)]
    [InlineData(DutyUse.Pendant, null, 3, Decision.Proceed)]
    [InlineData(DutyUse.HoistRope, Fact.Unknown, 3.5, Decision.Undetermined)]
    public void Rope_of_which_nobody_knows_whether_it_lifts_persons_is_open(DutyUse use, Fact? persons, double factor, Decision decision) =>
        Assert.Equal(decision, GoodMatch.Match(GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { Function = Running },
            Duty = GoodMatch.Input.Duty with { Use = use, DesignFactor = factor, LoadN = 20e3, LiftsPersons = persons },
        }).Decision);

    /// <summary>29 CFR 1926.1414(e)(2): that the type is said to be unknown leaves open whether the rope is one of a type.</summary>
    [Theory]
    [InlineData(RotationResistance.Unknown, 3.5, "/duty/rotationResistance")]
    [InlineData(RotationResistance.Unknown, 5, null)]
    [InlineData(null, 3.5, null)]
    public void Type_that_is_said_to_be_unknown_asks_for_five(RotationResistance? type, double factor, string? pointer) =>
        Assert.Equal(pointer,
        Hoist(Running, d => d with { DesignFactor = factor, RotationResistance = type }).Findings.SingleOrDefault()?.Pointer);

    /// <summary>A rope of many strands is laid in several layers against rotation, whatever nobody says.</summary>
    [Theory]
    [InlineData("18x7")]
    [InlineData("35(W)x7")]
    public void Class_of_many_strands_resists_rotation(string construction) => Assert.Equal("/duty/rotationResistance",
        GoodMatch.Match(GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { Construction = construction, Function = Running },
            Duty = GoodMatch.Input.Duty with { Use = DutyUse.HoistRope, DesignFactor = 4 },
        }).Findings.Single(finding => finding.Definition.Code == "design-factor-below-law").Pointer);

    /// <summary>Where the request gives no factor, the law's counts as soon as it may hold, and is no remembered one.</summary>
    [Theory]
    [InlineData(Running, null, null, 3.5, "design-factor-from-memory")]
    [InlineData(NotSaid, null, null, 5, null)]
    [InlineData(Resistant, TypeII, null, 5, null)]
    [InlineData(Resistant, TypeI, true, 3.5, null)]
    public void Factor_that_is_not_given_is_the_laws(RopeFunction function, RotationResistance? type, bool? approval, double factor,
        string? code)
    {
        var match = Hoist(function, d => d with { DesignFactor = null, RotationResistance = type, MakersApproval = approval });
        Assert.Equal((factor, "ruleSet"), (match.Result.Working.DesignFactor!.Value, match.Result.Working.FactorFrom));
        Assert.Equal(code, match.Findings.SingleOrDefault()?.Definition.Code);
        Assert.Contains(match.Assumptions, assumption => assumption.Pointer == "/duty/designFactor");
    }

    /// <summary>By a law's factor too much load is a stop, by a remembered one nobody knows.</summary>
    [Theory]
    [InlineData(Resistant, 51e3, Severity.Stop)]
    [InlineData(Running, 73e3, Severity.Unknown)]
    public void Load_above_the_limit_stops_by_a_law_and_is_open_by_memory(RopeFunction function, double loadN, Severity severity)
    {
        var match = GoodMatch.Match(GoodMatch.Input with
        {
            Rope = GoodMatch.Input.Rope with { Function = function },
            Socket = GoodMatch.Input.Socket with { RatedLoadN = 100e3 },
            Duty = GoodMatch.Input.Duty with { Use = DutyUse.HoistRope, DesignFactor = null, LoadN = loadN },
        });
        Assert.Equal(severity, match.Findings.Single(finding => finding.Definition.Code == "load-above-working-limit").Severity);
    }

    private static Outcome<MatchResult> Hoist(RopeFunction function, Func<MatchDuty, MatchDuty> change) =>
        GoodMatch.Match(GoodMatch.Input with
    {
        Rope = GoodMatch.Input.Rope with { Function = function },
        Duty = change(GoodMatch.Input.Duty with { Use = DutyUse.HoistRope }),
    });
}
