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
        var lost = new List<Reduced>();
        if (!isMine)
        {
            Diameter(scope, "diameter-nominal", rules.NominalDiameterLoss, input.Rope.DiameterM, InspectionPointers.Diameter, lost);
        }

        // The baseline is the mine's measure: elsewhere it counts where somebody took it.
        if (isMine || input.BaselineDiameterM is not null)
        {
            Diameter(scope, "diameter-baseline", rules.BaselineDiameterLoss, input.BaselineDiameterM, InspectionPointers.Baseline, lost);
        }
        else
        {
            scope.Check("diameter-baseline", CheckOutcome.NotApplicable, Severity.Note, rules.BaselineDiameterLoss);
        }

        SayReduced(scope, lost);
        if (EndFit.ThickestM(input.Rope, scope.Book.Pouring.Fit) is { } thickest)
        {
            scope.Find(BoundFindings.RopeThick, InspectionPointers.MeasuredDiameter, Measure.Length(input.Rope.OverallDiameterM), Measure.Length(thickest), [InspectionPointers.Diameter]);
        }

        AskPlausible(scope, "baseline", input.BaselineDiameterM, InspectionPointers.Baseline, canBeThin: false);
        if (input.Rope.MeasuredDiameterM is null)
        {
            scope.Find(InspectionFindings.DiameterMissing, InspectionPointers.MeasuredDiameter, words: new FindingWord("which", "measured"));
        }

        if (input.StrengthLoss is not { } weaker)
        {
            scope.Check("strength", CheckOutcome.NotApplicable, Severity.Note, rules.StrengthLoss);
            return;
        }

        if (Judge(scope, "strength", rules.StrengthLoss, weaker))
        {
            scope.Exceed(InspectionFindings.StrengthLost, InspectionPointers.StrengthLoss, rules.StrengthLoss, Measure.Fraction(weaker), []);
        }
    }

    /// <summary>1 − d/d₀: the share of the diameter that is gone; negative where the rope is thicker.</summary>
    [Formula("diameter-loss", "definition", "docs/service-inspections.md", Basis.Derived, Symbol = "λ", Name = "loss of diameter",
        Expression = "1 − d/d_0", Kind = QuantityKind.Fraction, Range = "both measured the same way, under the same tension")]
    public static double DiameterLoss(double measuredM, double referenceM, Trace trace) =>
        trace.Step("diameter-loss", 1 - (measuredM / referenceM), new("d", Measure.Length(measuredM)), new("d_0", Measure.Length(referenceM)));

    private static void Diameter(InspectionScope scope, string id, RuleLimit rule, double? reference, string pointer, List<Reduced> reduced)
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

        var lost = DiameterLoss(now, from, scope.Trace);
        if (Judge(scope, id, rule, lost))
        {
            reduced.Add(new(rule, lost, pointer));
        }
    }

    /// <summary>A rope that became thinner is one fact, however many measures it is held against: a limit that holds says it, then the one exceeded most.</summary>
    private static void SayReduced(InspectionScope scope, IReadOnlyList<Reduced> reduced)
    {
        if (reduced.OrderByDescending(one => scope.WeightOf(one.Rule)).ThenByDescending(one => one.Share / one.Rule.Si).FirstOrDefault() is { } worst)
        {
            scope.Exceed(InspectionFindings.DiameterReduced, InspectionPointers.MeasuredDiameter, worst.Rule, Measure.Fraction(worst.Share),
                [worst.Pointer, .. reduced.Select(one => one.Pointer).Where(pointer => pointer != worst.Pointer)]);
        }
    }

    /// <summary>A diameter that no rope of this size has: a slip, or another rope. A baseline that is too thin would hide any loss.</summary>
    private static void AskPlausible(InspectionScope scope, string which, double? diameterM, string pointer, bool canBeThin)
    {
        var (bounds, nominal) = (scope.Book.Pouring.Fit, scope.Input.Rope.DiameterM);
        var (least, most) = ((1 - bounds.Thinning.Si) * nominal, (1 + bounds.Thickening.Si) * nominal);
        if (diameterM is { } found && (Judged.IsAbove(found, most) || (!canBeThin && Judged.IsBelow(found, least))))
        {
            scope.Find(InspectionFindings.DiameterImplausible, pointer, Measure.Length(found), Measure.Length(found > most ? most : least), [InspectionPointers.Diameter],
                words: [new("which", which), new("nominal", Measure.Length(nominal))]);
        }
    }

    /// <returns>Whether the limit is exceeded.</returns>
    private static bool Judge(InspectionScope scope, string id, RuleLimit rule, double lost)
    {
        var isExceeded = Judged.IsAbove(lost, rule.Si);
        scope.Check(id, isExceeded ? scope.OutcomeOf(rule) : CheckOutcome.Pass, scope.WeightOf(rule), rule, Measure.Fraction(lost), lost / rule.Si,
            isExceeded ? scope.MissingOf(rule) : []);
        return isExceeded;
    }

    /// <summary>A share of a diameter that is gone and is more than a rule allows.</summary>
    private sealed record Reduced(RuleLimit Rule, double Share, string Pointer);
}
