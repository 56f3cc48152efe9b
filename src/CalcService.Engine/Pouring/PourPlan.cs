using CalcService.Engine.Findings;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Pouring.TakeOff;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>Plans a pour: volumes, dose, pot life, whole kits, and whether today's air and steel allow it.</summary>
public static class PourPlan
{
    /// <summary>Computes a plan.</summary>
    /// <param name="input">What to pour, when, with what, under which readings.</param>
    /// <param name="rules">The edition whose limits hold.</param>
    /// <param name="budget">Steps that may be spent, and whether to keep the trace.</param>
    /// <param name="cancellationToken">Ends the calculation early.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Outcome<PourPlanResult> Calculate(
        PourPlanInput input, RuleBook rules, Budget budget, CancellationToken cancellationToken)
    {
        var scope = new PourScope(input, rules, budget, cancellationToken);
        var ends = input.Ends.Select((end, index) => EndPlanner.Plan(scope, end, index)).ToArray();
        var (dewPoint, frostPoint) = ReadingChecks.Check(scope);
        StatedOnTheDay.Check(scope, ends);
        var dose = DoseAndGel.Dose(scope);
        SheetChecks.Check(scope, dose);
        var gel = DoseAndGel.Gel(scope, dose);
        var dosePlan = dose is null ? null : new DosePlan(dose.PerKit, dose.By.Place, dose.By.K);
        Assume(scope);
        PotLifeChecks.CheckGiven(scope);
        // Where the steel leaves no room in a basket, which is a stop of its own, nothing is planned to be mixed.
        var hasRoom = ends.All(end => end.Fill.HighM3 is not null);
        var plan = hasRoom ? MixPlanner.Plan(scope, ends, dose?.PerKit, UsableS(gel)) : null;

        scope.CheckAhead();
        var mixes = plan?.Mixes ?? [];
        CheckSizes(scope, mixes);
        var vapour = VapourCheck.Check(scope, mixes, gel);
        var validUntil = ReadingAge.ValidUntil(scope, mixes);
        var result = new PourPlanResult
        {
            Ends = ends,
            Dose = dosePlan,
            Gel = gel,
            Mixes = mixes,
            Kits = plan?.Counts ?? [],
            NeededM3 = plan?.Mixes.Sum(mix => mix.NeededM3),
            Cost = plan?.Cost,
            StockValue = plan?.StockValue,
            Optimality = plan is null ? null : (plan.IsOptimal, plan.Gap),
            DewPointK = dewPoint,
            FrostPointK = frostPoint,
            Vapour = vapour,
            ReadingsValidUntil = validUntil,
            WitnessSampleM3 = input.WitnessSampleM3,
            TakeOff = TakeOffPlanner.Plan(scope, ends, plan, dosePlan, gel),
            Flips = Flips.Find(scope, ends, mixes),
            GelledAt = mixes.Count > 0 && gel is not null ? Instants.UpToTheMinute(Instants.After(mixes[^1].StartsAt, gel.InCone.LatestS))
            : null,
        };
        result = result with
        {
            Sequence = [.. input.Ends.Zip(ends).SelectMany(pair => EndSteps.Of(scope, pair.First, pair.Second)),
                .. MixSteps.Of(scope, result)],
            HoldPoints = [.. HoldPoints.Of(scope, result)],
        };
        return new(result, scope.Findings.Sorted(), PouringNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>
    /// The pot life, and never past the first gel in a cone that is warmer than the vessel: what gels while it is poured doesn't flow.
    /// </summary>
    private static double? UsableS(GelPlan? gel) => gel?.PotLifeS is { } life ? Math.Min(life, gel.InCone.EarliestS) : null;

    private static void CheckSizes(PourScope scope, IReadOnlyList<Mix> mixes)
    {
        Judged Hold(Mix mix) => scope.Input.Compound.PotLifeVolumeM3 is { } volume
            ? new(Measure.Volume(mix.MixedM3), Limit.Of(Measure.Volume(volume))) : default;
        if (mixes.FirstOrDefault(mix => Hold(mix).IsAbove) is { } large)
        {
            scope.Find(PouringFindings.MixLargerThanMeasured, PourPointers.PotLifeVolume, Hold(large),
                words: new FindingWord("mix", Measure.Count(large.Number)));
        }
    }

    private static void Assume(PourScope scope)
    {
        if (scope.Input.Allowance is null)
        {
            scope.Assume("/allowance", scope.Rules.Allowance, AssumptionOrigin.Default);
        }

        if (scope.Input.VesselResidueM3 is null)
        {
            scope.Assume("/vesselResidue", "nothing stays in the vessel beyond the allowance", Measure.Volume(0), AssumptionOrigin.Default);
        }
    }
}
