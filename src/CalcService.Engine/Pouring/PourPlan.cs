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
        var scope = new PourScope(input, rules.Pouring, budget, cancellationToken);
        if (input.Compound.Demonstration)
        {
            scope.Find(PouringFindings.Demonstration, PourPointers.Sheet);
        }

        var ends = input.Ends.Select((end, index) => EndPlanner.Plan(scope, end, index)).ToArray();
        var (dewPoint, frostPoint) = ReadingChecks.Check(scope);
        var dose = DoseAndGel.Dose(scope);
        var gel = DoseAndGel.Gel(scope, dose);
        var needed = Needed(scope, ends);
        var kits = needed is { } volume ? KitPlanner.Plan(scope, volume) : null;
        // Without kits at least one is mixed, so that a pot life that can't be kept is still found.
        var usedIn = PotLifeChecks.UsedInS(scope, kits?.MixKits.Sum(kit => kit.Count) ?? 1, ends.Sum(end => end.Quantity), gel?.PotLifeS);

        var result = new PourPlanResult
        {
            Ends = ends,
            Dose = dose,
            Gel = gel,
            Mix = kits is null ? null : new(1, kits.MixKits, needed!.Value, kits.MixedM3, input.PourAt, usedIn),
            Kits = kits?.Counts ?? [],
            NeededM3 = needed,
            Cost = kits?.Cost,
            StockValue = kits?.StockValue,
            DewPointK = dewPoint,
            FrostPointK = frostPoint,
            Vapour = VapourCheck.Check(scope, kits?.MixedM3 ?? needed, gel?.InCone.LatestS),
        };
        return new(result, scope.Findings.Sorted(), PouringNotes.All, scope.Assumptions, scope.Trace.Steps);
    }

    /// <summary>What has to be mixed; null where the steel leaves no room in some basket, which is a stop of its own.</summary>
    private static double? Needed(PourScope scope, PlannedEnd[] ends)
    {
        var input = scope.Input;
        if (input.Allowance is null)
        {
            scope.Assume("/allowance", scope.Rules.Allowance.Text, scope.Rules.Allowance.Value, AssumptionOrigin.Default);
        }

        if (input.VesselResidueM3 is null)
        {
            scope.Assume("/vesselResidue", "nothing stays in the vessel beyond the allowance", Measure.Volume(0), AssumptionOrigin.Default);
        }

        if (ends.Any(end => end.Fill.HighM3 is null))
        {
            return null;
        }

        return KitPlanner.NeededM3(input.Allowance ?? scope.Rules.Allowance.Value!.Value.Si,
            ends.Sum(end => end.Quantity * end.Fill.HighM3!.Value), input.VesselResidueM3 ?? 0, scope.Trace);
    }
}
