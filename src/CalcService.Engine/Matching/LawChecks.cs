using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>Duties with a law of their own: mines and lifts.</summary>
internal static class LawChecks
{
    public static void Check(MatchScope scope)
    {
        if (scope.Input.Duty.Use == DutyUse.MineHoist)
        {
            CheckMine(scope, scope.Input.Duty);
        }
        else if (scope.Input.Duty.Use == DutyUse.Lift)
        {
            CheckLift(scope);
        }

        if (scope.Input.Duty is { ResinByDesign: false, Use: not DutyUse.MineHoist })
        {
            scope.Find(MineFindings.MediumNotByDesign, MatchPointers.ResinByDesign, severity: Severity.Unknown);
        }
    }

    private static void CheckMine(MatchScope scope, MatchDuty duty)
    {
        var missing = new List<(string Pointer, string What)>();
        if (duty.ResinByDesign is null)
        {
            missing.Add((MatchPointers.ResinByDesign, MineFindings.ByDesign));
        }
        else if (duty.ResinByDesign == false)
        {
            scope.Find(MineFindings.MediumNotByDesign, MatchPointers.ResinByDesign);
        }

        if (duty.Efficiency is { } efficiency && scope.Rules.MineAttachment.Judge(Measure.Fraction(efficiency)) is { IsBelow: true } weak)
        {
            scope.Find(MineFindings.AttachmentWeak, MatchPointers.Efficiency, weak);
        }
        else if (scope.Input.IsTypeTested != true)
        {
            missing.Add((MatchPointers.TypeTested, MineFindings.Holds));
        }

        scope.FindMissing(MineFindings.EvidenceMissing, missing, " and ");
    }

    private static void CheckLift(MatchScope scope)
    {
        var (basket, rope, rules) = (scope.Input.Socket.Basket, scope.Input.Rope.DiameterM, scope.Rules);
        void Say(string what, string member, bool isAtLeast, Measure found, RuleLimit limit)
        {
            var judged = limit.Judge(found);
            if (isAtLeast ? judged.IsBelow : judged.IsAbove)
            {
                scope.Find(MatchingFindings.LiftProportions, $"{MatchPointers.Basket}/{member}", judged, [MatchPointers.Diameter],
                    words: [new("what", what), new("word", isAtLeast ? "at least" : "at most")]);
            }
        }

        Say("The length in rope diameters", "length", true, Measure.Count(basket.LengthM / rope), rules.LiftTaperLength);
        Say("The small end's excess over the rope", "smallEndDiameter", false, Measure.Length(basket.SmallEndDiameterM - rope),
            rules.LiftSmallEndExcess);
        Say("The mouth in rope diameters", "largeEndDiameter", true, Measure.Count(basket.LargeEndDiameterM / rope), rules.LiftMouthLeast);
        Say("The mouth in rope diameters", "largeEndDiameter", false, Measure.Count(basket.LargeEndDiameterM / rope), rules.LiftMouthMost);
    }
}
