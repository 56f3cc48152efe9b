using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>Dose, pot life, gel and release against what the sheet gives for the recorded temperatures.</summary>
internal static class CureDayChecks
{
    public static RecomputedPlan Check(AuditScope scope, RecomputedPlan plan)
    {
        var (input, air) = (scope.Input, RecordedAir.Of(scope.Input));
        var dose = CheckDose(scope, air);
        var kinetics = scope.Kinetics(input.Compound, input.Mix.DosesPerKit ?? dose, scope.Book);
        plan = plan with { DosesPerKit = dose, PotLifeS = CheckPotLife(scope, kinetics, air) };
        if (kinetics is null || air is null || input.Times.MixedAt is null)
        {
            return ReleaseChecks.Open(scope, plan);
        }

        return AuditedCure.Check(scope, kinetics, air, plan);
    }

    /// <summary>Items that gel and release can't do without.</summary>
    public static AuditScope.Asked Basis(AuditScope scope) => scope.Ask()
        .Fact(HeldChecks.HasAir(scope.Input.Readings), AuditPointers.Air, "the air temperature")
        .Fact(scope.Input.Readings.SteelK is not null, AuditPointers.Steel, "the steel temperature")
        .Fact(scope.Input.Readings.CompoundK is not null, AuditPointers.Compound, "the compound temperature")
        .Fact(scope.Input.Mix.DosesPerKit is not null, AuditPointers.Doses, "the dose for each kit")
        .Time(scope.Input.Times.MixedAt, "mixedAt", "when the compound was mixed");

    private static int? CheckDose(AuditScope scope, TemperatureHistory? air)
    {
        var (sheet, readings, given) = (scope.Input.Compound, scope.Input.Readings, scope.Input.Mix.DosesPerKit);
        var asked = scope.Ask().Fact(given is not null, AuditPointers.Doses, "the dose for each kit");
        if (sheet.Doses.Count == 0)
        {
            scope.SheetSilent(AuditPointers.SheetDoses, "doses by temperature");
            scope.Write("dose", CheckOutcome.Undetermined, CompoundFindings.DoseContradictsSheet, missing: [AuditPointers.SheetDoses]);
            return null;
        }

        if (DoseBasis.Of(sheet.DoseByTemperatureOf, air?.At(0), readings.SteelK, readings.CompoundK) is not (var place, var kelvins))
        {
            scope.MustHold("dose", CompoundFindings.DoseContradictsSheet, Basis(scope));
            return null;
        }

        var pointer = place switch { DosePlace.Air => AuditPointers.Air, DosePlace.Steel => AuditPointers.Steel, _ => AuditPointers.Compound };
        if (sheet.DosesPerKitAt(kelvins) is not { } doses)
        {
            scope.Find(CompoundFindings.DoseUnknown, pointer, Measure.Temperature(kelvins), related: [AuditPointers.SheetDoses]);
            scope.Write("dose", CheckOutcome.Undetermined, CompoundFindings.DoseContradictsSheet, missing: [AuditPointers.SheetDoses]);
            return null;
        }

        var isOther = given is { } dose && dose != doses;
        Measure? found = given is { } known ? Measure.Count(known) : null;
        if (isOther)
        {
            scope.Find(CompoundFindings.DoseContradictsSheet, AuditPointers.Doses, found, Measure.Count(doses), [pointer, AuditPointers.SheetDoses]);
        }

        scope.Judge("dose", isOther, CompoundFindings.DoseContradictsSheet, asked.Gaps, found, Measure.Count(doses));
        return doses;
    }

    private static double? CheckPotLife(AuditScope scope, CureKinetics? kinetics, TemperatureHistory? air)
    {
        var (readings, times) = (scope.Input.Readings, scope.Input.Times);
        var asked = Basis(scope).Time(times.PouredAt, "pouredAt", "when the basket was full");
        double? potLife = null;
        if (scope.Input.Compound.PotLife is not { } share)
        {
            scope.SheetSilent(AuditPointers.SheetPotLife, "pot life");
        }
        else if (kinetics is not null && air is not null && readings.CompoundK is { } compound)
        {
            // In the vessel the compound's own temperature counts, or the air's where that is warmer.
            potLife = MixFormulas.PotLifeS(share, kinetics.Model.At(Math.Max(compound, air.At(0)), scope.Trace).EarliestS, scope.Trace);
        }

        Measure? taken = times is { MixedAt: { } mixed, PouredAt: { } poured } ? Measure.Duration((poured - mixed).TotalSeconds) : null;
        Measure? limit = potLife is { } allowed ? Measure.Duration(allowed) : null;
        var isLate = taken is { } time && limit is { } most && Judged.IsAbove(time.Si, most.Si);
        if (isLate)
        {
            scope.Find(AuditFindings.PouredLate, AuditPointers.Time("pouredAt"), taken, limit, [AuditPointers.Time("mixedAt"), AuditPointers.SheetPotLife]);
        }

        if (limit is null && asked.Gaps.Count == 0)
        {
            scope.Write("pot-life", CheckOutcome.Undetermined, AuditFindings.PouredLate, missing: [AuditPointers.SheetPotLife]);
        }
        else
        {
            scope.Judge("pot-life", isLate, AuditFindings.PouredLate, asked.Gaps, taken, limit);
        }

        return potLife;
    }
}
