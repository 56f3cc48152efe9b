using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Matching;

/// <summary>A design factor that a law asks for, and what falls short of it weighs.</summary>
/// <param name="Limit">The least factor.</param>
/// <param name="Severity">A stop where the law is plain; unknown where it hangs on a fact that nobody gave.</param>
/// <param name="Pointer">The member that would settle it, or the factor itself.</param>
/// <param name="Why">Why it holds, in words.</param>
internal sealed record LawFactor(RuleLimit Limit, Severity Severity, string Pointer, string Why);

/// <summary>Rotation resistant hoist ropes, 29 CFR 1926.1414(e), and what hangs persons, 29 CFR 1926.1431(g).</summary>
internal static class HoistingLaw
{
    /// <summary>The factors that hold for this duty, none for most.</summary>
    public static IEnumerable<LawFactor> Of(MatchScope scope)
    {
        var duty = scope.Input.Duty;
        var isResistant = IsRotationResistant(scope.Input);
        // Mines and lifts have factors of their own for persons.
        var hangsPersons = duty is { LiftsPersons: Fact.Yes or Fact.Unknown, Use: not (DutyUse.MineHoist or DutyUse.Lift) };
        return [.. duty.Use == DutyUse.HoistRope ? Hoisting(scope.Rules, duty, isResistant) : [], .. hangsPersons
            ? Persons(scope.Rules, duty, isResistant) : []];
    }

    /// <summary>Null where nobody says whether it is, or somebody says that nobody knows.</summary>
    private static bool? IsRotationResistant(MatchInput input) => (input.Duty.RotationResistance, input.Rope.IsRotationResistant) switch
    {
        (RotationResistance.TypeI or RotationResistance.TypeII or RotationResistance.TypeIII, _) => true,
        (RotationResistance.Unknown, false) => null,
        (_, var byRope) => byRope,
    };

    /// <summary>What would tell whether the rope is rotation resistant.</summary>
    private static string Teller(MatchDuty duty) => duty.RotationResistance is null ? MatchPointers.Function
        : MatchPointers.RotationResistance;

    private static IEnumerable<LawFactor> Hoisting(MatchingRules rules, MatchDuty duty, bool? isResistant)
    {
        if (isResistant == false)
        {
            yield break;
        }

        if (isResistant is null)
        {
            yield return new(rules.RotationResistant, Severity.Unknown, Teller(duty), "nobody says whether the rope is rotation resistant");
            yield break;
        }

        yield return new(rules.RotationResistantLeast, Severity.Stop, MatchPointers.DesignFactor, "no rotation resistant rope goes lower");
        if (duty is not { RotationResistance: RotationResistance.TypeI, MakersApproval: true })
        {
            yield return (duty.RotationResistance, duty.MakersApproval, duty.DutyCycle) switch
            {
                (null or RotationResistance.Unknown, _, _) =>
                    new(rules.RotationResistant, Severity.Unknown, MatchPointers.RotationResistance,
                    "nobody says of which type the rotation resistant rope is"),
                (RotationResistance.TypeI, false, _) => new(rules.RotationResistant, Severity.Stop, MatchPointers.MakersApproval,
                    "the makers of rope and machine don't both approve less in writing"),
                (RotationResistance.TypeI, _, _) => new(rules.RotationResistant, Severity.Unknown, MatchPointers.MakersApproval,
                    "nobody says that the makers of rope and machine both approve less in writing"),
                (_, _, true) => new(rules.RotationResistant, Severity.Stop, MatchPointers.DesignFactor,
                    "types II and III go no lower on duty cycle or for repeated lifts"),
                _ => new(rules.RotationResistant, Severity.Unknown, MatchPointers.DesignFactor,
                    "types II and III go lower only for single lifts under (e)(3), which a qualified person inspects and records"),
            };
        }
    }

    /// <summary>The law speaks of a personnel platform's rigging: of other ropes nobody knows whether less is allowed.</summary>
    private static IEnumerable<LawFactor> Persons(MatchingRules rules, MatchDuty duty, bool? isResistant)
    {
        var (isRigging, isTold) = (duty.Use is DutyUse.Sling or DutyUse.Pendant, duty.LiftsPersons == Fact.Yes);
        var severity = isRigging && isTold ? Severity.Stop : Severity.Unknown;
        var pointer = isTold ? MatchPointers.DesignFactor : MatchPointers.LiftsPersons;
        var why = isTold ? "it hangs persons" : "nobody knows whether it hangs persons";
        yield return new(isRigging ? rules.Persons : rules.PersonsElsewhere, severity, pointer, why);
        if (isResistant != false)
        {
            var limit = isRigging ? rules.PersonsRotationResistant : rules.PersonsElsewhereRotationResistant;
            yield return isResistant == true
                ? new(limit, severity, pointer, why + ", by rotation resistant rope")
                : new(limit, Severity.Unknown, isTold ? Teller(duty) : pointer,
                why + ", and nobody says whether the rope is rotation resistant");
        }
    }
}
