using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Inspection;

/// <summary>Diameter and strength that the rope has lost.</summary>
public static class SizeChecks
{
    internal static void Check(InspectionScope scope)
    {
        var (input, rules) = (scope.Input, scope.Rules);
        var isMine = input.RuleSet == MatchingRules.MineHoist;
        if (!isMine)
        {
            Diameter(scope, "diameter-nominal", rules.NominalDiameterLoss, input.Rope.DiameterM, InspectionPointers.Diameter);
        }

        // The baseline is the mine's measure: elsewhere it counts where somebody took it.
        if (isMine || input.BaselineDiameterM is not null)
        {
            Diameter(scope, "diameter-baseline", rules.BaselineDiameterLoss, input.BaselineDiameterM, InspectionPointers.Baseline);
        }
        else
        {
            scope.Check("diameter-baseline", CheckOutcome.NotApplicable, Severity.Note, rules.BaselineDiameterLoss);
        }

        if (EndFit.ThickestM(input.Rope, scope.Book.Pouring.Fit) is { } thickest)
        {
            scope.Find(BoundFindings.RopeThick, InspectionPointers.MeasuredDiameter, Measure.Length(input.Rope.OverallDiameterM), Measure.Length(thickest), [InspectionPointers.Diameter]);
        }

        if (input.Rope.MeasuredDiameterM is null)
        {
            scope.Find(InspectionFindings.DiameterMissing, InspectionPointers.MeasuredDiameter, words: new FindingWord("which", "measured"));
        }

        if (input.StrengthLoss is not { } lost)
        {
            scope.Check("strength", CheckOutcome.NotApplicable, Severity.Note, rules.StrengthLoss);
            return;
        }

        Judge(scope, "strength", rules.StrengthLoss, lost, InspectionFindings.StrengthLost, InspectionPointers.StrengthLoss, []);
    }

    /// <summary>1 − d/d₀: the share of the diameter that is gone; negative where the rope is thicker.</summary>
    [Formula("diameter-loss", "definition", "docs/service-inspections.md", Basis.Derived, Symbol = "λ", Name = "loss of diameter",
        Expression = "1 − d/d_0", Kind = QuantityKind.Fraction, Range = "both measured the same way, under the same tension")]
    public static double DiameterLoss(double measuredM, double referenceM, Trace trace) =>
        trace.Step("diameter-loss", 1 - (measuredM / referenceM), new("d", Measure.Length(measuredM)), new("d_0", Measure.Length(referenceM)));

    private static void Diameter(InspectionScope scope, string id, RuleLimit rule, double? reference, string pointer)
    {
        var measured = scope.Input.Rope.MeasuredDiameterM;
        if (reference is null)
        {
            scope.Find(InspectionFindings.DiameterMissing, pointer, words: new FindingWord("which", "baseline"));
        }

        if (reference is not { } from || measured is not { } now)
        {
            string[] missing = [.. measured is null ? new[] { InspectionPointers.MeasuredDiameter } : [], .. reference is null ? new[] { pointer } : []];
            scope.Check(id, CheckOutcome.Undetermined, Severity.Unknown, rule, missing: missing);
            return;
        }

        Judge(scope, id, rule, DiameterLoss(now, from, scope.Trace), InspectionFindings.DiameterReduced, InspectionPointers.MeasuredDiameter, [pointer]);
    }

    private static void Judge(InspectionScope scope, string id, RuleLimit rule, double lost, FindingDefinition definition, string pointer, IReadOnlyList<string> related)
    {
        var isExceeded = Judged.IsAbove(lost, rule.Si);
        scope.Check(id, isExceeded ? scope.OutcomeOf(rule) : CheckOutcome.Pass, scope.WeightOf(rule), rule, Measure.Fraction(lost), lost / rule.Si,
            isExceeded ? scope.MissingOf(rule) : []);
        if (isExceeded)
        {
            scope.Exceed(definition, pointer, rule, Measure.Fraction(lost), related);
        }
    }
}
