using CalcService.Engine.Findings;

namespace CalcService.Engine.Sockets;

/// <summary>The bore of a socket that a new cone goes into, judged the same way in every calculation.</summary>
internal static class BoreChecks
{
    /// <param name="scope">Takes the finding.</param>
    /// <param name="bore">What somebody saw in it.</param>
    /// <param name="pointer">Where the end stands in the request.</param>
    public static void CheckBore(this CalculationScope scope, BoreState bore, string pointer)
    {
        if (bore is BoreState.OldResin or BoreState.OldMetal)
        {
            scope.Find(BroomFindings.BoreNotClean, pointer + "/socket/bore",
                words: new FindingWord("what", bore == BoreState.OldResin ? "resin" : "metal"));
        }
    }
}
