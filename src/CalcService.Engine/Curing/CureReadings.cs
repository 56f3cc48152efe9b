using CalcService.Engine.Findings;
using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <summary>The readings at mixing, and the dose that goes with them.</summary>
internal static class CureReadings
{
    /// <summary>The air as a history in seconds from mixing, or null where it says nothing about the mixing.</summary>
    public static TemperatureHistory? Air(CureScope scope)
    {
        var (conditions, mixedAt) = (scope.Input.Conditions, scope.Input.MixedAt);
        if (conditions.ConstantAirK is { } constant)
        {
            return TemperatureHistory.Constant(constant, 0, scope.Rules.Horizon.Si);
        }

        if (conditions.AirSeries.Count == 0)
        {
            scope.Find(CompoundFindings.ReadingMissing, CurePointers.Air, words: new FindingWord("reading", "air temperature"));
            return null;
        }

        var history = new TemperatureHistory(
            [.. conditions.AirSeries.Select(point => (point.At - mixedAt).TotalSeconds)],
            [.. conditions.AirSeries.Select(point => point.Kelvins)]);
        if (!history.Covers(0) || history.EndS <= 0)
        {
            scope.Find(CuringFindings.ForecastMissesMixing, CurePointers.AirSeries, related: [CurePointers.MixedAt]);
            return null;
        }

        // Ageing starts with the mixing, not with the forecast.
        return history.From(0);
    }

    /// <summary>The steel as it was read; null where it wasn't.</summary>
    public static SteelHistory? Steel(CureScope scope, TemperatureHistory air) => scope.Input.Conditions is { SteelK: { } steel } conditions
        ? SteelHistory.Of(steel,
        [.. conditions.SteelSeries.Select(point => ((point.At - scope.Input.MixedAt).TotalSeconds, point.Kelvins))], air.EndS)
        : null;

    /// <summary>Holds each reading against the pouring range of the sheet.</summary>
    public static void Check(CureScope scope, TemperatureHistory? air)
    {
        var conditions = scope.Input.Conditions;
        var (airRead, steel, compound) = Read(scope, air?.At(0));
        var byThemselves = scope.Input.Ends.SelectMany((end, i) => Reading.Taken(
            Reading.Of(Reading.Socket, $"{CurePointers.Ends}/{i}/socket/temperature/value", end.SocketK),
            Reading.Of(Reading.Wires, $"{CurePointers.Ends}/{i}/rope/temperature", end.Rope.TemperatureK)));
        scope.CheckPouringRange(scope.Input.Compound, [.. Reading.Taken(airRead, steel, compound), .. byThemselves]);
        AskReading(scope, "steel", conditions.SteelK, CurePointers.Steel);
        AskReading(scope, "compound", conditions.CompoundK, CurePointers.Compound);
        if (scope.Input.Compound.Pouring is null)
        {
            scope.SheetSilent(CurePointers.PouringRange, "pouring range");
        }
    }

    /// <summary>The dose as given, else the sheet's, as the pour plan has it.</summary>
    public static int? Dose(CureScope scope, TemperatureHistory? air)
    {
        var (sheet, given) = (scope.Input.Compound, scope.Input.Doses);
        if (sheet.Doses.Count == 0)
        {
            if (given is null)
            {
                scope.SheetSilent(CurePointers.SheetDoses, "doses by temperature");
            }

            return given;
        }

        var (airRead, steel, compound) = Read(scope, air?.At(0));
        var asked = SheetDose.Of(scope, sheet, airRead, steel, compound);
        SheetDose.Check(scope, sheet, asked, given, CurePointers.Doses);
        if (given is null && asked is not null)
        {
            scope.Assume(CurePointers.Doses, "doses for each kit by the sheet, at the temperature that they go by",
                Measure.Count(asked.PerKit), AssumptionOrigin.Estimate);
        }

        return given ?? asked?.PerKit;
    }

    /// <summary>
    /// The dose that the sheet has for air of a temperature, steel and compound as they were read; null where it has none.
    /// </summary>
    public static int? DoseAt(CureScope scope, double airK)
    {
        var (air, steel, compound) = Read(scope, airK);
        return SheetDose.Decides(scope.Input.Compound, air, steel, compound) is { } decides ? scope.Input.Compound.DosesPerKitAt(decides.K)
            : null;
    }

    public static (Reading? Air, Reading? Steel, Reading? Compound) Read(CureScope scope, double? airK) => (
        Reading.Of(Reading.Air, CurePointers.Air, airK),
        Reading.Of(Reading.Steel, CurePointers.Steel, scope.Input.Conditions.SteelK),
        Reading.Of(Reading.Compound, CurePointers.Compound, scope.Input.Conditions.CompoundK));

    private static void AskReading(CureScope scope, string reading, double? kelvins, string pointer)
    {
        if (kelvins is null)
        {
            scope.Find(CompoundFindings.ReadingMissing, pointer, words: new FindingWord("reading", reading + " temperature"));
        }
    }
}
