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
        if (EndFit.Thickness(input.Rope, scope.Book.Pouring.Fit) is { IsAbove: true } thick)
        {
            scope.Find(BoundFindings.RopeThick, InspectionPointers.MeasuredDiameter, thick, [InspectionPointers.Diameter]);
        }

        AskPlausible(scope, "baseline", input.BaselineDiameterM, InspectionPointers.Baseline);
        if (input.Rope.MeasuredDiameterM is null)
        {
            scope.Find(InspectionFindings.DiameterMissing, InspectionPointers.MeasuredDiameter,
                words: new FindingWord("which", "measured"));
        }

        if (input.StrengthLoss is not { } weaker)
        {
            scope.Check("strength", CheckOutcome.NotApplicable, Severity.Note, rules.StrengthLoss);
            return;
        }

        if (Judge(scope, "strength", rules.StrengthLoss, weaker).IsAbove)
        {
            scope.Exceed(InspectionFindings.StrengthLost, InspectionPointers.StrengthLoss, rules.StrengthLoss, Measure.Fraction(weaker),
                []);
        }
    }

    /// <summary>1 − d/d₀: the share of the diameter that is gone; negative where the rope is thicker.</summary>
    [Formula("diameter-loss", "definition", "/docs/service-inspections", Basis.Derived, Symbol = "λ", Name = "loss of diameter",
        Expression = "1 − d/d_0", Kind = QuantityKind.Fraction, Range = "both measured the same way, under the same tension")]
    public static double DiameterLoss(double measuredM, double referenceM, Trace trace) =>
        trace.Step("diameter-loss", 1 - (measuredM / referenceM), new("d", Measure.Length(measuredM)),
        new("d_0", Measure.Length(referenceM)));

    private static void Diameter(InspectionScope scope, string id, RuleLimit rule, double? reference, string pointer, List<Reduced> reduced)
    {
        var measured = scope.Input.Rope.MeasuredDiameterM;
        if (reference is null)
        {
            scope.Find(InspectionFindings.DiameterMissing, pointer, words: new FindingWord("which", "baseline"));
        }

        if (reference is not { } from || measured is not { } now)
        {
            string[] missing = [.. measured is null ? new[] { InspectionPointers.MeasuredDiameter } : [], .. reference is null
                ? new[] { pointer } : []];
            scope.Check(id, CheckOutcome.Undetermined, Severity.Unknown, rule, missing: missing);
            return;
        }

        var lost = DiameterLoss(now, from, scope.Trace);
        if (Judge(scope, id, rule, lost) is { IsAbove: true } judged)
        {
            reduced.Add(new(rule, judged, pointer));
        }
    }

    /// <summary>
    /// A rope that became thinner is one fact, however many measures it is held against: a limit that holds says it, then the one exceeded
    /// most.
    /// </summary>
    private static void SayReduced(InspectionScope scope, IReadOnlyList<Reduced> reduced)
    {
        if (reduced.OrderByDescending(one => scope.WeightOf(one.Rule)).ThenByDescending(one =>
            one.Judged.Share).FirstOrDefault() is { } worst)
        {
            scope.Exceed(InspectionFindings.DiameterReduced, InspectionPointers.MeasuredDiameter, worst.Rule, worst.Judged.Measured!.Value,
                [worst.Pointer, .. reduced.Select(one => one.Pointer).Where(pointer => pointer != worst.Pointer)]);
        }
    }

    /// <summary>
    /// A diameter that no rope of this size has: a slip, or another rope. A baseline that is too thin would hide any loss.
    /// </summary>
    private static void AskPlausible(InspectionScope scope, string which, double? diameterM, string pointer)
    {
        var (bounds, nominal) = (scope.Book.Pouring.Fit, Measure.Length(scope.Input.Rope.DiameterM));
        Measure? found = diameterM is { } metres ? Measure.Length(metres) : null;
        var (thin, thick) = (new Judged(found, bounds.Thinning.Below(nominal)), new Judged(found, bounds.Thickening.Above(nominal)));
        if (thin.IsBelow || thick.IsAbove)
        {
            scope.Find(InspectionFindings.DiameterImplausible, pointer, thick.IsAbove ? thick : thin, [InspectionPointers.Diameter],
                words: [new("which", which), new("nominal", nominal)]);
        }
    }

    private static Judged Judge(InspectionScope scope, string id, RuleLimit rule, double lost)
    {
        var judged = rule.Judge(Measure.Fraction(lost));
        scope.Check(id, judged.IsAbove ? scope.OutcomeOf(rule) : CheckOutcome.Pass, scope.WeightOf(rule), rule, judged.Measured,
            judged.Share,
            judged.IsAbove ? scope.MissingOf(rule) : []);
        return judged;
    }

    /// <summary>A share of a diameter that is gone and is more than a rule allows.</summary>
    private sealed record Reduced(RuleLimit Rule, Judged Judged, string Pointer);
}
