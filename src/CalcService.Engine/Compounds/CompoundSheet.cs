namespace CalcService.Engine.Compounds;

/// <summary>A kit of the compound: resin with its hardener, mixed whole or not at all.</summary>
public sealed record Kit(string Code, double VolumeM3, decimal? Cost);

/// <summary>A gel time as the sheet states it.</summary>
public sealed record GelTime(double TemperatureK, int Doses, double TimeS);

/// <summary>Accelerator doses for each kit from one temperature up to below another.</summary>
public sealed record DoseBand(double FromK, double BelowK, int PerKit);

/// <summary>A range of temperatures, both ends allowed.</summary>
public sealed record TemperatureRange(double MinimumK, double MaximumK)
{
    public bool Contains(double kelvins) => kelvins >= MinimumK && kelvins <= MaximumK;
}

/// <summary>The vapour that the compound gives off until it has gelled.</summary>
public sealed record VapourSource(string Substance, double? MassFraction);

/// <summary>The cured compound, as far as the sheet states it.</summary>
public sealed record CuredCompound
{
    public double? CompressiveStrengthPa { get; init; }

    public double? ModulusPa { get; init; }

    public double? PoissonRatio { get; init; }

    /// <summary>From liquid to cured.</summary>
    public double? VolumetricShrinkage { get; init; }

    /// <summary>Linear, after gel.</summary>
    public double? ShrinkageAfterGel { get; init; }

    /// <summary>Thermal expansion, 1/K.</summary>
    public double? ExpansionPerK { get; init; }
}

/// <summary>What a substance does to the cured compound.</summary>
public enum ChemicalEffect
{
    /// <summary>The sheet doesn't say.</summary>
    Unknown,

    /// <summary>The compound stands it.</summary>
    Resists,

    /// <summary>It stands it for a while, or in part.</summary>
    Limited,

    /// <summary>It is attacked.</summary>
    Attacked,
}

/// <summary>A row of the sheet's table of chemicals.</summary>
public sealed record ChemicalRow(string Substance, ChemicalEffect Effect);

/// <summary>
/// The compound's data sheet, as far as a plan reads it. Whatever the sheet doesn't state is null and is asked for
/// by a finding where a rule needs it.
/// </summary>
public sealed record CompoundSheet
{
    public required string Name { get; init; }

    public required IReadOnlyList<Kit> Kits { get; init; }

    public IReadOnlyList<GelTime> GelTimes { get; init; } = [];

    public IReadOnlyList<DoseBand> Doses { get; init; } = [];

    public TemperatureRange? Pouring { get; init; }

    /// <summary>Usable share of the gel time.</summary>
    public double? PotLife { get; init; }

    /// <summary>Time to mix one kit, s.</summary>
    public double? MixingTimeS { get; init; }

    /// <summary>Calendar months from the date of manufacture.</summary>
    public int? ShelfLifeMonths { get; init; }

    /// <summary>Temperatures at which sealed kits keep.</summary>
    public TemperatureRange? Storage { get; init; }

    public double? DensityKgPerM3 { get; init; }

    public double? ActivationEnergyJPerMol { get; init; }

    /// <summary>Temperatures that the cured cone stands.</summary>
    public TemperatureRange? Service { get; init; }

    public CuredCompound Cured { get; init; } = new();

    public IReadOnlyList<ChemicalRow> Chemicals { get; init; } = [];

    public VapourSource? Vapour { get; init; }

    /// <summary>Whether the sheet is invented, for demonstration only.</summary>
    public bool Demonstration { get; init; }

    /// <summary>
    /// Doses for each kit at a temperature: bands hold from their lower edge up to below the upper one, the last
    /// includes its upper edge. Null where the sheet has no band for the temperature.
    /// </summary>
    public int? DosesPerKitAt(double kelvins)
    {
        for (var i = 0; i < Doses.Count; i++)
        {
            var band = Doses[i];
            var isLast = i == Doses.Count - 1;
            if (kelvins >= band.FromK && (kelvins < band.BelowK || (isLast && kelvins <= band.BelowK)))
            {
                return band.PerKit;
            }
        }

        return null;
    }
}
