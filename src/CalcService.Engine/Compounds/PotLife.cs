using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Compounds;

/// <summary>How long a mix may be used: the same question, and the same answer, in every calculation.</summary>
/// <param name="Gel">Gel in the vessel.</param>
/// <param name="By">The reading that decided.</param>
/// <param name="S">The pot life; null where the sheet states no share of the gel time.</param>
internal sealed record PotLife(GelBand Gel, Reading By, double? S)
{
    /// <summary>
    /// In the vessel the compound's own temperature counts, or the air's where that is warmer; null where one is missing.
    /// </summary>
    public static Reading? Decides(Reading? air, Reading? compound) => air is null || compound is null ? null : compound.K >= air.K
        ? compound : air;

    /// <summary>
    /// The pot life of a mix that was made, and whether its gel time was read beyond the sheet's rows; null where it can't be known. A gel
    /// that was seen in the vessel takes the place of the computed one.
    /// </summary>
    public static (double Seconds, bool IsGuess)? OfMix(CompoundSheet sheet, int? doses, PouringRules rules, Reading? air,
        Reading? compound, double? vesselGelS, Trace trace)
    {
        if (sheet.PotLife is { } share && vesselGelS is { } seen)
        {
            return (MixFormulas.PotLifeS(share, seen, trace), false);
        }

        var assumed = rules.AssumedActivationEnergy;
        return doses is { } dose && GelModel.For(sheet, dose, new(assumed.Low.Si, assumed.Expected.Si, assumed.High.Si)) is { } model
            && Of(sheet, model, air, compound, trace) is { S: { } life, By.K: var kelvins }
            ? (life, !model.Measured.Contains(kelvins))
            : null;
    }

    /// <summary>The pot life with a dose, by its gel model; null where a reading is missing.</summary>
    public static PotLife? Of(CompoundSheet sheet, GelModel model, Reading? air, Reading? compound, Trace trace)
    {
        if (Decides(air, compound) is not { } decides)
        {
            return null;
        }

        var gel = model.At(decides.K, trace);
        return new(gel, decides, sheet.PotLife is { } share ? MixFormulas.PotLifeS(share, gel.EarliestS, trace) : null);
    }
}
