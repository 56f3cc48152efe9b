using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the crew can use up a mix before it thickens.</summary>
internal static class PotLifeChecks
{
    /// <summary>Time from the start of mixing until the last basket is full, or null where it can't be known.</summary>
    public static double? UsedInS(PourScope scope, int kits, int baskets, double? potLifeS)
    {
        var input = scope.Input;
        if (input.PourTimeS is null)
        {
            scope.Find(PouringFindings.PourTimeMissing, PourPointers.PourTime);
        }

        if (input.Compound.MixingTimeS is null)
        {
            scope.SheetSilent(PourPointers.Mixing, "mixing time");
        }

        if (input.PourTimeS is not { } pourTime || input.Compound.MixingTimeS is not { } mixingTime)
        {
            return null;
        }

        if (input.Mixers is null)
        {
            scope.Assume(PourPointers.Mixers, "one mixer", Measure.Count(1), AssumptionOrigin.Default);
        }

        var usedIn = UseTimeS(kits, input.Mixers ?? 1, mixingTime, baskets, pourTime, scope.Trace);
        var shortest = UseTimeS(1, 1, mixingTime, 1, pourTime, Trace.None);
        if (potLifeS is { } potLife && shortest > potLife)
        {
            scope.Find(PouringFindings.PotLifeTooShort, PourPointers.PourTime, Measure.Duration(shortest), Measure.Duration(potLife), [PourPointers.Compound]);
        }
        else if (potLifeS < usedIn)
        {
            scope.Find(PouringFindings.MixOutlastsPotLife, PourPointers.Ends, Measure.Duration(usedIn), Measure.Duration(potLifeS.Value),
                [PourPointers.PourTime, PourPointers.Compound]);
        }

        return usedIn;
    }

    /// <summary>t_u = ⌈k/x⌉·t_m + b·t_p, k kits on x mixers with t_m each, then b baskets with t_p each; in s.</summary>
    [Formula("use-time", "kits mixed side by side, baskets filled one after another", "docs/pour-plans.md", Basis.Derived, Symbol = "t_u", Name = "time to use up the mix",
        Expression = "ceil(k/x)·t_m + b·t_p", Kind = QuantityKind.Duration, Range = "one pourer; pouring starts when all kits are mixed")]
    public static double UseTimeS(int kits, int mixers, double mixingTimeS, int baskets, double pourTimeS, Trace trace) =>
        trace.Step("use-time", (Math.Ceiling((double)kits / mixers) * mixingTimeS) + (baskets * pourTimeS),
            new("k", Measure.Count(kits)), new("x", Measure.Count(mixers)), new("t_m", Measure.Duration(mixingTimeS)),
            new("b", Measure.Count(baskets)), new("t_p", Measure.Duration(pourTimeS)));
}
