using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>The readings of the day against the sheet and the dew point, as a pour plan holds them.</summary>
internal static class ReadingDayChecks
{
    public static RecomputedPlan Check(AuditScope scope, RecomputedPlan plan)
    {
        var readings = scope.Input.Readings;
        var air = RecordedAir.Of(scope.Input)?.At(0);
        var asked = scope.Ask()
            .Fact(HeldChecks.HasAir(readings), AuditPointers.Air, "the air temperature")
            .Fact(readings.SteelK is not null, AuditPointers.Steel, "the steel temperature");
        Severity? against = null;
        if (air is { } airK && readings.RelativeHumidity is { } humidity)
        {
            var dew = scope.CheckDew(scope.Book.Pouring.DewMargin,
                Reading.Taken(Reading.Of(Reading.Steel, AuditPointers.Steel, readings.SteelK)),
                new(Reading.Air, AuditPointers.Air, airK), humidity, AuditPointers.Humidity);
            plan = plan with { DewPointK = dew.DewPointK, FrostPointK = dew.FrostPointK };
            against = dew.Against?.Severities[0];
        }

        CheckRange(scope, air, asked.Gaps);
        asked.Fact(readings.RelativeHumidity is not null, AuditPointers.Humidity, "the relative humidity");
        scope.Judge("dew-point", against, SteelFindings.SteelAtDewPoint, asked.Gaps,
            new(Temperature(readings.SteelK), Temperature(plan.FrostPointK ?? plan.DewPointK) is { } point ? Limit.Of(point) : null));
        return plan;
    }

    private static void CheckRange(AuditScope scope, double? airK, IReadOnlyList<Gap> gaps)
    {
        var (sheet, readings) = (scope.Input.Compound, scope.Input.Readings);
        if (sheet.Pouring is null)
        {
            scope.SheetSilent("/compound/sheet/pouring", "pouring range");
            scope.Write("pouring-range", CheckOutcome.Undetermined, CompoundFindings.OutsidePouringRange,
                missing: ["/compound/sheet/pouring"]);
            return;
        }

        var isInside = scope.CheckPouringRange(sheet, Reading.Taken(Reading.Of(Reading.Air, AuditPointers.Air, airK),
            Reading.Of(Reading.Steel, AuditPointers.Steel, readings.SteelK),
            Reading.Of(Reading.Compound, AuditPointers.Compound, readings.CompoundK),
            Reading.Of(Reading.Wires, "/rope/temperature", scope.Input.Rope?.TemperatureK)));
        Gap[] compound = [.. scope.Ask().Fact(readings.CompoundK is not null, AuditPointers.Compound, "the compound temperature").Gaps];
        scope.Judge("pouring-range", isInside ? null : Severity.Stop, CompoundFindings.OutsidePouringRange, [.. gaps, .. compound]);
    }

    private static Measure? Temperature(double? kelvins) => kelvins is { } known ? Measure.Temperature(known) : null;
}
