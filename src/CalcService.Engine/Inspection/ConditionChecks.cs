using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>What the eye finds on the end: each condition with the rule that takes it out.</summary>
internal static class ConditionChecks
{
    public static void Check(InspectionScope scope)
    {
        var input = scope.Input;
        Look(scope, EndCondition.Cracked, InspectionPointers.Cracks, Seen(input.Cracks), InspectionFindings.EndCracked,
            "whether it is cracked");
        Look(scope, EndCondition.Corroded, InspectionPointers.Corrosion, input.Corrosion, InspectionFindings.EndCorroded,
            "how far it is corroded", InspectionFindings.SurfaceCorroded);
        Look(scope, EndCondition.Worn, InspectionPointers.Wear, input.Wear, InspectionFindings.EndWorn, "how far it is worn",
            InspectionFindings.LightlyWorn);
        Look(scope, EndCondition.Bent, InspectionPointers.Bend, Seen(input.BendAtMouth), InspectionFindings.EndBent,
            "whether the rope is bent where it leaves the socket");
        Look(scope, EndCondition.ImproperlyApplied, InspectionPointers.Improper, Seen(input.ImproperlyApplied),
            InspectionFindings.EndImproper,
            "whether it was put together rightly");
        Look(scope, EndCondition.Slipped, InspectionPointers.Movement, Seen(input.ConeMovement), InspectionFindings.ConeMoved,
            "whether the cone or a wire has moved");
        if (input.RustBleed is null)
        {
            scope.Miss(InspectionPointers.RustBleed, "whether rust bleeds from the end");
        }
        else if (input.RustBleed == true)
        {
            scope.Find(InspectionFindings.RustBleeds, InspectionPointers.RustBleed);
        }

        if (input.Lubricant != LubricantState.Good)
        {
            scope.Find(InspectionFindings.LubricantPoor, InspectionPointers.Lubricant,
                words: new FindingWord("state", input.Lubricant == LubricantState.Dry ? "dry or gone" : "not told"));
        }
    }

    private static Degree Seen(bool? fact) => fact switch { null => Degree.Unknown, false => Degree.None, _ => Degree.Heavy };

    private static void Look(
        InspectionScope scope, EndCondition condition, string pointer, Degree seen, FindingDefinition definition, string what,
        FindingDefinition? onlyLight = null)
    {
        var rules = scope.Rules.Conditions.Where(rule => rule.Condition == condition).Select(rule => rule.Limit).ToArray();
        // A rule of the chosen set comes first, then the one that holds for all: there is one for each condition.
        var rule = Array.Find(rules, limit => limit.RuleSet == scope.Input.RuleSet)
            ?? Array.Find(rules, limit => limit.RuleSet == PouringRules.General)!;
        var outcome = seen switch { Degree.Unknown => CheckOutcome.Undetermined, Degree.Heavy => CheckOutcome.Fail,
            _ => CheckOutcome.Pass };
        scope.Check("end-" + Id(condition), outcome, Severity.Stop, rule, missing: outcome == CheckOutcome.Undetermined ? [pointer] : []);
        switch (seen)
        {
            case Degree.Unknown:
                scope.Miss(pointer, what);
                break;
            case Degree.Light:
                scope.Find(onlyLight!, pointer);
                break;
            case Degree.Heavy:
                scope.Find(definition, pointer, source: rule.Source, words: new FindingWord("document", Author(rule)));
                break;
        }
    }

    /// <summary>Who takes the end out: the law, or we until somebody has decided as the law asks.</summary>
    private static string Author(RuleLimit rule) => rule is { Source.Basis: Basis.Derived, RuleSet: not PouringRules.General }
        ? $"our own rule until a competent person has decided, as {rule.Source.Document} asks" : rule.Source.Document;

    private static string Id(EndCondition condition) => condition switch
    {
        EndCondition.ImproperlyApplied => "improperly-applied",
        EndCondition.Corroded => "corroded",
        EndCondition.Cracked => "cracked",
        EndCondition.Bent => "bent",
        EndCondition.Worn => "worn",
        _ => "slipped",
    };
}
