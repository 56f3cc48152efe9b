using CalcService.Engine.Findings;

namespace CalcService.Engine.Cones;

/// <summary>What a reading of the seating can't be, whatever a model expects and wherever it was read.</summary>
internal static class SeatingBounds
{
    /// <summary>
    /// What stands against a reading, with the limit that it is held against. A cone under load moves toward the small end only. One that
    /// moved by more than its rope's diameter is not seating: shrinkage and load let it move by a small part of that.
    /// </summary>
    /// <param name="readM">The reading.</param>
    /// <param name="beforeM">The most that was read under a smaller load before it; 0 where nothing was.</param>
    /// <param name="ropeDiameterM">Diameter of the rope; null where it isn't known.</param>
    public static (FindingDefinition Against, Judged Judged)? Judge(double readM, double beforeM, double? ropeDiameterM) =>
        ropeDiameterM is { } diameter && Judged.Length(readM, diameter) is { IsAbove: true } through ? (TestFindings.SeatedThrough, through)
        : Judged.Length(readM, beforeM) is { IsBelow: true } less ? (TestFindings.SeatingContradicts, less)
        : null;
}
