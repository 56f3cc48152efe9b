using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>How long the readings hold.</summary>
internal static class ReadingAge
{
    /// <summary>When the readings cease to hold, the first of them; null where there are none.</summary>
    public static DateTimeOffset? ValidUntil(PourScope scope, IReadOnlyList<Mix> mixes)
    {
        var conditions = scope.Conditions;
        if (conditions is { AirK: null, CompoundK: null, RelativeHumidity: null } && scope.Steel.All.Length == 0)
        {
            return null;
        }

        var rule = scope.Rules.ReadingsValidFor;
        if (conditions.ValidForS is null)
        {
            scope.Assume("/conditions/validFor", rule);
        }

        var holds = conditions.ValidForS is { } stated ? Limit.Of(Measure.Duration(stated)) : rule.Limit!.Value;

        if (conditions.ReadAt is null)
        {
            scope.Assume(PourPointers.ReadAt, "readings taken as read at the pour", null, AssumptionOrigin.Default);
        }

        var read = new[] { (At: conditions.ReadAt ?? scope.Input.PourAt, Pointer: PourPointers.ReadAt) }
            .Concat(scope.Input.Ends.Select((end, i) =>
            (At: end.SocketReadAt ?? DateTimeOffset.MaxValue, Pointer: $"{PourPointers.Ends}/{i}/socket/temperature/readAt")))
            .Where(reading => reading.At < DateTimeOffset.MaxValue).ToArray();
        foreach (var (at, pointer) in read)
        {
            scope.CheckReadings(at, pointer, scope.Input.PourAt, PourPointers.PourAt, holds);
        }

        var until = Instants.After(read.Min(reading => reading.At),
            rule.InPlaceOf(conditions.ValidForS))?.ToOffset(scope.Input.PourAt.Offset);
        var late = mixes.FirstOrDefault(mix => mix.StartsAt > until);
        if (late is { StartsAt: { } start } && until >= scope.Input.PourAt)
        {
            scope.Find(PouringFindings.ReadAgain, PourPointers.ReadAt,
                words: [new("mix", Measure.Count(late.Number)), new("startsAt", Instants.Clock(start)),
                new("validUntil", Instants.Clock(until))]);
        }

        return until;
    }
}
