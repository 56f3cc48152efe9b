using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>The work, task by task. A time that the caller gives beats the plan's, and the plan's beats the usual one.</summary>
internal static class LabourLines
{
    private const decimal SecondsPerMinute = 60;

    /// <summary>A gel that takes longer than this, thirty thousand years, is no time to quote, and no decimal may hold it.</summary>
    private const double LongestWaitS = 1e12;

    public static IReadOnlyList<LabourLine> Of(PourScope scope, Quote quote, MixPlan? plan, GelPlan? gel, List<string> missing)
    {
        var ends = scope.Input.Ends.Sum(end => (long)end.Quantity);
        return
        [
            .. LabourTask.All
                .Where(task => task.Name != LabourTask.ProofLoad || quote.TaskTimesS.ContainsKey(task.Name))
                .Select(task => Line(scope, quote, task, ends, plan, gel, missing)),
        ];
    }

    private static LabourLine Line(PourScope scope, Quote quote, LabourTask task, long ends, MixPlan? plan, GelPlan? gel,
        List<string> missing)
    {
        var isPerEnd = task.IsPerEnd;
        decimal? each;
        string from;
        if (quote.TaskTimesS.TryGetValue(task.Name, out var given))
        {
            (each, from) = ((decimal)given, "request");
        }
        else if (task.DefaultMinutes is { } minutes)
        {
            (each, from) = ((decimal)minutes * SecondsPerMinute, "default");
            if (scope.HasPrices)
            {
                scope.Assume(QuotePointers.TaskTimes + task.Name,
                    $"time to {task.Words}, {(isPerEnd ? "for each end" : "for the job")}; common practice, no source",
                    Measure.Duration((double)each), AssumptionOrigin.Default);
            }
        }
        else
        {
            (each, from, isPerEnd) = (FromPlan(scope, task, plan, gel), "plan", false);
        }

        var times = isPerEnd ? ends : 1;
        var total = times * each;
        decimal? rate = quote.TaskRates.TryGetValue(task.Name, out var own) ? own : quote.HourlyRate;
        if (total is null)
        {
            missing.Add(QuotePointers.TaskTimes + task.Name);
        }

        if (rate is null && total != 0)
        {
            missing.Add(QuotePointers.HourlyRate);
        }

        return new(task.Name, isPerEnd ? "end" : "job", times, (double?)each, (double?)total, from, rate, Exact.Labour(total, rate));
    }

    private static decimal? FromPlan(PourScope scope, LabourTask task, MixPlan? plan, GelPlan? gel)
    {
        var isWait = task.Name == LabourTask.WaitForGel;
        var time = isWait ? WaitS(gel) : MixAndPourS(scope, plan);
        if (time is { } seconds && scope.HasPrices)
        {
            scope.Assume(QuotePointers.TaskTimes + task.Name,
                isWait ? "time to wait, one person once, until the latest gel in the cone"
                : "time to mix and pour, one person at each kit and each basket",
                Measure.Duration((double)seconds), AssumptionOrigin.Estimate);
        }

        return time;
    }

    private static decimal? WaitS(GelPlan? gel) => gel?.InCone.LatestS is { } latest && latest < LongestWaitS ? (decimal)latest : null;

    /// <summary>Work is the same for many mixers as for one: each kit is mixed by somebody, each basket filled by somebody.</summary>
    private static decimal? MixAndPourS(PourScope scope, MixPlan? plan)
    {
        if (plan is null || scope.Input.Compound.MixingTimeS is not { } mixing
            || !Enumerable.Range(0, scope.Input.Ends.Count).All(i => scope.PourTimeS(i) is not null))
        {
            return null;
        }

        var kits = plan.Counts.Sum(count => (long)count.FromStock + count.ToBuy);
        return (kits * (decimal)mixing) + Exact.Sum(scope.Input, i => scope.PourTimeS(i)!.Value);
    }
}
