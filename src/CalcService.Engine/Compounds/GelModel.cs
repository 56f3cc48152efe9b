using CalcService.Engine.Numerics;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// Gel time against temperature for one dose, through the rows of the sheet: between two rows the activation energy
/// is the one that both give, beyond them that of the nearest pair, and from a single row it is the sheet's own or an
/// assumed band.
/// </summary>
public sealed class GelModel
{
    /// <summary>Molar gas constant, J/(mol·K), exact since the SI of 2019.</summary>
    public const double GasConstant = 8.31446261815324;

    private readonly GelTime[] _rows;
    private readonly ActivationEnergyBand _single;

    private GelModel(GelTime[] rows, ActivationEnergyBand single)
    {
        _rows = rows;
        _single = single;
        Measured = new(rows[0].TemperatureK, rows[^1].TemperatureK);
    }

    /// <summary>Whether the temperature dependence is assumed because the sheet has one row for this dose.</summary>
    public bool IsAssumed => _rows.Length == 1 && _single.LowJPerMol < _single.HighJPerMol;

    /// <summary>The temperatures that the rows span.</summary>
    public TemperatureRange Measured { get; }

    /// <summary>The model for a dose, or null where the sheet has no gel time for it.</summary>
    public static GelModel? For(CompoundSheet sheet, int doses, ActivationEnergyBand assumed)
    {
        var rows = sheet.GelTimes.Where(row => row.Doses == doses).OrderBy(row => row.TemperatureK).ToArray();
        if (rows.Length == 0)
        {
            return null;
        }

        return new(rows, sheet.ActivationEnergyJPerMol is { } stated ? new(stated, stated, stated) : assumed);
    }

    /// <summary>Gel time at a temperature that stays as it is.</summary>
    public GelBand At(double kelvins, Trace trace)
    {
        if (_rows.Length > 1)
        {
            var upper = 1;
            while (upper < _rows.Length - 1 && kelvins > _rows[upper].TemperatureK)
            {
                upper++;
            }

            var (cold, warm) = (_rows[upper - 1], _rows[upper]);
            var energy = ActivationEnergyJPerMol(cold.TemperatureK, cold.TimeS, warm.TemperatureK, warm.TimeS, trace);
            var time = GelTimeS(cold.TimeS, cold.TemperatureK, energy, kelvins, trace);
            return new(time, time, time);
        }

        var row = _rows[0];
        var expected = GelTimeS(row.TimeS, row.TemperatureK, _single.ExpectedJPerMol, kelvins, trace);
        var one = GelTimeS(row.TimeS, row.TemperatureK, _single.LowJPerMol, kelvins, Trace.None);
        var other = GelTimeS(row.TimeS, row.TemperatureK, _single.HighJPerMol, kelvins, Trace.None);
        return new(Math.Min(one, other), expected, Math.Max(one, other));
    }

    /// <summary>The same times as curves, one for each end of the band.</summary>
    public (GelCurve Earliest, GelCurve Expected, GelCurve Latest) Curves()
    {
        if (_rows.Length > 1)
        {
            var curve = new GelCurve([.. _rows.Skip(1).Select((warm, i) => new GelLine(
                i == 0 ? 0 : _rows[i].TemperatureK, _rows[i].TemperatureK, _rows[i].TimeS,
                ActivationEnergyJPerMol(_rows[i].TemperatureK, _rows[i].TimeS, warm.TemperatureK, warm.TimeS, Trace.None)))]);
            return (curve, curve, curve);
        }

        // Colder than the row the higher energy slows more, warmer than the row it hastens more.
        var row = _rows[0];
        GelLine Line(double from, double energy) => new(from, row.TemperatureK, row.TimeS, energy);
        return (
            new([Line(0, _single.LowJPerMol), Line(row.TemperatureK, _single.HighJPerMol)]),
            new([Line(0, _single.ExpectedJPerMol)]),
            new([Line(0, _single.HighJPerMol), Line(row.TemperatureK, _single.LowJPerMol)]));
    }

    /// <summary>t_gel = t_ref·exp(E/R·(1/T − 1/T_ref)), T in K, E in J/mol; in s.</summary>
    [Formula("gel-time", "Arrhenius law for the rate of gelling", "/docs/pour-plans", Basis.Derived, Symbol = "t_gel", Name = "gel time",
        Expression = "t_ref·exp(E/R·(1/T − 1/T_ref))", Kind = QuantityKind.Duration,
            Range = "between the rows of the sheet; beyond them a finding says so")]
    public static double GelTimeS(double referenceS, double referenceK, double energyJPerMol, double kelvins, Trace trace) =>
        trace.Step("gel-time", referenceS * Elementary.Exp(energyJPerMol / GasConstant * ((1 / kelvins) - (1 / referenceK))),
            new("t_ref", Measure.Duration(referenceS)), new("E", new Measure(energyJPerMol, QuantityKind.MolarEnergy)),
            new("T", Measure.Kelvins(kelvins)), new("T_ref", Measure.Kelvins(referenceK)));

    /// <summary>E = R·ln(t_1/t_2)/(1/T_1 − 1/T_2) through two rows of the sheet; in J/mol.</summary>
    [Formula("gel-activation-energy", "Arrhenius law through two gel times", "/docs/pour-plans", Basis.Derived, Symbol = "E",
        Name = "activation energy of gelling",
        Expression = "R·ln(t_1/t_2)/(1/T_1 − 1/T_2)", Kind = QuantityKind.MolarEnergy, Range = "two rows at different temperatures")]
    public static double ActivationEnergyJPerMol(double coldK, double coldS, double warmK, double warmS, Trace trace) =>
        trace.Step("gel-activation-energy", GasConstant * Elementary.Log(coldS / warmS) / ((1 / coldK) - (1 / warmK)),
            new("t_1", Measure.Duration(coldS)), new("t_2", Measure.Duration(warmS)),
            new("T_1", Measure.Kelvins(coldK)), new("T_2", Measure.Kelvins(warmK)));
}
