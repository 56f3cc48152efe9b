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
        CheckDoseMoment(scope, input.Mix);
        var kinetics = scope.Kinetics(input.Compound, input.Mix.DosesPerKit ?? dose, scope.Book);
        plan = plan with { DosesPerKit = dose, PotLifeS = CheckPotLife(scope, input.Mix.DosesPerKit ?? dose, air) };
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
        var (sheet, given) = (scope.Input.Compound, scope.Input.Mix.DosesPerKit);
        var asked = scope.Ask().Fact(given is not null, AuditPointers.Doses, "the dose for each kit");
        if (sheet.Doses.Count == 0)
        {
            scope.SheetSilent(AuditPointers.SheetDoses, "doses by temperature");
            scope.Write("dose", CheckOutcome.Undetermined, CompoundFindings.DoseContradictsSheet, missing: [AuditPointers.SheetDoses]);
            return null;
        }

        var (airRead, steel, compound) = Read(scope, air);
        if (SheetDose.Decides(sheet, airRead, steel, compound) is null)
        {
            scope.MustHold("dose", CompoundFindings.DoseContradictsSheet, Basis(scope));
            return null;
        }

        if (SheetDose.Of(scope, sheet, airRead, steel, compound) is not { } dose)
        {
            scope.Write("dose", CheckOutcome.Undetermined, CompoundFindings.DoseContradictsSheet, missing: [AuditPointers.SheetDoses]);
            return null;
        }

        var stands = SheetDose.Check(scope, sheet, dose, given, AuditPointers.Doses);
        scope.Judge("dose", stands ? null : Severity.Stop, CompoundFindings.DoseContradictsSheet, asked.Gaps,
            new(given is { } known ? Measure.Count(known) : null, Limit.Of(Measure.Count(dose.PerKit))));
        return dose.PerKit;
    }

    private static void CheckDoseMoment(AuditScope scope, RecordedMix mix)
    {
        var isLate = mix.DoseAdded == DoseMoment.AfterHardener;
        if (isLate)
        {
            scope.Find(DoseFindings.DoseAfterHardener, AuditPointers.DoseAdded);
        }

        if (!isLate && mix.DosesPerKit is not > 0)
        {
            scope.Skip("dose-moment", DoseFindings.DoseAfterHardener);
            return;
        }

        scope.Judge("dose-moment", isLate ? Severity.Stop : null, DoseFindings.DoseAfterHardener,
            scope.Ask().Told(StatedFact.Of(AuditPointers.DoseAdded, "when the dose went in", mix.DoseAdded, isNeeded: false)).Gaps);
    }

    private static double? CheckPotLife(AuditScope scope, int? doses, TemperatureHistory? air)
    {
        var (sheet, times) = (scope.Input.Compound, scope.Input.Times);
        var asked = Basis(scope).Time(times.PouredAt, "pouredAt", "when the basket was full");
        if (sheet.PotLife is null)
        {
            scope.SheetSilent(AuditPointers.SheetPotLife, "pot life");
        }

        var life = PotLifeOf(scope, doses, air);
        var (potLife, isGuess) = (life?.Seconds, life?.IsGuess == true);
        Measure? taken = times is { MixedAt: { } mixed, PouredAt: { } poured } ? Measure.Duration((poured - mixed).TotalSeconds) : null;
        var judged = new Judged(taken, potLife is { } allowed ? Limit.Of(Measure.Duration(allowed)) : null);
        var isLate = judged.IsAbove;
        if (isLate)
        {
            // A good end is not scrapped on a guess.
            scope.Find(CompoundFindings.PouredLate, AuditPointers.Time("pouredAt"), judged,
                [AuditPointers.Time("mixedAt"), AuditPointers.SheetPotLife],
                isGuess ? Severity.Unknown : Severity.Stop);
        }

        if ((isLate && isGuess) || (potLife is null && asked.Gaps.Count == 0))
        {
            scope.Write("pot-life", CheckOutcome.Undetermined, CompoundFindings.PouredLate, judged,
                missing: [isLate ? AuditPointers.SheetGelTimes : AuditPointers.SheetPotLife]);
        }
        else
        {
            scope.Judge("pot-life", isLate ? Severity.Stop : null, CompoundFindings.PouredLate, asked.Gaps, judged);
        }

        return potLife;
    }

    private static (double Seconds, bool IsGuess)? PotLifeOf(AuditScope scope, int? doses, TemperatureHistory? air)
    {
        var (times, (airRead, _, compound)) = (scope.Input.Times, Read(scope, air));
        double? vessel = scope.Input.GelSeenIn == GelPlace.Vessel && times is { MixedAt: { } mixed, GelAt: { } gelled } && gelled > mixed
            ? (gelled - mixed).TotalSeconds : null;
        return PotLife.OfMix(scope.Input.Compound, doses, scope.Book.Pouring, airRead, compound, vessel, scope.Trace);
    }

    private static (Reading? Air, Reading? Steel, Reading? Compound) Read(AuditScope scope, TemperatureHistory? air) => (
        Reading.Of(Reading.Air, AuditPointers.Air, air?.At(0)),
        Reading.Of(Reading.Steel, AuditPointers.Steel, scope.Input.Readings.SteelK),
        Reading.Of(Reading.Compound, AuditPointers.Compound, scope.Input.Readings.CompoundK));
}
