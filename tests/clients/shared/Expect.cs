namespace CalcService.Client;

/// <summary>What every client must find, whatever generated it.</summary>
internal static class Expect
{
    /// <summary>
    /// Resin of one end in cm3, by hand: the frustum of 23, 45 and 100 mm less 184 mm2 of steel along 100 mm with an
    /// obliquity of 1.00302.
    /// </summary>
    public static double ResinVolume { get; } =
        ((Math.PI / 12 * 100 * ((23 * 23) + (23 * 45) + (45 * 45))) - (184 * 100 * 1.00302)) / 1000;

    /// <summary>Half a unit of the last digit of 75.504; answers carry six.</summary>
    public const double ResinTolerance = 0.0005;

    /// <summary>A rope 38.5 m thick: a slip of the unit.</summary>
    public const string RefusedPointer = "/ends/0/rope/diameter";

    public static void That(bool holds, string what)
    {
        if (!holds)
        {
            throw new InvalidOperationException(what);
        }
    }

    /// <summary>Runs a client against the address in the first argument; 0 if it found what it must.</summary>
    public static async Task<int> RunAsync(string client, string[] args, Func<Uri, CancellationToken, Task> run)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        try
        {
            await run(new Uri(args[0]), limit.Token);
            Console.WriteLine($"ok {client}");
            return 0;
        }
        catch (Exception failure)
        {
            await Console.Error.WriteLineAsync($"{client}: {failure.Message}");
            return 1;
        }
    }
}
