using CalcService.Engine.Compounds;
using CalcService.Engine.Cones.Heat;
using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Releases;

/// <summary>
/// When a poured end may be moved and loaded. One law for schedule, shop, audit and proof: never before the sheet's own time along the
/// coldest temperatures; a model of the cone's heat, a hold and a hot cone can only make it later.
/// </summary>
public static class Release
{
    /// <summary>The times of one end.</summary>
    /// <param name="kinetics">Gel and cure by the sheet, for the dose in use.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="path">Temperatures without the compound's own heat.</param>
    /// <param name="seen">The gels of this end that somebody saw.</param>
    /// <param name="lot">How much slower the lot is; 1 where nothing is known.</param>
    /// <param name="model">The modelled cone, with everything slower by a factor; null in the uniform model.</param>
    /// <param name="trace">Gets the formulas.</param>
    public static ReleaseTimes Of(CureKinetics kinetics, CompoundSheet sheet, CurePath path, IReadOnlyList<SeenGel> seen, double lot,
        Func<double, ModelledCone?>? model, Trace trace)
    {
        var slower = seen.Select(gel => SlowerBy(kinetics, path, gel)).Append(lot).Append(1).Max();
        // A gel that came early moves nothing: what follows it is asked for by the sheet.
        var gelS = GelAge.Along(kinetics.Latest.Slower(slower), path.BeforeGel, kinetics.Ceiling, 1).TimeOf(1) is { } latest
            ? seen.Where(gel => gel.IsOfCone).Select(gel => gel.Seconds).Append(latest).Max()
            : (double?)null;
        var clock = gelS is { } gelled ? ClockOf(kinetics, path, gelled, slower) : null;
        var (sheetS, hold) = (SheetS(clock, gelS, slower, trace), gelS + (sheet.MinimumHoldS ?? 0));
        var cure = model?.Invoke(slower);
        var isByOwnHeat = model is not null && kinetics.AfterGel.IsIsothermal;
        double?[] asked = [isByOwnHeat ? hold : sheetS, model is null ? hold : cure?.FullS, hold, cure?.CooledS ?? hold];
        // A hold that ends after the temperatures do is no release: its last hours may have been frost.
        double? load = asked.All(time => time is not null) && asked.Max() is { } last && last <= path.KnownUntilS ? last : null;
        var after = clock is null ? (double?)null : path.AfterGel.Extremes(gelS!.Value, sheetS ?? path.AfterGel.EndS).LowestK;
        return new()
        {
            Path = path,
            GelS = gelS,
            SheetS = sheetS,
            ModelS = cure?.FullS,
            HoldS = hold,
            CooledS = cure?.CooledS is { } cooled && double.IsFinite(cooled) ? cooled : null,
            // Seen in the cone a gel is a fact.
            UndisturbedS = (InCone(seen) ?? gelS) + (sheet.MinimumHoldS ?? 0),
            LoadS = load,
            Slower = slower,
            GovernedBy = load is null ? null : load == asked[0] && !isByOwnHeat && sheetS >= hold ? Governor.Sheet : load == cure?.FullS
            ? Governor.LeastCuredPlace : load == hold ? Governor.MinimumHold : Governor.Cooling,
            IsExtrapolated = after < kinetics.AfterGel.Coldest.TemperatureK - ReleaseTimes.ResolutionK && !isByOwnHeat
            && (load is null || load == sheetS),
            IsByOwnHeat = isByOwnHeat,
            ShortestS = gelS + (slower * kinetics.AfterGel.Warmest.AfterGelS),
            ColdestAfterGelK = after,
            ColdestK = after is { } cold ? Math.Min(cold, path.BeforeGel.Extremes(0, gelS!.Value).LowestK) : null,
            Clock = clock,
        };
    }

    /// <summary>
    /// How much slower a lot is than its sheet, by the ages at which its cones were seen gelled; never below 1: what gels early is still
    /// asked for by the sheet.
    /// </summary>
    public static double Lot(IEnumerable<double?> ages, CuringRules rules, Trace trace)
    {
        double[] logs = [.. ages.OfType<double>().Where(age => age > 0).Select(age => Elementary.Log(age))];
        return logs.Length == 0 ? 1
            : Math.Max(1, GelPosterior.Factor(logs.Average(), logs.Length, rules.LotSpread.Si, rules.ObservationSpread.Si, trace));
    }

    /// <summary>Age in gel times, by the sheet, at which a gel was seen along a path; null where the path doesn't reach so far.</summary>
    public static double? AgeSeen(CureKinetics kinetics, CurePath path, SeenGel gel) =>
        gel.Seconds > path.BeforeGel.EndS ? null : GelAge.Along(kinetics.Expected, path.BeforeGel).At(gel.MiddleS);

    /// <summary>
    /// ∫dt/a(θ) = F, from the gel t_G on along the coldest temperatures θ, a the sheet's time after gel and F how slow the lot was seen to
    /// be; in s.
    /// </summary>
    [Formula("sheet-release", "the sheet's time after gel, counted along the coldest temperatures", "/docs/release", Basis.Derived,
        Symbol = "t_a", Name = "end of the sheet's time after gel",
        Expression = "∫dt/a(θ) = F, from t_G on", Kind = QuantityKind.Duration,
        Range = "stands still below the lowest cure temperature; not read beyond the temperatures given")]
    public static double? SheetS(GelAge? clock, double? gelS, double slower, Trace trace) => clock?.TimeOf(1) is { } over
        ? trace.Step("sheet-release", over, new("t_G", Measure.Duration(gelS!.Value)), new("F", Measure.Count(slower)))
        : null;

    /// <summary>The share of the sheet's time that has passed, from the gel on.</summary>
    private static GelAge? ClockOf(CureKinetics kinetics, CurePath path, double gelS, double slower) => gelS > path.AfterGel.EndS
        ? null
        : GelAge.Along(kinetics.AfterGel.Curve.Slower(slower), path.AfterGel.From(gelS), null, 1, kinetics.Ceiling.LowestCureK);

    /// <summary>
    /// How much slower one gel says that everything is. A cup or vessel that gels in its time says nothing; one that is late does.
    /// </summary>
    private static double SlowerBy(CureKinetics kinetics, CurePath path, SeenGel gel) =>
        gel.IsOfMix ? gel.MiddleS / kinetics.Latest.TimeS(path.MixK) : AgeSeen(kinetics, path, gel) ?? 1;

    private static double? InCone(IReadOnlyList<SeenGel> seen) =>
        seen.Where(gel => gel.Place == GelPlace.Cone).Select(gel => (double?)gel.Seconds).Max();
}
