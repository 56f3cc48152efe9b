using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>Where to cut, and whether the rope that is left is enough.</summary>
public static class LeftChecks
{
    /// <param name="scope">The inspection.</param>
    /// <param name="damageM">How far the damage reaches that a cut would take away; null where no cut helps, or nobody knows.</param>
    /// <param name="isReachKnown">Whether that is all that has to go.</param>
    internal static (double? CutM, RopeLeft Left) Check(InspectionScope scope, double? damageM, bool isReachKnown)
    {
        var (input, rule) = (scope.Input, scope.Rules.DrumTurns);
        double? cut = damageM is { } reach ? reach + scope.Rules.CutBeyond.Si : null;
        if (cut is { } length)
        {
            scope.Find(InspectionFindings.CutBeyond, InspectionPointers.Wires,
                new(Measure.Length(length), Limit.Of(scope.Rules.CutBeyond.Value, scope.Rules.CutBeyond.Source)));
        }

        var isMine = input.RuleSet == MatchingRules.MineHoist;
        // Elsewhere a drum is asked about where the end is said to be at one and the limit holds.
        var isAsked = isMine || (input.IsAtDrum == true && scope.Holds(rule));
        // Too few already are too few after a cut, whatever the drum.
        var turns = input.DrumTurnsLeft is not { } now ? null
            : cut is { } off && input.DrumDiameterM is { } drum ? TurnsAfterCut(now, off, drum, scope.Trace)
            : cut is null || rule.Judge(Measure.Count(now)).IsBelow ? now : (double?)null;
        var held = rule.Judge(turns is { } after ? Measure.Count(after) : null);
        var isFew = held.IsBelow;
        bool? drumEnough = turns is null || (isFew && !scope.Holds(rule)) ? null : !isFew;
        var missingPointer = input.DrumTurnsLeft is null ? InspectionPointers.DrumTurns : InspectionPointers.DrumDiameter;
        if (turns is null && (isAsked || input.DrumTurnsLeft is not null))
        {
            // A given number of turns that a cut changes by nobody knows how much helps no more than none.
            scope.Find(InspectionFindings.DrumTurnsMissing, missingPointer);
            scope.Check("drum-turns", CheckOutcome.Undetermined, Severity.Unknown, rule, missing: [missingPointer]);
        }
        else if (turns is not { } left)
        {
            scope.Check("drum-turns", CheckOutcome.NotApplicable, Severity.Note, rule);
        }
        else
        {
            scope.Check("drum-turns", isFew ? scope.OutcomeOf(rule) : CheckOutcome.Pass, scope.WeightOf(rule), rule,
                held.Measured, left > 0 ? held.Need : null, isFew ? scope.MissingOf(rule) : []);
            if (isFew)
            {
                scope.Exceed(InspectionFindings.DrumTurnsFew, InspectionPointers.DrumTurns, rule, Measure.Count(left), []);
            }
        }

        Judged? spare = cut is { } needed && input.LengthLeftM is { } all ? Judged.Length(all, needed) : null;
        bool? lengthEnough = spare is { } known ? !known.IsBelow : null;
        if (lengthEnough == false)
        {
            scope.Find(InspectionFindings.RopeLeftShort, InspectionPointers.LengthLeft, spare!.Value);
        }

        if (cut is not null && lengthEnough is null && drumEnough is null && input.DrumTurnsLeft is null && !isAsked)
        {
            scope.Find(InspectionFindings.RopeLeftUnknown, InspectionPointers.LengthLeft, related: [InspectionPointers.DrumTurns]);
        }

        bool? enough = lengthEnough == false || drumEnough == false ? false : lengthEnough ?? drumEnough;
        // Turns that were counted, and of which nobody knows whether they are enough, leave it open; so does a cut that may have to be
        // longer.
        var isOpen = !isReachKnown || (drumEnough is null && input.DrumTurnsLeft is not null);
        return (cut, new(cut is null && !isReachKnown ? null : turns, enough == true && isOpen ? null : enough));
    }

    /// <summary>n′ = n − l/(π·D): full turns on a drum of diameter D (m, to the middle of the rope) after l (m) is cut off.</summary>
    [Formula("turns-after-cut", "length of rope on one turn of the drum", "/docs/service-inspections", Basis.Derived, Symbol = "n_c",
        Name = "turns on the drum after the cut",
        Expression = "n − l/(π·D)", Kind = QuantityKind.Count, Range = "one layer; the working length stays as it is")]
    public static double TurnsAfterCut(double turns, double cutM, double drumDiameterM, Trace trace) =>
        trace.Step("turns-after-cut", turns - (cutM / (Math.PI * drumDiameterM)),
            new("n", Measure.Count(turns)), new("l", Measure.Length(cutM)), new("D", Measure.Length(drumDiameterM)));
}
