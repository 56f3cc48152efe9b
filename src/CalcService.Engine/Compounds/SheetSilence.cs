using CalcService.Engine.Findings;

namespace CalcService.Engine.Compounds;

/// <summary>What a sheet leaves out.</summary>
internal static class SheetSilence
{
    /// <summary>The sheet doesn't state what a safety rule needs.</summary>
    public static void SheetSilent(this CalculationScope scope, string pointer, string what) =>
        scope.Find(CompoundFindings.SheetSilent, pointer, words: new FindingWord("what", what));
}
