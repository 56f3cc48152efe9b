using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the day's readings allow a pour: pouring range and dew point.</summary>
internal static class ReadingChecks
{
    /// <summary>Checks all readings and returns the dew point and, below 0 °C, the frost point.</summary>
    public static (double? DewPointK, double? FrostPointK) Check(PourScope scope)
    {
        AskReadings(scope);
        scope.CheckPouringRange(scope.Input.Compound, [.. Reading.Taken(scope.Air, scope.Compound), .. scope.Steel.All]);
        if (scope.Air is not { } air || scope.Conditions.RelativeHumidity is not { } humidity)
        {
            return (null, null);
        }

        var dew = scope.CheckDew(scope.Rules.DewMargin, scope.Steel.All, air, humidity, PourPointers.Humidity);
        return (dew.DewPointK, dew.FrostPointK);
    }

    /// <summary>For a pour that is done now; the work to come reads them at its hold point.</summary>
    private static void AskReadings(PourScope scope)
    {
        if (scope.Input.Purpose != Purpose.Pour)
        {
            return;
        }

        var missing = Missing(scope).ToArray();
        if (missing.Length > 0)
        {
            scope.Find(CompoundFindings.ReadingMissing, missing[0].Pointer,
                related: [.. missing.Skip(1).Select(reading => reading.Pointer)],
                words: new FindingWord("reading", string.Join(", ", missing.Select(reading => reading.Name))));
        }
    }

    /// <summary>Readings that were not taken.</summary>
    public static IEnumerable<(string Name, string Pointer)> Missing(PourScope scope)
    {
        if (scope.Air is null)
        {
            yield return ("air temperature", PourPointers.Air);
        }

        if (scope.Steel.Coldest is null)
        {
            yield return ("steel temperature", PourPointers.Steel);
        }

        if (scope.Compound is null)
        {
            yield return ("compound temperature", PourPointers.Compound);
        }

        if (scope.Conditions.RelativeHumidity is null)
        {
            yield return ("relative humidity", PourPointers.Humidity);
        }
    }
}
