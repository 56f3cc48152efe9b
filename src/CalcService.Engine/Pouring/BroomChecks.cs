using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Whether broom and bore are as the compound needs them, as far as the request says how they are.</summary>
internal static class BroomChecks
{
    public static void Check(PourScope scope, PourEnd end, string pointer)
    {
        CheckLeftInBroom(scope, end, pointer);
        CheckParts(scope, end, pointer);
        CheckCleaning(scope, end, pointer);
        if (end.Bore is { } bore)
        {
            scope.CheckBore(bore, pointer);
        }

        if (end.HasReleaseAgent)
        {
            scope.Find(PouringFindings.ReleaseAgent, pointer + "/releaseAgent");
        }

        CheckOpening(scope, end, pointer);
    }

    private static void CheckOpening(PourScope scope, PourEnd end, string pointer)
    {
        Measure? angle = end.BroomAngleRad is { } opened ? Measure.Angle(opened) : null;
        if (scope.Rules.BroomAngle.Judge(angle) is { IsAbove: true } wide)
        {
            scope.Find(PouringFindings.BroomWide, pointer + "/broomAngle", wide);
        }
        else if (scope.Rules.Fit.NarrowBroom.Judge(angle) is { IsBelow: true } narrow)
        {
            scope.Find(PouringFindings.BroomNarrow, pointer + "/broomAngle", narrow);
        }
    }

    private static void CheckLeftInBroom(PourScope scope, PourEnd end, string pointer)
    {
        if (end.FibreCore == BroomPart.Left)
        {
            scope.Find(BroomFindings.LeftInBroom, pointer + "/fibreCore", words: new FindingWord("what", "fibre core"));
        }

        if (end.Plastic == BroomPart.Left)
        {
            scope.Find(BroomFindings.LeftInBroom, pointer + "/plastic", source: BroomFindings.PlasticOnWires,
                words: new FindingWord("what", "plastic"));
        }
    }

    private static void CheckParts(PourScope scope, PourEnd end, string pointer)
    {
        void Contradicted(string part, string member, string what) =>
            scope.Find(BroomFindings.PartContradicted, pointer + part, related: [pointer + member], words: new FindingWord("what", what));

        if (end.Rope.Core == RopeCore.Fibre && end.FibreCore == BroomPart.None)
        {
            Contradicted("/fibreCore", "/rope/core", "a fibre core");
        }

        if (end.Rope.PlasticFilled == Fact.Yes && end.Plastic == BroomPart.None)
        {
            Contradicted("/plastic", "/rope/plasticFilled", "plastic in it");
        }
    }

    private static void CheckCleaning(PourScope scope, PourEnd end, string pointer)
    {
        if (end.Cleaner is Cleaner.Acid or Cleaner.Flux)
        {
            scope.Find(BroomFindings.CleanerForbidden, pointer + "/cleaner",
                words: new FindingWord("cleaner", end.Cleaner == Cleaner.Acid ? "acid" : "flux"));
        }

        if (end.DriedAt > scope.Input.PourAt)
        {
            scope.Find(PouringFindings.BroomNotDry, pointer + "/driedAt", related: [PourPointers.PourAt]);
        }
        else if (end.DriedAt is { } dried)
        {
            scope.CheckDried(dried, pointer + "/driedAt", scope.Input.PourAt, PourPointers.PourAt, scope.Rules.Fit.DriedFor);
        }
    }
}
