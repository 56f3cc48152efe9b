using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>Which compound: exactly one of profile and sheet.</summary>
public sealed record Compound
{
    /// <summary>Id of a compound at /v1/compounds.</summary>
    [Id]
    public string? Profile { get; init; }

    /// <summary>The data sheet of the compound in hand.</summary>
    public CompoundSheet? Sheet { get; init; }
}

/// <summary>Data sheet of a two-part socketing compound. Copy it from the maker's sheet; what the sheet doesn't state, leave out.</summary>
public sealed record CompoundSheet
{
    /// <summary>Name of the compound.</summary>
    public required string Name { get; init; }

    /// <summary>Edition of the maker's sheet, kept with the record.</summary>
    [Kept]
    public string? Edition { get; init; }

    /// <summary>Day on which the maker issued the sheet.</summary>
    public DateOnly? IssuedOn { get; init; }

    /// <summary>Kits that it is sold in; a kit is mixed whole or not at all.</summary>
    [Items(1, 20)]
    public required IReadOnlyList<CompoundKit> Kits { get; init; }

    /// <summary>Measured gel times, by temperature and dose.</summary>
    public IReadOnlyList<CompoundGelTime>? GelTimes { get; init; }

    /// <summary>Currency of the costs, such as EUR.</summary>
    public string? Currency { get; init; }

    /// <summary>
    /// When it has its full strength, one row for each temperature that the sheet states. No end is released before these times.
    /// </summary>
    [Items(50)]
    public IReadOnlyList<CompoundFullStrength>? FullStrength { get; init; }

    /// <summary>Activation energy of what follows the gel, where the sheet states it; read below the coldest row of fullStrength.</summary>
    [Kind(QuantityKind.MolarEnergy, 10, 200, "kJ/mol")]
    public Quantity? AfterGelEnergy { get; init; }

    /// <summary>The hardness of the cured compound. Read by proof load evaluations and the audit of a record.</summary>
    public CompoundHardness? Hardness { get; init; }

    /// <summary>Below it the compound does not cure; if absent, the lowest pouring temperature is taken.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public Quantity? LowestCure { get; init; }

    /// <summary>Time that the cone stays undisturbed after gel; none if absent.</summary>
    [Kind(QuantityKind.Duration, 0, 720, "h")]
    public Quantity? MinimumHold { get; init; }

    /// <summary>The cone must not get hotter than this while it cures.</summary>
    [Kind(QuantityKind.Temperature, 20, 400, "degC")]
    public Quantity? PeakLimit { get; init; }

    /// <summary>Temperatures at which it may be poured; they hold for air, steel and compound each.</summary>
    public CompoundTemperatures? Pouring { get; init; }

    /// <summary>Doses of accelerator for each kit, by temperature: bands without gaps, coldest first, covering the pouring range.</summary>
    public IReadOnlyList<CompoundDoses>? Doses { get; init; }

    /// <summary>The temperature that the doses go by; the colder of air and steel if absent.</summary>
    public DosePlace? DoseByTemperatureOf { get; init; }

    /// <summary>Most doses for one kit.</summary>
    [Within(0, 100)]
    public int? MaximumDoses { get; init; }

    /// <summary>What goes into the vessel, first to last.</summary>
    [Items(8)]
    public IReadOnlyList<MixPart>? MixingOrder { get; init; }

    /// <summary>Vessels that the sheet allows for mixing, in its words.</summary>
    [Items(20)]
    public IReadOnlyList<string>? Vessels { get; init; }

    /// <summary>Largest volume in one vessel for which the pot life holds.</summary>
    [Kind(QuantityKind.Volume, .01, 200, "L")]
    public Quantity? PotLifeVolume { get; init; }

    /// <summary>Usable share of the gel time.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? PotLife { get; init; }

    /// <summary>Mixing.</summary>
    public CompoundMixing? Mixing { get; init; }

    /// <summary>Whole calendar months that a sealed kit keeps from its date of manufacture.</summary>
    [Kind(QuantityKind.CalendarMonths, 1, 240, "mo", Whole = true)]
    public Quantity? ShelfLife { get; init; }

    /// <summary>Temperatures at which sealed kits are stored.</summary>
    public CompoundTemperatures? Storage { get; init; }

    /// <summary>Temperatures that the cured cone stands in service. Read by the match of rope and socket.</summary>
    public CompoundTemperatures? Service { get; init; }

    /// <summary>Properties when cured. The density bounds the vapour of a pour; the others are read by cure and load transfer.</summary>
    public CompoundCured? Cured { get; init; }

    /// <summary>
    /// The curing reaction. The activation energy is read where a dose has one gel time; the others by the cure of a cone.
    /// </summary>
    public CompoundReaction? Reaction { get; init; }

    /// <summary>What it gives off until it has gelled.</summary>
    public CompoundVapour? Vapour { get; init; }

    /// <summary>How the kits are declared for transport, such as UN number, class and packing group.</summary>
    public string? DangerousGoods { get; init; }

    /// <summary>What substances do to the cured compound, as the sheet states it. Read by the match of rope and socket.</summary>
    [Items(100)]
    public IReadOnlyList<CompoundChemical>? Chemicals { get; init; }

    /// <summary>yes where the compound is invented for demonstration.</summary>
    public Fact? Demonstration { get; init; }
}

/// <summary>A kit: resin with its hardener.</summary>
public sealed record CompoundKit
{
    /// <summary>What the kit is called.</summary>
    [Id]
    public required string Code { get; init; }

    /// <summary>Volume when mixed.</summary>
    [Kind(QuantityKind.Volume, 1, 200000, "mL")]
    public required Quantity Volume { get; init; }

    /// <summary>Part number to order it by.</summary>
    [Id]
    public string? PartNumber { get; init; }

    /// <summary>Cost, a plain amount in the sheet's currency.</summary>
    public decimal? Cost { get; init; }
}

/// <summary>A measured gel time.</summary>
public sealed record CompoundGelTime
{
    /// <summary>Temperature of the measurement.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity Temperature { get; init; }

    /// <summary>Doses for each kit.</summary>
    [Within(0, 100)]
    public required int Doses { get; init; }

    /// <summary>Time to gel.</summary>
    [Kind(QuantityKind.Duration, .1, 10080, "min")]
    public required Quantity Time { get; init; }

    /// <summary>What it was measured in.</summary>
    public CompoundGelCup? MeasuredIn { get; init; }
}

/// <summary>What a gel time was measured in.</summary>
public sealed record CompoundGelCup
{
    /// <summary>
    /// Compound in the cup. For the record: a cup that warms itself is taken as one that keeps all its heat, however large it is.
    /// </summary>
    [Kept]
    [Kind(QuantityKind.Volume, .1, 200000, "mL")]
    public Quantity? Volume { get; init; }

    /// <summary>
    /// yes where the cup warmed itself, so that the gel came sooner than at a temperature that is held; no where it was held.
    /// </summary>
    public SelfHeating? SelfHeating { get; init; }
}

/// <summary>The hardness that the sheet asks for.</summary>
public sealed record CompoundHardness
{
    /// <summary>How it is read, as the sheet words it.</summary>
    public required string Method { get; init; }

    /// <summary>The least, in the numbers of the method.</summary>
    [Kind(QuantityKind.Count, 0, 1000, "1")]
    public required Quantity Minimum { get; init; }
}

/// <summary>Full strength at a temperature.</summary>
public sealed record CompoundFullStrength
{
    /// <summary>Temperature of the statement.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity Temperature { get; init; }

    /// <summary>Time from gel to full strength.</summary>
    [Kind(QuantityKind.Duration, 1, 43200, "min")]
    public required Quantity AfterGel { get; init; }

    /// <summary>Doses for each kit that it holds for; any if absent.</summary>
    [Items(20)]
    [Within(0, 100)]
    public IReadOnlyList<int>? Doses { get; init; }

    /// <summary>
    /// yes only where the sample was held at its temperature, so that its own heat didn't help. Then a cone's own heat may count;
    /// isothermalSource says who says so.
    /// </summary>
    public Fact? Isothermal { get; init; }

    /// <summary>Where it is stated that the sample was held at its temperature.</summary>
    [Kept]
    public string? IsothermalSource { get; init; }
}

/// <summary>A range of temperatures.</summary>
public sealed record CompoundTemperatures
{
    /// <summary>Lowest allowed.</summary>
    [Kind(QuantityKind.Temperature, -100, 400, "degC")]
    public required Quantity Minimum { get; init; }

    /// <summary>Highest allowed.</summary>
    [Kind(QuantityKind.Temperature, -100, 400, "degC")]
    public required Quantity Maximum { get; init; }
}

/// <summary>Doses for each kit in a band of temperature.</summary>
public sealed record CompoundDoses
{
    /// <summary>Lower edge, in the band.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity From { get; init; }

    /// <summary>Upper edge, not in the band; the last band includes it.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public required Quantity Below { get; init; }

    /// <summary>Doses for each kit.</summary>
    [Within(0, 100)]
    public required int PerKit { get; init; }
}

/// <summary>Mixing of a kit.</summary>
public sealed record CompoundMixing
{
    /// <summary>Time to mix one kit.</summary>
    [Kind(QuantityKind.Duration, 0, 240, "min")]
    public required Quantity Time { get; init; }
}

/// <summary>Properties of the cured compound.</summary>
public sealed record CompoundCured
{
    /// <summary>Density.</summary>
    [Kind(QuantityKind.Density, .5, 5, "g/mL")]
    public Quantity? Density { get; init; }

    /// <summary>Compressive strength.</summary>
    [Kind(QuantityKind.Stress, 1, 1000, "MPa")]
    public Quantity? CompressiveStrength { get; init; }

    /// <summary>Modulus of elasticity.</summary>
    [Kind(QuantityKind.Stress, 100, 100000, "MPa")]
    public Quantity? Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    [Kind(QuantityKind.Fraction, 0, .499, "1")]
    public Quantity? PoissonRatio { get; init; }

    /// <summary>Volumetric shrinkage from liquid to cured.</summary>
    [Kind(QuantityKind.Fraction, 0, 20, "%")]
    public Quantity? VolumetricShrinkage { get; init; }

    /// <summary>
    /// Linear shrinkage of the cured compound from gel on; a third of the volumetric shrinkage is taken where it is absent.
    /// </summary>
    [Kind(QuantityKind.Fraction, 0, 5, "%")]
    public Quantity? ShrinkageAfterGel { get; init; }

    /// <summary>Linear thermal expansion.</summary>
    [Kind(QuantityKind.Expansion, 0, .0005, "1/K")]
    public Quantity? Expansion { get; init; }

    /// <summary>Thermal conductivity.</summary>
    [Kind(QuantityKind.ThermalConductivity, .05, 10, "W/(m.K)")]
    public Quantity? Conductivity { get; init; }

    /// <summary>Specific heat.</summary>
    [Kind(QuantityKind.SpecificHeat, 300, 5000, "J/(kg.K)")]
    public Quantity? SpecificHeat { get; init; }
}

/// <summary>The curing reaction.</summary>
public sealed record CompoundReaction
{
    /// <summary>Heat of the reaction for each mass of resin.</summary>
    [Kind(QuantityKind.SpecificEnergy, 1, 1000, "kJ/kg")]
    public Quantity? Heat { get; init; }

    /// <summary>Reacting resin in the mixed compound, by mass.</summary>
    [Kind(QuantityKind.Fraction, 1, 100, "%")]
    public Quantity? ResinFraction { get; init; }

    /// <summary>Activation energy of gelling.</summary>
    [Kind(QuantityKind.MolarEnergy, 10, 200, "kJ/mol")]
    public Quantity? ActivationEnergy { get; init; }
}

/// <summary>Vapour that the compound gives off.</summary>
public sealed record CompoundVapour
{
    /// <summary>Name of the substance in lower case, such as styrene.</summary>
    public required string Substance { get; init; }

    /// <summary>Its share of the mixed compound, by mass.</summary>
    [Kind(QuantityKind.Fraction, 0, 100, "%")]
    public Quantity? MassFraction { get; init; }

    /// <summary>How fast the open surface gives off less of it as it skins over, e-fold; a steady source until gel if absent.</summary>
    [Kind(QuantityKind.Rate, 0, 1000, "1/h")]
    public Quantity? Decay { get; init; }
}

/// <summary>What a substance does to the cured compound.</summary>
public sealed record CompoundChemical
{
    /// <summary>Name of the substance, as requests will name it.</summary>
    public required string Substance { get; init; }

    /// <summary>What it does.</summary>
    public required ChemicalEffect Effect { get; init; }
}
