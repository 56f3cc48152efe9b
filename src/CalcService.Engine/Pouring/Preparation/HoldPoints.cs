using CalcService.Engine.Compounds;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>Where the work stands still until somebody has looked.</summary>
internal static class HoldPoints
{
    private const string Lead = "termination lead";
    private const string Competent = "competent person who did not do the work";

    public static IEnumerable<HoldPoint> Of(PourScope scope, PourPlanResult plan)
    {
        foreach (var end in scope.Input.Ends)
        {
            yield return new(StepCatalogue.Cut.Task, "fit", "Rope and socket are those of the plan and their certificates; the socket is "
                + "of steel and stronger than the rope; the rope is thinner than the small end.", Lead)
            {
                End = end.Id, Reading = Measure.Length(end.Rope.OverallDiameterM), Maximum = Measure.Length(end.Basket.SmallEndDiameterM),
            };
            yield return new(StepCatalogue.DrawIn.Task, "broom",
                "The broom is clean, dry and free of core fibre and plastic down to the seizing; the bore is clean.",
                Competent) { End = end.Id };
            yield return new(StepCatalogue.Seal.Task, "alignment",
                "Rope and basket are plumb and in line, the wires evenly spread, no wire against the wall.", Lead)
            {
                End = end.Id, Reading = end.TiltRad is { } tilt ? Measure.Angle(tilt) : null, Maximum = (Measure?)scope.Rules.Fit.ReadTilt,
            };
        }

        foreach (var point in Readings(scope, plan.Dose?.PerKit))
        {
            yield return point;
        }

        yield return new(StepCatalogue.Mix.Task, "lots",
            "Lots and dates on the packs are those of the plan; no lot is quarantined; every pack is sealed and whole.", Lead);
        yield return new(StepCatalogue.Mix.Task, "ignition", "No flame, spark, hot surface or running engine near the work.", Lead);
        foreach (var mix in plan.Mixes)
        {
            yield return new(StepCatalogue.Fill.Task, "stopPouring",
                "Nothing of the mix is poured after this time, or once it draws threads.", Lead) { Mix = mix.Number,
                At = mix.StopPouringAt };
        }

        yield return new(StepCatalogue.Leave.Task, "gel", "Gelled in every mouth and in every cup, and not before this time.",
            Competent) { At = plan.GelledAt };
    }

    private static IEnumerable<HoldPoint> Readings(PourScope scope, int? dose)
    {
        var conditions = scope.Conditions;
        var range = DoseRange(scope.Input.Compound, dose);
        var (coldest, margin) = (scope.Steel.Coldest?.K, scope.Rules.DewMargin);
        Measure? minimum = range is null ? null : Measure.Temperature(range.MinimumK);
        Measure? maximum = range is null ? null : Measure.Temperature(range.MaximumK);
        double? dry = conditions is { AirK: { } air, RelativeHumidity: { } humidity } ? margin.KeptAbove(DewPoint.WetK(air, humidity))
            : null;
        HoldPoint Temperature(string what, string text, double? kelvins) => new(StepCatalogue.Mix.Task, what, text, Lead)
        {
            Reading = kelvins is { } read ? Measure.Temperature(read) : null, Minimum = minimum, Maximum = maximum,
        };

        yield return Temperature("air",
            "Air where the pour is, inside the pouring range and the band of the planned dose; else plan again.", conditions.AirK);
        yield return Temperature("steel", "Coldest steel, inside the pouring range and the band of the planned dose, and far enough above "
            + "the dew point of the readings found; else plan again.", coldest) with
        {
            Minimum = dry is { } least && (range is null || least > range.MinimumK) ? Measure.Temperature(least) : minimum,
        };
        // The pot life goes by it, and the times on the paper by the pot life.
        yield return Temperature("compound", "Compound before it is mixed, inside the sheet's pouring range. Where it, or the air, is "
            + "warmer than planned the pot life is shorter: plan again.", conditions.CompoundK);
        yield return new(StepCatalogue.Mix.Task, "humidity", "Humidity low enough to keep the coldest steel dry.", Lead)
        {
            Reading = conditions.RelativeHumidity is { } read ? Measure.Fraction(read) : null,
            Maximum = coldest is { } steel && conditions.AirK is { } kelvins
                ? Measure.Fraction(Math.Min(1, DewPoint.Humidity(kelvins, margin.KeptBelow(steel)))) : null,
        };
    }

    /// <summary>
    /// Where the sheet lets the compound be poured with this dose: the doses on the paper are counted, and hold for no other band.
    /// </summary>
    private static TemperatureRange? DoseRange(CompoundSheet sheet, int? perKit)
    {
        var bands = sheet.Doses.Where(band => band.PerKit == perKit).ToArray();
        if (sheet.Pouring is not { } range || bands.Length == 0)
        {
            return sheet.Pouring;
        }

        // The edge belongs to the next band, and is read in tenths.
        var below = bands.Max(band => band.BelowK);
        return new(Math.Max(range.MinimumK, bands.Min(band => band.FromK)), below < range.MaximumK ? below - .1 : range.MaximumK);
    }
}
