using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Whether the crew can use up a mix before it thickens.</summary>
internal static class PotLifeChecks
{
    /// <summary>Asks for what is missing to know how long a mix takes.</summary>
    public static void CheckGiven(PourScope scope)
    {
        var input = scope.Input;
        if (!scope.IsQuote && input.PourTimeS is null && input.Ends.Any(end => end.PourTimeS is null))
        {
            scope.Find(PouringFindings.PourTimeMissing, PourPointers.PourTime);
        }

        if (input.Compound.MixingTimeS is null)
        {
            scope.SheetSilent(PourPointers.Mixing, "mixing time");
        }

        if (input.Mixers is null)
        {
            scope.Assume(PourPointers.Mixers, "one mixer", Measure.Count(1), AssumptionOrigin.Default);
        }
    }

    /// <summary>
    /// Whether each basket can be filled inside the pot life with the fewest kits that it takes; a stop for each that
    /// can't. False too where a time isn't known.
    /// </summary>
    public static bool CanFillEach(PourScope scope, PlannedEnd[] ends, double? potLifeS)
    {
        if (potLifeS is not { } potLife || scope.Input.Compound.MixingTimeS is not { } mixingTime)
        {
            return false;
        }

        var largest = scope.Input.Compound.Kits.Max(KitChoice.SizeOf);
        var can = true;
        for (var i = 0; i < ends.Length; i++)
        {
            if (scope.PourTimeS(i) is not { } pourTime)
            {
                can = false;
                continue;
            }

            var need = KitChoice.NeedOf(((1 + scope.Allowance) * ends[i].Fill.HighM3!.Value) + scope.VesselResidueM3);
            var kits = (int)Math.Min(int.MaxValue, (need + largest - 1) / largest);
            var time = UseTimeS(kits, scope.Mixers, mixingTime, pourTime, Trace.None);
            if (Judged.Duration(time, potLife) is { IsAbove: true } longer)
            {
                can = false;
                scope.Find(PouringFindings.PotLifeTooShort, PourPointers.PourTime, longer,
                    [$"{PourPointers.Ends}/{i}", PourPointers.Compound], words: [new("end", ends[i].Id), new("kits", Measure.Count(kits))]);
            }
        }

        return can;
    }

    /// <summary>Time from the start of mixing until the last basket of a mix is full, or null where it can't be known.</summary>
    public static double? UsedInS(PourScope scope, int kits, PlannedEnd[] ends, IReadOnlyList<int> served)
    {
        double? filling = 0;
        for (var i = 0; i < ends.Length; i++)
        {
            filling += served[i] == 0 ? 0 : served[i] * scope.PourTimeS(i);
        }

        return filling is { } fill && scope.Input.Compound.MixingTimeS is { } mixingTime
            ? UseTimeS(kits, scope.Mixers, mixingTime, fill, scope.Trace)
            : null;
    }

    /// <summary>t_u = ⌈k/x⌉·t_m + t_f, k kits on x mixers with t_m each, then all baskets one after another in t_f; in s.</summary>
    [Formula("use-time", "kits mixed side by side, baskets filled one after another", "/docs/pour-plans", Basis.Derived, Symbol = "t_u",
        Name = "time to use up the mix",
        Expression = "ceil(k/x)·t_m + t_f", Kind = QuantityKind.Duration, Range = "one pourer; pouring starts when all kits are mixed")]
    public static double UseTimeS(int kits, int mixers, double mixingTimeS, double fillingTimeS, Trace trace) =>
        trace.Step("use-time", (Math.Ceiling((double)kits / mixers) * mixingTimeS) + fillingTimeS,
            new("k", Measure.Count(kits)), new("x", Measure.Count(mixers)), new("t_m", Measure.Duration(mixingTimeS)),
            new("t_f", Measure.Duration(fillingTimeS)));
}
