using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a data sheet may state, and where it would contradict itself.</summary>
public sealed class CompoundSheetValidator : AbstractValidator<CompoundSheet>
{
    /// <summary>Sizes of kit on one sheet.</summary>
    public const int MostKits = 20;

    public CompoundSheetValidator()
    {
        RuleFor(sheet => sheet.Kits).Must(kits => kits.Count is > 0 and <= MostKits)
            .WithErrorCode(RuleWords.RangeCode).WithMessage($"A sheet has 1 to {MostKits} sizes of kit.");
        RuleForEach(sheet => sheet.Kits).SetValidator(new CompoundKitValidator());
        RuleForEach(sheet => sheet.GelTimes).SetValidator(new CompoundGelTimeValidator());
        RuleForEach(sheet => sheet.Doses).SetValidator(new CompoundDosesValidator());
        RuleFor(sheet => sheet.Hardness!).SetValidator(new CompoundHardnessValidator());
        RuleForEach(sheet => sheet.FullStrength).SetValidator(new CompoundFullStrengthValidator());
        RuleFor(sheet => sheet.Pouring!).SetValidator(new CompoundTemperaturesValidator());
        RuleFor(sheet => sheet.Storage!).SetValidator(new CompoundTemperaturesValidator());
        RuleFor(sheet => sheet.Service!).SetValidator(new CompoundTemperaturesValidator());
        this.Ranges()
            .Of(sheet => sheet.LowestCure, -60, 150, "degC", QuantityKind.Temperature)
            .Of(sheet => sheet.AfterGelEnergy, 10, 200, "kJ/mol", QuantityKind.MolarEnergy)
            .Of(sheet => sheet.MinimumHold, 0, 720, "h", QuantityKind.Duration)
            .Of(sheet => sheet.PeakLimit, 20, 400, "degC", QuantityKind.Temperature)
            .Of(sheet => sheet.PotLifeVolume, .01, 200, "L", QuantityKind.Volume)
            .Of(sheet => sheet.PotLife, 1, 100, "%", QuantityKind.Fraction)
            .Of(sheet => sheet.MaximumDoses, 0, 100);
        RuleFor(sheet => sheet.MixingOrder).Must(order => order is null || (order.Count <= 8 && order.Distinct().Count() == order.Count))
            .WithErrorCode(RuleWords.RangeCode).WithMessage("Each part stands in the mixing order at most once.");
        RuleFor(sheet => sheet.Vessels).Must(vessels => vessels is null || vessels.Count <= 20)
            .WithErrorCode(RuleWords.RangeCode).WithMessage("At most 20 vessels are listed.");
        RuleFor(sheet => sheet.Mixing!).SetValidator(new CompoundMixingValidator());
        RuleFor(sheet => sheet.ShelfLife).Between(1, 240, "mo", QuantityKind.CalendarMonths)
            .Must(life => life is null || life.Si == Math.Floor(life.Si)).WithErrorCode("not-integer").WithMessage("Whole months are expected.");
        RuleFor(sheet => sheet.Cured!).SetValidator(new CompoundCuredValidator());
        RuleFor(sheet => sheet.Reaction!).SetValidator(new CompoundReactionValidator());
        RuleFor(sheet => sheet.Vapour!).SetValidator(new CompoundVapourValidator());
        RuleForEach(sheet => sheet.Chemicals).SetValidator(new CompoundChemicalValidator());
        RuleFor(sheet => sheet).Custom((sheet, context) =>
        {
            FindTwins(sheet.Chemicals ?? [], row => row.Substance.ToUpperInvariant(), (first, second) => context.Contradict(
                $"{nameof(CompoundSheet.Chemicals)}[{first}].Substance", $"{nameof(CompoundSheet.Chemicals)}[{second}].Substance", "Two rows for the same substance."));
            FindTwins(sheet.Kits, kit => kit.Code, (first, second) => context.Contradict(
                $"{nameof(CompoundSheet.Kits)}[{first}].Code", $"{nameof(CompoundSheet.Kits)}[{second}].Code", "Two kits have the same code."));
            FindTwins(sheet.GelTimes ?? [], row => (row.Temperature.Si, row.Doses), (first, second) => context.Contradict(
                $"{nameof(CompoundSheet.GelTimes)}[{first}]", $"{nameof(CompoundSheet.GelTimes)}[{second}]", "Two gel times for the same temperature and dose."));
            CheckGelTimes(sheet, context);
            CheckBands(sheet, context);
            CheckFullStrength(sheet, context);
        });
    }

    /// <summary>Reports each entry that has the key of an earlier one.</summary>
    internal static void FindTwins<TItem, TKey>(IReadOnlyList<TItem> items, Func<TItem, TKey> keyOf, Action<int, int> report)
        where TKey : notnull
    {
        var seen = new Dictionary<TKey, int>();
        for (var i = 0; i < items.Count; i++)
        {
            if (!seen.TryAdd(keyOf(items[i]), i))
            {
                report(seen[keyOf(items[i])], i);
            }
        }
    }

    /// <summary>For one dose, warmer gels sooner. A typing error here would promise a pot life that isn't there.</summary>
    private static void CheckGelTimes(CompoundSheet sheet, ValidationContext<CompoundSheet> context)
    {
        var rows = (sheet.GelTimes ?? []).Select((row, index) => (row, index)).GroupBy(entry => entry.row.Doses);
        foreach (var dose in rows)
        {
            foreach (var ((cold, first), (warm, second)) in dose.OrderBy(entry => entry.row.Temperature.Si).ToArray() is var sorted ? sorted.Zip(sorted.Skip(1)) : [])
            {
                if (warm.Temperature.Si > cold.Temperature.Si && warm.Time.Si >= cold.Time.Si)
                {
                    context.Contradict($"{nameof(CompoundSheet.GelTimes)}[{first}].Time", $"{nameof(CompoundSheet.GelTimes)}[{second}].Time",
                        "The warmer of two gel times with the same dose is not the shorter one.");
                }
            }
        }
    }

    /// <summary>Two rows that hold for a dose: one for each temperature, and warmer is not slower.</summary>
    private static void CheckFullStrength(CompoundSheet sheet, ValidationContext<CompoundSheet> context)
    {
        var rows = sheet.FullStrength ?? [];
        for (var i = 0; i < rows.Count; i++)
        {
            string At(int index, string member) => $"{nameof(CompoundSheet.FullStrength)}[{index}].{member}";
            if (sheet.LowestCure is { } lowest && lowest.Si > rows[i].Temperature.Si)
            {
                context.Contradict(nameof(CompoundSheet.LowestCure), At(i, "Temperature"), "Full strength is stated below the lowest cure temperature.");
            }

            for (var other = 0; other < i; other++)
            {
                if (!HoldTogether(rows[other], rows[i]))
                {
                    continue;
                }

                var (cold, warm) = rows[other].Temperature.Si <= rows[i].Temperature.Si ? (other, i) : (i, other);
                if (rows[cold].Temperature.Si == rows[warm].Temperature.Si)
                {
                    context.Contradict($"{nameof(CompoundSheet.FullStrength)}[{other}]", $"{nameof(CompoundSheet.FullStrength)}[{i}]", "Two times to full strength for the same temperature and dose.");
                }
                else if (rows[warm].AfterGel.Si > rows[cold].AfterGel.Si)
                {
                    context.Contradict(At(cold, "AfterGel"), At(warm, "AfterGel"), "The warmer of two times to full strength is the longer one.");
                }
            }
        }
    }

    /// <summary>Rows without doses stand by themselves: they are read only where none names the dose in use.</summary>
    private static bool HoldTogether(CompoundFullStrength one, CompoundFullStrength other) =>
        (one.Doses is null or { Count: 0 }) == (other.Doses is null or { Count: 0 }) && (one.Doses is null or { Count: 0 } || one.Doses.Intersect(other.Doses!).Any());

    private static void CheckBands(CompoundSheet sheet, ValidationContext<CompoundSheet> context)
    {
        if (sheet.Doses is not { Count: > 0 } bands)
        {
            return;
        }

        for (var i = 1; i < bands.Count; i++)
        {
            if (bands[i].From.Si != bands[i - 1].Below.Si)
            {
                context.Contradict($"{nameof(CompoundSheet.Doses)}[{i - 1}].Below", $"{nameof(CompoundSheet.Doses)}[{i}].From",
                    "The dose bands have a gap, overlap or are not in order, coldest first.");
            }
        }

        if (sheet.Pouring is { } pouring && bands[0].From.Si > pouring.Minimum.Si)
        {
            context.Contradict($"{nameof(CompoundSheet.Doses)}[0].From", "Pouring.Minimum", "The dose bands do not cover the pouring range.");
        }

        if (sheet.Pouring is { } range && bands[^1].Below.Si < range.Maximum.Si)
        {
            context.Contradict($"{nameof(CompoundSheet.Doses)}[{bands.Count - 1}].Below", "Pouring.Maximum", "The dose bands do not cover the pouring range.");
        }
    }
}

/// <summary>What a kit may be.</summary>
public sealed class CompoundKitValidator : AbstractValidator<CompoundKit>
{
    public CompoundKitValidator()
    {
        this.Ranges().Of(kit => kit.Volume, 1, 200000, "mL", QuantityKind.Volume);
        RuleFor(kit => kit.Cost).Amount();
    }
}

/// <summary>What a gel time may be.</summary>
public sealed class CompoundGelTimeValidator : AbstractValidator<CompoundGelTime>
{
    public CompoundGelTimeValidator()
    {
        this.Ranges()
            .Of(row => row.Temperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(row => row.Time, .1, 10080, "min", QuantityKind.Duration)
            .Of(row => row.Doses, 0, 100);
        RuleFor(row => row.MeasuredIn!).SetValidator(new CompoundGelCupValidator());
    }
}

/// <summary>What a cup may be.</summary>
public sealed class CompoundGelCupValidator : AbstractValidator<CompoundGelCup>
{
    public CompoundGelCupValidator() => this.Ranges().Of(cup => cup.Volume, .1, 200000, "mL", QuantityKind.Volume);
}

/// <summary>What a dose band may be.</summary>
public sealed class CompoundDosesValidator : AbstractValidator<CompoundDoses>
{
    public CompoundDosesValidator()
    {
        this.Ranges()
            .Of(band => band.From, -60, 150, "degC", QuantityKind.Temperature)
            .Of(band => band.Below, -60, 150, "degC", QuantityKind.Temperature)
            .Of(band => band.PerKit, 0, 100);
        RuleFor(band => band).Custom((band, context) =>
        {
            if (band.From.Si >= band.Below.Si)
            {
                context.Contradict(nameof(CompoundDoses.From), nameof(CompoundDoses.Below), "The band is empty.");
            }
        });
    }
}

/// <summary>What a hardness may be.</summary>
public sealed class CompoundHardnessValidator : AbstractValidator<CompoundHardness>
{
    public CompoundHardnessValidator() => this.Ranges().Of(hardness => hardness.Minimum, 0, 1000, "1", QuantityKind.Count);
}

/// <summary>What a full strength may be.</summary>
public sealed class CompoundFullStrengthValidator : AbstractValidator<CompoundFullStrength>
{
    public CompoundFullStrengthValidator()
    {
        this.Ranges()
            .Of(full => full.Temperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(full => full.AfterGel, 1, 43200, "min", QuantityKind.Duration);
        RuleForEach(full => full.Doses).InclusiveBetween(0, 100).WithErrorCode(RuleWords.RangeCode).WithMessage("Doses are 0 to 100 for each kit.");
        RuleFor(full => full).Custom((full, context) =>
        {
            if (full.Isothermal == Fact.Yes && string.IsNullOrWhiteSpace(full.IsothermalSource))
            {
                context.Contradict(nameof(CompoundFullStrength.Isothermal), nameof(CompoundFullStrength.IsothermalSource), "Whoever says that the sample was held at its temperature says where that is stated.");
            }
        });
    }
}

/// <summary>What a range of temperatures may be.</summary>
public sealed class CompoundTemperaturesValidator : AbstractValidator<CompoundTemperatures>
{
    public CompoundTemperaturesValidator()
    {
        this.Ranges()
            .Of(range => range.Minimum, -100, 400, "degC", QuantityKind.Temperature)
            .Of(range => range.Maximum, -100, 400, "degC", QuantityKind.Temperature);
        RuleFor(range => range).Custom((range, context) =>
        {
            if (range.Minimum.Si > range.Maximum.Si)
            {
                context.Contradict(nameof(CompoundTemperatures.Minimum), nameof(CompoundTemperatures.Maximum), "The minimum is above the maximum.");
            }
        });
    }
}

/// <summary>What mixing may take.</summary>
public sealed class CompoundMixingValidator : AbstractValidator<CompoundMixing>
{
    public CompoundMixingValidator() => this.Ranges().Of(mixing => mixing.Time, 0, 240, "min", QuantityKind.Duration);
}

/// <summary>What the properties of the cured compound may be.</summary>
public sealed class CompoundCuredValidator : AbstractValidator<CompoundCured>
{
    public CompoundCuredValidator()
    {
        this.Ranges()
            .Of(cured => cured.Density, .5, 5, "g/mL", QuantityKind.Density)
            .Of(cured => cured.CompressiveStrength, 1, 1000, "MPa", QuantityKind.Stress)
            .Of(cured => cured.Modulus, 100, 100000, "MPa", QuantityKind.Stress)
            .Of(cured => cured.PoissonRatio, 0, .499, "1", QuantityKind.Fraction)
            .Of(cured => cured.VolumetricShrinkage, 0, 20, "%", QuantityKind.Fraction)
            .Of(cured => cured.ShrinkageAfterGel, 0, 5, "%", QuantityKind.Fraction)
            .Of(cured => cured.Expansion, 0, .0005, "1/K", QuantityKind.Expansion)
            .Of(cured => cured.Conductivity, .05, 10, "W/(m.K)", QuantityKind.ThermalConductivity)
            .Of(cured => cured.SpecificHeat, 300, 5000, "J/(kg.K)", QuantityKind.SpecificHeat);
    }
}

/// <summary>What the numbers of the reaction may be.</summary>
public sealed class CompoundReactionValidator : AbstractValidator<CompoundReaction>
{
    public CompoundReactionValidator()
    {
        this.Ranges()
            .Of(reaction => reaction.Heat, 1, 1000, "kJ/kg", QuantityKind.SpecificEnergy)
            .Of(reaction => reaction.ResinFraction, 1, 100, "%", QuantityKind.Fraction)
            .Of(reaction => reaction.ActivationEnergy, 10, 200, "kJ/mol", QuantityKind.MolarEnergy);
    }
}

/// <summary>What the vapour may be.</summary>
public sealed class CompoundVapourValidator : AbstractValidator<CompoundVapour>
{
    public CompoundVapourValidator()
    {
        this.Ranges()
            .Of(vapour => vapour.MassFraction, 0, 100, "%", QuantityKind.Fraction)
            .Of(vapour => vapour.Decay, 0, 1000, "1/h", QuantityKind.Rate);
    }
}

/// <summary>What a row of the table of chemicals may be.</summary>
public sealed class CompoundChemicalValidator : AbstractValidator<CompoundChemical>
{
    public CompoundChemicalValidator() => RuleFor(row => row.Substance).NotEmpty().WithErrorCode("required").WithMessage("The substance has no name.");
}
