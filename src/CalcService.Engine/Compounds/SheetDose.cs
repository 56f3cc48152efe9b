using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Compounds;

/// <summary>
/// The dose that the sheet has for the readings of the day: the same question, and the same answer, in every calculation.
/// </summary>
/// <param name="PerKit">Doses for each kit.</param>
/// <param name="By">The reading that decided.</param>
internal sealed record SheetDose(int PerKit, Reading By)
{
    private const string Bands = "/compound/sheet/doses", Maximum = "/compound/sheet/maximumDoses";

    /// <summary>The reading that the doses of a sheet go by; null where one that it takes is missing.</summary>
    public static Reading? Decides(CompoundSheet sheet, Reading? air, Reading? steel, Reading? compound) => sheet.DoseByTemperatureOf switch
    {
        DosePlace.Air => air,
        DosePlace.Steel => steel,
        DosePlace.Compound => compound,
        _ => air is null || steel is null ? null : steel.K <= air.K ? steel : air,
    };

    /// <summary>The dose; null, and found, where the sheet has none for the reading that decides, and null where that is missing.</summary>
    public static SheetDose? Of(CalculationScope scope, CompoundSheet sheet, Reading? air, Reading? steel, Reading? compound)
    {
        if (Decides(sheet, air, steel, compound) is not { } decides)
        {
            return null;
        }

        if (sheet.DosesPerKitAt(decides.K) is not { } doses)
        {
            // No dose is asked of a sheet that forbids to pour at this temperature, which is a stop of its own.
            if (sheet.AllowsPouringAt(decides.K))
            {
                scope.Find(CompoundFindings.DoseUnknown, decides.Pointer, Measure.Temperature(decides.K), related: [Bands]);
            }

            return null;
        }

        return new(doses, decides);
    }

    /// <summary>
    /// Holds the dose that is meant, or was given, against the sheet's, and either against the most that the sheet allows; whether it
    /// stands.
    /// </summary>
    /// <param name="scope">Takes the findings.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="asked">What the sheet has; null where that isn't known.</param>
    /// <param name="given">What is meant or was given; null where nobody said.</param>
    /// <param name="givenAt">The member that says so.</param>
    public static bool Check(CalculationScope scope, CompoundSheet sheet, SheetDose? asked, int? given, string givenAt)
    {
        var isOther = given is { } dose && asked is not null && dose != asked.PerKit;
        if (isOther)
        {
            scope.Find(CompoundFindings.DoseContradictsSheet, givenAt, Judged.Count(given!.Value, asked!.PerKit),
                [asked.By.Pointer, Bands]);
        }

        Judged most = (given ?? asked?.PerKit) is { } doses && sheet.MaximumDoses is { } maximum ? Judged.Count(doses, maximum) : default;
        if (most.IsAbove)
        {
            scope.Find(DoseFindings.DoseAboveMaximum, given is null ? Bands : givenAt, most, [Maximum]);
        }

        return !isOther && !most.IsAbove;
    }
}
