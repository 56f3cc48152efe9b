using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring;

/// <summary>
/// Facts behind stop rules: those of the ends and of the place. Those of the lots are asked for once it is known which are used.
/// </summary>
internal static class StatedOnTheDay
{
    public static void Check(PourScope scope, IReadOnlyList<PlannedEnd> ends)
    {
        var input = scope.Input;
        scope.Ask(OfThePlace(scope));
        for (var i = 0; i < input.Ends.Count; i++)
        {
            scope.Ask(OfAnEnd(input.Ends[i], ends[i], $"{PourPointers.Ends}/{i}"));
        }
    }

    private static IEnumerable<StatedFact> OfThePlace(PourScope scope)
    {
        yield return StatedFact.Of(PourPointers.IgnitionSource, "whether something near the work can light the vapour",
            scope.Conditions.IgnitionSource, isNeeded: true);
        yield return StatedFact.Of(PourPointers.Place, "whether the work is indoors, outdoors or in a confined space",
            scope.Conditions.Place, isNeeded: false);
        yield return StatedFact.Of(PourPointers.Stock, "which lots are mixed, their state and whether they are held in quarantine",
            scope.HasLots, isNeeded: true);
        if (scope.Input.IntendedDose is { PerKit: not 0 } dose)
        {
            yield return StatedFact.Of(PourPointers.DoseAdded, "when the dose goes in", dose.Added, isNeeded: false);
        }

        // For a pour that is done now each reading is a finding of its own.
        foreach (var (name, pointer) in scope.Input.Purpose == Purpose.Plan ? ReadingChecks.Missing(scope) : [])
        {
            yield return StatedFact.Of(pointer, "the " + name, isThere: false, isNeeded: true);
        }
    }

    private static IEnumerable<StatedFact> OfAnEnd(PourEnd end, PlannedEnd planned, string at)
    {
        var rope = end.Rope;
        yield return StatedFact.Of(at + "/socket/bore", "the state of the bore", end.Bore, isNeeded: true);
        if (rope.Core == RopeCore.Fibre)
        {
            yield return StatedFact.Of(at + "/fibreCore", "what became of the fibre core", end.FibreCore, isNeeded: true);
        }

        if (Plastic(end, at) is { } plastic)
        {
            yield return plastic;
        }

        yield return StatedFact.Of(at + "/cleaner", "what the broom was cleaned with", end.Cleaner,
            isNeeded: rope.Lubricant is Lubricant.Heavy or Lubricant.Unknown);
        yield return StatedFact.Of(at + "/driedAt", "when the broom was dry", end.DriedAt is not null, isNeeded: false);
        yield return StatedFact.Of(at + "/tilt", "how far the rope leans", end.TiltRad is not null, isNeeded: false);
        yield return StatedFact.Of(at + "/straightBelow", "how much rope hangs straight below the socket", end.StraightBelowM is not null,
            isNeeded: false);
        yield return StatedFact.Of(at + "/socket/material/kind", "what the socket is made of", end.Metal, isNeeded: false);
        yield return StatedFact.Of(at + "/socket/breakingForce", "the strength of the socket", end.SocketBreakingForceN is not null,
            isNeeded: false);
        // It follows from construction, core and grade; a missing one of the first two is a finding of its own.
        yield return StatedFact.Of(at + "/rope/certificate/breakingForce", "the breaking force of the rope",
            planned.Rope.BreakingForceN is not null || !rope.IsIdentified, isNeeded: false);
    }

    /// <summary>What became of plastic answers for itself; else a rope without any needs no answer.</summary>
    private static StatedFact? Plastic(PourEnd end, string at) => (end.Plastic, end.Rope.PlasticFilled) switch
    {
        (null, Fact.No) => null,
        (null, Fact.Unknown) =>
        StatedFact.Of(at + "/rope/plasticFilled", "whether plastic fills the rope", end.Rope.PlasticFilled, isNeeded: false),
        var (fate, filled) => StatedFact.Of(at + "/plastic", "what became of plastic in the rope", fate, isNeeded: filled == Fact.Yes),
    };
}
