using CalcService.Engine.Findings;

namespace CalcService.Engine.Cones;

/// <summary>What a reading of the seating can't be, whatever a model expects and wherever it was read.</summary>
internal static class SeatingBounds
{
    /// <summary>
    /// What stands against a reading, with the limit that it is held against. A cone under load moves toward the small end only. One that moved
    /// by more than its rope's diameter is not seating: shrinkage and load let it move by a small part of that.
    /// </summary>
    /// <param name="readM">The reading.</param>
    /// <param name="beforeM">The most that was read under a smaller load before it; 0 where nothing was.</param>
    /// <param name="ropeDiameterM">Diameter of the rope.</param>
    public static (FindingDefinition Against, double LimitM)? Judge(double readM, double beforeM, double ropeDiameterM) =>
        Judged.IsAbove(readM, ropeDiameterM) ? (TestFindings.SeatedThrough, ropeDiameterM)
        : Judged.IsBelow(readM, beforeM) ? (TestFindings.SeatingContradicts, beforeM)
        : null;
}
