namespace CalcService.Engine.Compounds;

/// <summary>Degrees of cure at which the compound has gelled and has its full strength.</summary>
public sealed record CureConversions(double Gel, double Full);

/// <summary>
/// How a compound gels and cures, from its data sheet: the one gel-time model, and the degree of cure as a function of the age in gel
/// times, so that every gel time of the sheet and its full strength are met. The sheet's time from gel to full strength holds for the
/// dose in use: a dose that hastens the gel is not trusted to hasten what comes after.
/// </summary>
public sealed class CureKinetics
{
    private const int CupRounds = 20;

    private CureKinetics(int doses, GelModel model, CureShape shape, CureCeiling ceiling, GelCurve earliest, GelCurve expected,
        GelCurve latest, AfterGel afterGel)
    {
        Doses = doses;
        Model = model;
        Shape = shape;
        Ceiling = ceiling;
        (Earliest, Expected, Latest, AfterGel) = (earliest, expected, latest, afterGel);
    }

    /// <summary>Doses for each kit.</summary>
    public int Doses { get; }

    public GelModel Model { get; }

    public CureShape Shape { get; }

    public CureCeiling Ceiling { get; }

    /// <summary>Nothing gels sooner.</summary>
    public GelCurve Earliest { get; }

    public GelCurve Expected { get; }

    /// <summary>Gelled by then: the times behind every release.</summary>
    public GelCurve Latest { get; }

    /// <summary>Time after gel that the sheet asks for.</summary>
    public AfterGel AfterGel { get; }

    /// <summary>Age at full strength for the expected times.</summary>
    public double FullAge => Shape.FullAge;

    /// <summary>The law at a temperature, for the expected times.</summary>
    public CureLaw LawAt(double kelvins) => Shape.LawOf(Expected.LineAt(kelvins));

    /// <summary>Whether the sheet leaves open how fast it gels.</summary>
    public bool HasBand => !ReferenceEquals(Earliest, Latest);

    /// <summary>The rate of cure behind a curve.</summary>
    /// <param name="curve">Gel times.</param>
    /// <param name="slower">How much longer everything takes.</param>
    public SheetCureRate RateOf(GelCurve curve, double slower = 1) => new(
        curve.Slower(slower), AfterGel.IsIsothermal ? AfterGel.HeldCurve.Slower(slower / (FullAge - 1)) : null, Shape, Ceiling);

    /// <summary>
    /// The kinetics of a dose, or null where the sheet has no gel time for it, no full strength or no lowest cure temperature.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="doses">Doses for each kit.</param>
    /// <param name="assumed">Activation energy where one gel time is all there is.</param>
    /// <param name="conversions">Degrees of cure at gel and at full strength.</param>
    public static CureKinetics? For(CompoundSheet sheet, int doses, ActivationEnergyBand assumed, CureConversions conversions)
    {
        if (GelModel.For(sheet, doses, assumed) is not { } stated || LowestCureK(sheet) is not { } lowest
            || AfterGel.For(sheet, doses, stated.Curves().Latest, assumed) is not { } afterGel)
        {
            return null;
        }

        var shape = ShapeOf(stated, afterGel, conversions);
        var curves = stated.Curves();
        var model = stated;
        if (RiseK(sheet) is { } rise && sheet.GelTimes.Any(row => row.Doses == doses && row.SelfHeating == SelfHeating.Yes))
        {
            (model, shape) = HeldAtTemperature(sheet, doses, assumed, conversions, rise, stated, shape, afterGel);
            // The cup of the sheet gelled no later than that.
            curves = model.Curves() with { Earliest = curves.Earliest };
        }

        return new(doses, model, shape, new(shape, lowest, afterGel.Coldest.TemperatureK), curves.Earliest, curves.Expected, curves.Latest,
            afterGel);
    }

    /// <summary>
    /// The temperature below which the compound doesn't cure; where the sheet doesn't say, the lowest at which it may be poured.
    /// </summary>
    public static double? LowestCureK(CompoundSheet sheet) => sheet.LowestCureK ?? sheet.Pouring?.MinimumK;

    private static double? RiseK(CompoundSheet sheet) => sheet is { Reaction: { } reaction, SpecificHeatJPerKgK: { } specificHeat }
        ? WarmingCup.RiseK(reaction.ResinFraction, reaction.HeatJPerKg, specificHeat, Provenance.Trace.None)
        : null;

    /// <summary>
    /// One shape for all temperatures: the least of the sheet's times after gel in gel times. So a cone that makes no heat never has to
    /// wait longer than the sheet itself, and what the sheet asks for more is asked for by its own clock.
    /// </summary>
    private static CureShape ShapeOf(GelModel model, AfterGel afterGel, CureConversions conversions)
    {
        var gel = model.Curves().Latest;
        var (coldest, warmest) = (afterGel.Coldest.TemperatureK, afterGel.Warmest.TemperatureK);
        var bends = gel.Lines.Select(line => line.FromK).Where(edge => edge > coldest && edge < warmest)
            .Concat(afterGel.Rows.Select(row => row.TemperatureK));
        return CureShape.Calibrated(1 + bends.Min(kelvins => afterGel.Curve.TimeS(kelvins) / gel.TimeS(kelvins)), conversions.Gel,
            conversions.Full);
    }

    /// <summary>
    /// Gel times at temperatures that are held, so that the cup that warms itself gives the sheet's: each row longer by what the
    /// cup gains, which depends on the kinetics, so round by round.
    /// </summary>
    private static (GelModel Model, CureShape Shape) HeldAtTemperature(CompoundSheet sheet, int doses, ActivationEnergyBand assumed,
        CureConversions conversions, double riseK, GelModel model, CureShape shape, AfterGel afterGel)
    {
        for (var round = 0; round < CupRounds; round++)
        {
            var (_, curve, _) = model.Curves();
            GelTime Held(GelTime row)
            {
                if (row.SelfHeating != SelfHeating.Yes)
                {
                    return row;
                }

                var law = shape.LawOf(curve.LineAt(row.TemperatureK));
                return row with
                {
                    TimeS = row.TimeS * WarmingCup.TimeS(law, row.TemperatureK, 0, conversions.Gel, Provenance.Trace.None)
                        / WarmingCup.TimeS(law, row.TemperatureK, riseK, conversions.Gel, Provenance.Trace.None),
                };
            }

            model = GelModel.For(sheet with { GelTimes = [.. sheet.GelTimes.Where(row => row.Doses == doses).Select(Held)] }, doses,
                assumed)!;
            shape = ShapeOf(model, afterGel, conversions);
        }

        return (model, shape);
    }
}
