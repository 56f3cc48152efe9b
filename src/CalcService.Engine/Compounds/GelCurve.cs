using CalcService.Engine.Numerics;

namespace CalcService.Engine.Compounds;

/// <summary>One Arrhenius line of a gel curve.</summary>
/// <param name="FromK">It holds from here on upwards, to the next line.</param>
/// <param name="ReferenceK">Temperature of its reference.</param>
/// <param name="ReferenceS">Gel time there.</param>
/// <param name="EnergyJPerMol">Activation energy.</param>
public readonly record struct GelLine(double FromK, double ReferenceK, double ReferenceS, double EnergyJPerMol)
{
    /// <summary>1/t_gel, 1/s.</summary>
    public double RatePerS(double kelvins) =>
        Elementary.Exp(EnergyJPerMol / GelModel.GasConstant * ((1 / ReferenceK) - (1 / kelvins))) / ReferenceS;
}

/// <summary>Gel time against temperature as Arrhenius lines that meet, coldest first: what integrals over a history need.</summary>
public sealed class GelCurve(IReadOnlyList<GelLine> lines)
{
    /// <summary>The lines, coldest first; the first one goes down without end.</summary>
    public IReadOnlyList<GelLine> Lines { get; } = lines;

    /// <summary>The line for a temperature.</summary>
    public GelLine LineAt(double kelvins)
    {
        var line = Lines.Count - 1;
        while (line > 0 && kelvins < Lines[line].FromK)
        {
            line--;
        }

        return Lines[line];
    }

    /// <summary>Gel time at a temperature, s.</summary>
    public double TimeS(double kelvins) => 1 / LineAt(kelvins).RatePerS(kelvins);

    /// <summary>The curve with every gel time longer by a factor.</summary>
    public GelCurve Slower(double factor) => new([.. Lines.Select(line => line with { ReferenceS = line.ReferenceS * factor })]);
}
