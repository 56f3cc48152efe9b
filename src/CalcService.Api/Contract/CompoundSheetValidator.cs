using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a data sheet may state, and where it would contradict itself.</summary>
public sealed class CompoundSheetValidator : Contradictions<CompoundSheet>
{
    protected override void Check(CompoundSheet sheet, ValidationContext<CompoundSheet> context)
    {
        FindTwins(sheet.MixingOrder ?? [], part => part, (first, second) => context.Contradict(
            $"{nameof(CompoundSheet.MixingOrder)}[{first}]", $"{nameof(CompoundSheet.MixingOrder)}[{second}]",
            "A part stands in the mixing order twice."));
        FindTwins(sheet.Chemicals ?? [], row => row.Substance.ToUpperInvariant(), (first, second) => context.Contradict(
            $"{nameof(CompoundSheet.Chemicals)}[{first}].Substance", $"{nameof(CompoundSheet.Chemicals)}[{second}].Substance",
            "Two rows for the same substance."));
        FindTwins(sheet.Kits, kit => kit.Code, (first, second) => context.Contradict(
            $"{nameof(CompoundSheet.Kits)}[{first}].Code", $"{nameof(CompoundSheet.Kits)}[{second}].Code", "Two kits have the same code."));
        FindTwins(sheet.GelTimes ?? [], row => (row.Temperature.Si, row.Doses), (first, second) => context.Contradict(
            $"{nameof(CompoundSheet.GelTimes)}[{first}]", $"{nameof(CompoundSheet.GelTimes)}[{second}]",
            "Two gel times for the same temperature and dose."));
        CheckGelTimes(sheet, context);
        CheckBands(sheet, context);
        CheckFullStrength(sheet, context);
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
            foreach (var ((cold, first), (warm, second)) in dose.OrderBy(entry => entry.row.Temperature.Si).ToArray() is var sorted
                ? sorted.Zip(sorted.Skip(1)) : [])
            {
                if (warm.Temperature.Si > cold.Temperature.Si && warm.Time.Si >= cold.Time.Si)
                {
                    context.Contradict($"{nameof(CompoundSheet.GelTimes)}[{first}].Time",
                        $"{nameof(CompoundSheet.GelTimes)}[{second}].Time",
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
                context.Contradict(nameof(CompoundSheet.LowestCure), At(i, "Temperature"),
                    "Full strength is stated below the lowest cure temperature.");
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
                    context.Contradict($"{nameof(CompoundSheet.FullStrength)}[{other}]", $"{nameof(CompoundSheet.FullStrength)}[{i}]",
                        "Two times to full strength for the same temperature and dose.");
                }
                else if (rows[warm].AfterGel.Si > rows[cold].AfterGel.Si)
                {
                    context.Contradict(At(cold, "AfterGel"), At(warm, "AfterGel"),
                        "The warmer of two times to full strength is the longer one.");
                }
            }
        }
    }

    /// <summary>Rows without doses stand by themselves: they are read only where none names the dose in use.</summary>
    private static bool HoldTogether(CompoundFullStrength one, CompoundFullStrength other) =>
        (one.Doses is null or { Count: 0 }) == (other.Doses is null or { Count: 0 })
        && (one.Doses is null or { Count: 0 } || one.Doses.Intersect(other.Doses!).Any());

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
            context.Contradict($"{nameof(CompoundSheet.Doses)}[0].From", "Pouring.Minimum",
                "The dose bands do not cover the pouring range.");
        }

        if (sheet.Pouring is { } range && bands[^1].Below.Si < range.Maximum.Si)
        {
            context.Contradict($"{nameof(CompoundSheet.Doses)}[{bands.Count - 1}].Below", "Pouring.Maximum",
                "The dose bands do not cover the pouring range.");
        }
    }
}

/// <summary>What a dose band may be.</summary>
public sealed class CompoundDosesValidator : Contradictions<CompoundDoses>
{
    protected override void Check(CompoundDoses band, ValidationContext<CompoundDoses> context)
    {
        if (band.From.Si >= band.Below.Si)
        {
            context.Contradict(nameof(CompoundDoses.From), nameof(CompoundDoses.Below), "The band is empty.");
        }
    }
}

/// <summary>What a full strength may be.</summary>
public sealed class CompoundFullStrengthValidator : Contradictions<CompoundFullStrength>
{
    protected override void Check(CompoundFullStrength full, ValidationContext<CompoundFullStrength> context)
    {
        if (full.Isothermal == Fact.Yes && string.IsNullOrWhiteSpace(full.IsothermalSource))
        {
            context.Contradict(nameof(CompoundFullStrength.Isothermal), nameof(CompoundFullStrength.IsothermalSource),
                "Whoever says that the sample was held at its temperature says where that is stated.");
        }
    }
}

/// <summary>What a range of temperatures may be.</summary>
public sealed class CompoundTemperaturesValidator : Contradictions<CompoundTemperatures>
{
    protected override void Check(CompoundTemperatures range, ValidationContext<CompoundTemperatures> context)
    {
        if (range.Minimum.Si > range.Maximum.Si)
        {
            context.Contradict(nameof(CompoundTemperatures.Minimum), nameof(CompoundTemperatures.Maximum),
                "The minimum is above the maximum.");
        }
    }
}
