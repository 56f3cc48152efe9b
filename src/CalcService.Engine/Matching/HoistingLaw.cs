using System.Globalization;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
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
    /// <summary>From so many strands on a rope has several layers of them, which are laid against rotation; one layer has six or eight.</summary>
    private const int ManyStrands = 10;

    /// <summary>The factors that hold for this duty, none for most.</summary>
    public static IEnumerable<LawFactor> Of(MatchScope scope)
    {
        var duty = scope.Input.Duty;
        var isResistant = IsRotationResistant(scope.Input);
        // Where somebody was asked whether persons hang from it and doesn't know, nobody knows that they don't.
        var mayHangPersons = duty is { LiftsPersons: Fact.Yes or Fact.Unknown, Use: not (DutyUse.MineHoist or DutyUse.Lift or DutyUse.Mooring) };
        return
        [
            .. duty.Use == DutyUse.HoistRope ? Hoisting(scope.Rules, duty, isResistant) : [],
            .. mayHangPersons ? Persons(scope.Rules, duty.LiftsPersons == Fact.Yes, isResistant) : [],
        ];
    }

    /// <summary>Null where nobody says what the rope does and its class doesn't tell.</summary>
    private static bool? IsRotationResistant(MatchInput input)
    {
        var function = input.Rope.Function;
        var isSaid = function == RopeFunction.RotationResistant || input.Duty.RotationResistance != RotationResistance.Unknown;
        return isSaid || Strands(input.Rope.Construction) >= ManyStrands ? true : function == RopeFunction.Unknown ? null : false;
    }

    /// <summary>Strands by the designation: 18 of an 18x7.</summary>
    private static int Strands(string? construction) =>
        int.TryParse(construction?.Split('x')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var strands) ? strands : 0;

    private static IEnumerable<LawFactor> Hoisting(MatchingRules rules, MatchDuty duty, bool? isResistant)
    {
        if (isResistant == false)
        {
            yield break;
        }

        if (isResistant is null)
        {
            yield return new(rules.RotationResistant, Severity.Unknown, MatchPointers.Function, "nobody says whether the rope is rotation resistant");
            yield break;
        }

        yield return new(rules.RotationResistantLeast, Severity.Stop, MatchPointers.DesignFactor, "no rotation resistant rope goes lower");
        if (duty is not { RotationResistance: RotationResistance.TypeI, MakersApproval: true })
        {
            yield return (duty.RotationResistance, duty.MakersApproval, duty.DutyCycle) switch
            {
                (RotationResistance.Unknown, _, _) => new(rules.RotationResistant, Severity.Unknown, MatchPointers.RotationResistance,
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

    private static IEnumerable<LawFactor> Persons(MatchingRules rules, bool isSaid, bool? isResistant)
    {
        if (!isSaid)
        {
            yield return new(isResistant == false ? rules.Persons : rules.PersonsRotationResistant, Severity.Unknown, MatchPointers.LiftsPersons,
                "nobody knows whether it hangs persons");
            yield break;
        }

        yield return new(rules.Persons, Severity.Stop, MatchPointers.DesignFactor, "it hangs persons");
        if (isResistant != false)
        {
            var limit = rules.PersonsRotationResistant;
            yield return isResistant == true
                ? new(limit, Severity.Stop, MatchPointers.DesignFactor, "it hangs persons by rotation resistant rope")
                : new(limit, Severity.Unknown, MatchPointers.Function, "it hangs persons, and nobody says whether the rope is rotation resistant");
        }
    }
}
