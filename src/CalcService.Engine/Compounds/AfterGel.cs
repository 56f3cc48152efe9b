using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// How long after gel the sheet asks to wait, against temperature. Between two rows the Arrhenius line of both; warmer than the warmest
/// that row's time, since the sheet says nothing shorter; colder than the coldest by the largest activation energy in sight.
/// </summary>
public sealed class AfterGel
{
    private AfterGel(IReadOnlyList<FullStrength> rows, GelCurve curve, GelCurve heldCurve, bool isOfOtherDose) =>
        (Rows, Curve, HeldCurve, IsOfOtherDose) = (rows, curve, heldCurve, isOfOtherDose);

    /// <summary>The rows in use, coldest first.</summary>
    public IReadOnlyList<FullStrength> Rows { get; }

    /// <summary>Time after gel against temperature.</summary>
    public GelCurve Curve { get; }

    /// <summary>
    /// The same for samples that were held at their temperature: from a single row warmer places are quicker, by a low energy.
    /// </summary>
    public GelCurve HeldCurve { get; }

    /// <summary>Whether no row holds for the dose in use, so that the longest time of all is taken.</summary>
    public bool IsOfOtherDose { get; }

    /// <summary>Whether every row was held at its temperature.</summary>
    public bool IsIsothermal => Rows.All(row => row.IsIsothermal);

    public FullStrength Coldest => Rows[0];

    public FullStrength Warmest => Rows[^1];

    /// <summary>The times of a dose, or null where the sheet has no row.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="doses">Doses for each kit.</param>
    /// <param name="gel">The slowest gel times of the dose.</param>
    /// <param name="assumed">The band of activation energies where nothing is stated.</param>
    public static AfterGel? For(CompoundSheet sheet, int doses, GelCurve gel, ActivationEnergyBand assumed)
    {
        if (sheet.FullStrength.Count == 0)
        {
            return null;
        }

        var (rows, isOther) = RowsOf(sheet.FullStrength, doses);
        double[] pairs = [.. rows.Skip(1).Select((warm, i) => EnergyJPerMol(rows[i], warm))];
        var atColdest = gel.Lines.Where((line, i) => i == 0 || line.FromK < rows[0].TemperatureK).Max(line => line.EnergyJPerMol);
        var below = Math.Max(pairs.FirstOrDefault(), sheet.AfterGelEnergyJPerMol ?? Math.Max(atColdest, assumed.HighJPerMol));
        var above = rows.Length > 1 ? 0 : Math.Min(gel.LineAt(rows[0].TemperatureK).EnergyJPerMol, assumed.LowJPerMol);
        GelCurve With(double energyAbove) => new(
        [
            Line(0, rows[0], below), .. pairs.Select((energy, i) => Line(rows[i].TemperatureK, rows[i], energy)),
                Line(rows[^1].TemperatureK, rows[^1], energyAbove),
        ]);
        return new(rows, With(0), With(above), isOther);
    }

    /// <summary>a = a_ref·exp(E/R·(1/T − 1/T_ref)), never below the warmest row's; in s.</summary>
    [Formula("after-gel-time", "Arrhenius law through the sheet's times to full strength", "/docs/release", Basis.Derived, Symbol = "a",
        Name = "time after gel that the sheet asks for",
        Expression = "a_ref·exp(E/R·(1/T − 1/T_ref))", Kind = QuantityKind.Duration,
        Range = "between the rows; above the warmest its own time, below the coldest with the largest energy in sight")]
    public double TimeS(double kelvins, Trace trace)
    {
        var line = Curve.LineAt(kelvins);
        return trace.Step("after-gel-time", Curve.TimeS(kelvins), new("a_ref", Measure.Duration(line.ReferenceS)),
            new("E", new Measure(line.EnergyJPerMol, QuantityKind.MolarEnergy)),
            new("T", Measure.Kelvins(kelvins)), new("T_ref", Measure.Kelvins(line.ReferenceK)));
    }

    /// <summary>Rows of the dose, else those of no dose, else one that is longer than any.</summary>
    private static (FullStrength[] Rows, bool IsOther) RowsOf(IReadOnlyList<FullStrength> all, int doses)
    {
        FullStrength[] own = [.. all.Where(row => row.Doses.Contains(doses))];
        FullStrength[] any = own.Length > 0 ? own : [.. all.Where(row => row.Doses.Count == 0)];
        return any.Length > 0
            ? ([.. any.OrderBy(row => row.TemperatureK)], false)
            : ([new(all.Max(row => row.TemperatureK), all.Max(row => row.AfterGelS)) { IsIsothermal = all.All(row => row.IsIsothermal) }],
            true);
    }

    private static double EnergyJPerMol(FullStrength cold, FullStrength warm) => cold.AfterGelS == warm.AfterGelS
        ? 0
        : GelModel.ActivationEnergyJPerMol(cold.TemperatureK, cold.AfterGelS, warm.TemperatureK, warm.AfterGelS, Trace.None);

    private static GelLine Line(double fromK, FullStrength row, double energy) => new(fromK, row.TemperatureK, row.AfterGelS, energy);
}
