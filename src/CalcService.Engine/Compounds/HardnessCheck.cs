using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>Where the hardness was read.</summary>
public enum HardnessPlace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>At the mouth of the basket.</summary>
    Mouth,

    /// <summary>At the lip, the small end.</summary>
    Lip,

    /// <summary>On the witness sample.</summary>
    WitnessSample,
}

/// <summary>Hardness of the cured compound as it was read.</summary>
public sealed record HardnessReading(string? Method = null, double? Value = null, HardnessPlace ReadAt = HardnessPlace.Unknown);

/// <summary>A hardness that was read, beside the one that the sheet asks for. Numbers of two methods can't be compared.</summary>
internal static class HardnessCheck
{
    private const string SheetAt = "/compound/sheet/hardness";

    /// <summary>Writes both checks and finds what was read too low or at another place than the lip.</summary>
    /// <param name="scope">Takes checks and findings.</param>
    /// <param name="least">What the sheet asks for; null where it has no number, and a reading is a trace, no more.</param>
    /// <param name="read">What was read.</param>
    /// <param name="at">The member that gives it.</param>
    /// <returns>The fact behind it, for the calculation to ask for where it isn't stated; null where the sheet has no number.</returns>
    public static StatedFact? Check(CheckScope scope, SheetHardness? least, HardnessReading read, string at)
    {
        CheckPlace(scope, read, at);
        return least is null ? null : CheckNumber(scope, least, read, at);
    }

    private static StatedFact CheckNumber(CheckScope scope, SheetHardness least, HardnessReading read, string at)
    {
        var fact = Fact(least, read, at);
        var judged = new Judged(read.Value is { } value ? Measure.Count(value) : null, Limit.Of(Measure.Count(least.Minimum)));
        if (fact.Stated != Stated.Known)
        {
            scope.Write("hardness", CheckOutcome.Undetermined, HardnessFindings.Low, judged, [fact.Pointer]);
        }
        else
        {
            var low = judged.IsBelow ? HardnessFindings.Low : null;
            scope.Weigh("hardness", low, HardnessFindings.Low, judged);
            if (low is not null)
            {
                scope.Find(low, at + "/value", judged, [SheetAt]);
            }
        }

        return fact;
    }

    private static void CheckPlace(CheckScope scope, HardnessReading read, string at)
    {
        if (read.Value is null)
        {
            return;
        }

        var elsewhere = read.ReadAt == HardnessPlace.Lip ? null : HardnessFindings.NotAtLip;
        scope.Weigh("hardness-place", elsewhere, HardnessFindings.NotAtLip);
        if (elsewhere is not null)
        {
            scope.Find(elsewhere, at + "/readAt");
        }
    }

    private static StatedFact Fact(SheetHardness least, HardnessReading read, string at) =>
        read.Value is null ? StatedFact.Of(at + "/value", "the hardness of the compound", isThere: false, isNeeded: true)
            : StatedFact.Of(at + "/method", $"the hardness by the sheet's method, {least.Method}", read.Method == least.Method,
            isNeeded: true);
}
