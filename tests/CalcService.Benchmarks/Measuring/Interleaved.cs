namespace CalcService.Benchmarks.Measuring;

/// <summary>Something to measure.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Run">Does it so many times and gives what one of them took.</param>
internal sealed record Contender(string Name, Func<int, double> Run)
{
    /// <summary>Work on the calling thread, in nanoseconds of its CPU.</summary>
    public static Contender OnThread(string name, Action work) => new(name, times =>
    {
        var before = CpuClock.Thread();
        for (var i = 0; i < times; i++)
        {
            work();
        }

        return (CpuClock.Thread() - before) / times;
    });
}

/// <summary>Measures several things in turn, round by round, so that a slow moment of the machine meets all of them.</summary>
internal static class Interleaved
{
    /// <summary>The median of each over the rounds, and with two or more the median of its ratio to the first in the same round.</summary>
    public static IReadOnlyList<(double Median, double Ratio)> Measure(int warmUp, int rounds, int times,
        params IReadOnlyList<Contender> contenders)
    {
        for (var round = 0; round < warmUp; round++)
        {
            foreach (var contender in contenders)
            {
                contender.Run(times);
            }
        }

        // Time for the runtime to put optimised code in place.
        Thread.Sleep(500);
        var found = contenders.Select(_ => new double[rounds]).ToArray();
        for (var round = 0; round < rounds; round++)
        {
            for (var i = 0; i < found.Length; i++)
            {
                found[i][round] = contenders[i].Run(times);
            }
        }

        return [.. found.Select(one => (Median(one), Median([.. one.Zip(found[0], (a, b) => a / b)])))];
    }

    public static double Median(IReadOnlyList<double> values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
