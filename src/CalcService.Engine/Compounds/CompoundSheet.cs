using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
namespace CalcService.Engine.Compounds;

/// <summary>A kit of the compound: resin with its hardener, mixed whole or not at all.</summary>
public sealed record Kit(string Code, double VolumeM3, decimal? Cost, string? PartNumber = null);

/// <summary>Whether the compound warmed itself while its gel time was taken.</summary>
public enum SelfHeating
{
    /// <summary>Nobody says.</summary>
    Unknown,

    /// <summary>It was held at its temperature.</summary>
    No,

    /// <summary>It stood in a cup and warmed itself.</summary>
    Yes,
}

/// <summary>A gel time as the sheet states it.</summary>
public sealed record GelTime(double TemperatureK, int Doses, double TimeS)
{
    /// <summary>Whether it warmed itself meanwhile.</summary>
    public SelfHeating SelfHeating { get; init; }
}

/// <summary>When the compound has its full strength at a temperature, from gel.</summary>
public sealed record FullStrength(double TemperatureK, double AfterGelS)
{
    /// <summary>The doses that it holds for; any where none is named.</summary>
    public IReadOnlyList<int> Doses { get; init; } = [];

    /// <summary>Whether the sample was held at its temperature, so that its own heat didn't help.</summary>
    public bool IsIsothermal { get; init; }
}

/// <summary>The heat that the curing reaction gives off.</summary>
/// <param name="HeatJPerKg">For each mass of resin.</param>
/// <param name="ResinFraction">Share of resin in the mixed compound, by mass.</param>
public sealed record ReactionHeat(double HeatJPerKg, double ResinFraction);

/// <summary>Accelerator doses for each kit from one temperature up to below another.</summary>
public sealed record DoseBand(double FromK, double BelowK, int PerKit);

/// <summary>A range of temperatures, both ends allowed.</summary>
public sealed record TemperatureRange(double MinimumK, double MaximumK)
{
    public bool Contains(double kelvins) => kelvins >= MinimumK && kelvins <= MaximumK;
}

/// <summary>The vapour that the compound gives off until it has gelled.</summary>
/// <param name="Substance">What it is.</param>
/// <param name="MassFraction">Its share of the mixed compound.</param>
/// <param name="DecayPerS">How fast the open surface gives off less as it skins over; null where the sheet doesn't say.</param>
public sealed record VapourSource(string Substance, double? MassFraction, double? DecayPerS = null);

/// <summary>The place whose temperature a sheet's doses go by.</summary>
public enum DosePlace
{
    /// <summary>Not said: the colder of air and steel.</summary>
    Unknown,

    /// <summary>The colder of air and steel.</summary>
    Colder,

    /// <summary>The air.</summary>
    Air,

    /// <summary>The coldest steel.</summary>
    Steel,

    /// <summary>The compound before it is mixed.</summary>
    Compound,
}

/// <summary>A part of the mix.</summary>
public enum MixPart
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Resin.</summary>
    Resin,

    /// <summary>Dose of accelerator.</summary>
    Dose,

    /// <summary>Hardener.</summary>
    Hardener,

    /// <summary>Filler that comes by itself.</summary>
    Filler,
}

/// <summary>The hardness that the sheet asks for.</summary>
/// <param name="Method">How it is read.</param>
/// <param name="Minimum">The least, in the numbers of the method.</param>
public sealed record SheetHardness(string Method, double Minimum);

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

    public IReadOnlyList<FullStrength> FullStrength { get; init; } = [];

    /// <summary>Activation energy of what follows the gel, where the sheet states it.</summary>
    public double? AfterGelEnergyJPerMol { get; init; }

    /// <summary>Below it the compound doesn't cure.</summary>
    public double? LowestCureK { get; init; }

    /// <summary>Time that the cone stays undisturbed after gel, s.</summary>
    public double? MinimumHoldS { get; init; }

    /// <summary>The compound must not get hotter than this while it cures.</summary>
    public double? PeakLimitK { get; init; }

    /// <summary>Temperatures that the cured cone stands.</summary>
    public TemperatureRange? Service { get; init; }

    public CuredCompound Cured { get; init; } = new();

    public SheetHardness? Hardness { get; init; }

    public IReadOnlyList<ChemicalRow> Chemicals { get; init; } = [];

    public ReactionHeat? Reaction { get; init; }

    /// <summary>Of the cured compound, W/(m·K).</summary>
    public double? ConductivityWPerMK { get; init; }

    /// <summary>Of the cured compound, J/(kg·K).</summary>
    public double? SpecificHeatJPerKgK { get; init; }

    public VapourSource? Vapour { get; init; }

    public DateOnly? IssuedOn { get; init; }

    /// <summary>The temperature that the doses go by.</summary>
    public DosePlace DoseByTemperatureOf { get; init; }

    /// <summary>Most doses for one kit.</summary>
    public int? MaximumDoses { get; init; }

    /// <summary>What goes in, first to last.</summary>
    public IReadOnlyList<MixPart> MixingOrder { get; init; } = [];

    /// <summary>Vessels that the sheet allows.</summary>
    public IReadOnlyList<string> Vessels { get; init; } = [];

    /// <summary>Largest volume for which the pot life holds.</summary>
    public double? PotLifeVolumeM3 { get; init; }

    /// <summary>Currency of the costs.</summary>
    public string? Currency { get; init; }

    /// <summary>How the kits are declared for transport, as the sheet words it.</summary>
    public string? DangerousGoods { get; init; }

    /// <summary>Whether the sheet is invented, for demonstration only.</summary>
    public bool Demonstration { get; init; }

    /// <summary>Whether the pouring range holds this temperature; true too where the sheet has none.</summary>
    public bool AllowsPouringAt(double kelvins) =>
        Pouring is not { } range || Judged.Outside(Measure.Temperature(kelvins), Measure.Temperature(range.MinimumK),
            Measure.Temperature(range.MaximumK)) is null;

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
