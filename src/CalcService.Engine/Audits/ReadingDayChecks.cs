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
        var isDry = true;
        if (air is { } airK && readings.RelativeHumidity is { } humidity)
        {
            var dew = DewPoint.OverWaterK(airK, humidity, scope.Trace);
            double? frost = dew < DewPoint.ZeroCelsiusK ? DewPoint.OverIceK(airK, humidity, scope.Trace) : null;
            plan = plan with { DewPointK = dew, FrostPointK = frost };
            isDry = readings.SteelK is not { } steel
                || scope.CheckDew(scope.Book.Pouring.DewMargin, "Steel", steel, AuditPointers.Steel, dew, frost, [AuditPointers.Air, AuditPointers.Humidity]);
        }

        CheckRange(scope, air, asked.Gaps);
        asked.Fact(readings.RelativeHumidity is not null, AuditPointers.Humidity, "the relative humidity");
        scope.Judge("dew-point", !isDry, SteelFindings.SteelAtDewPoint, asked.Gaps, Temperature(readings.SteelK), Temperature(plan.FrostPointK ?? plan.DewPointK));
        return plan;
    }

    private static void CheckRange(AuditScope scope, double? airK, IReadOnlyList<Gap> gaps)
    {
        var (sheet, readings) = (scope.Input.Compound, scope.Input.Readings);
        if (sheet.Pouring is null)
        {
            scope.SheetSilent("/compound/sheet/pouring", "pouring range");
            scope.Write("pouring-range", CheckOutcome.Undetermined, CompoundFindings.OutsidePouringRange, missing: ["/compound/sheet/pouring"]);
            return;
        }

        (string Name, double? K, string Pointer)[] all =
            [("Air", airK, AuditPointers.Air), ("Steel", readings.SteelK, AuditPointers.Steel), ("Compound", readings.CompoundK, AuditPointers.Compound)];
        var isInside = true;
        foreach (var (name, kelvins, pointer) in all)
        {
            isInside &= kelvins is not { } read || scope.CheckPouringRange(sheet, name, read, pointer);
        }

        Gap[] compound = [.. scope.Ask().Fact(readings.CompoundK is not null, AuditPointers.Compound, "the compound temperature").Gaps];
        scope.Judge("pouring-range", !isInside, CompoundFindings.OutsidePouringRange, [.. gaps, .. compound]);
    }

    private static Measure? Temperature(double? kelvins) => kelvins is { } known ? Measure.Temperature(known) : null;
}
