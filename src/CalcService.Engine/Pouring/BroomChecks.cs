using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Whether broom and bore are as the compound needs them, as far as the request says how they are.</summary>
internal static class BroomChecks
{
    public static void Check(PourScope scope, PourEnd end, string pointer)
    {
        CheckLeftInBroom(scope, end, pointer);
        CheckCleaning(scope, end, pointer);
        if (end.Bore is Sockets.BoreState.OldResin or Sockets.BoreState.OldMetal)
        {
            scope.Find(PouringFindings.BoreNotClean, pointer + "/socket/bore",
                words: new FindingWord("what", end.Bore == Sockets.BoreState.OldResin ? "resin" : "metal"));
        }

        if (end.HasReleaseAgent)
        {
            scope.Find(PouringFindings.ReleaseAgent, pointer + "/releaseAgent");
        }

        if (end.Rope.IsUsed)
        {
            scope.Find(PouringFindings.UsedRope, pointer + "/rope/used");
        }

        var widest = scope.Rules.BroomAngle.Value!.Value;
        if (end.BroomAngleRad is { } angle && Judged.IsAbove(angle, widest.Si))
        {
            scope.Find(PouringFindings.BroomWide, pointer + "/broomAngle", Measure.Angle(angle), widest);
        }
    }

    private static void CheckLeftInBroom(PourScope scope, PourEnd end, string pointer)
    {
        if (end.FibreCore == BroomPart.Left)
        {
            scope.Find(PouringFindings.LeftInBroom, pointer + "/fibreCore", words: new FindingWord("what", "fibre core"));
        }

        if (end.Plastic == BroomPart.Left)
        {
            scope.Find(PouringFindings.LeftInBroom, pointer + "/plastic", source: Sockets.BroomFindings.PlasticOnWires, words: new FindingWord("what", "plastic"));
        }
        else if (end.Rope.IsPlasticFilled == true && end.Plastic == BroomPart.Unknown)
        {
            scope.Find(PouringFindings.PlasticFilled, pointer + "/rope/plasticFilled", related: [pointer + "/plastic"]);
        }
    }

    private static void CheckCleaning(PourScope scope, PourEnd end, string pointer)
    {
        if (end.Cleaner is Cleaner.Acid or Cleaner.Flux)
        {
            scope.Find(PouringFindings.CleanerForbidden, pointer + "/cleaner", words: new FindingWord("cleaner", end.Cleaner == Cleaner.Acid ? "acid" : "flux"));
        }

        if (end.DriedAt > scope.Input.PourAt)
        {
            scope.Find(PouringFindings.BroomNotDry, pointer + "/driedAt", related: [PourPointers.PourAt]);
        }
    }
}
