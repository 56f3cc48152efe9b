using System.Text.Json.Nodes;

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

    /// <summary>The contract has the decision one to one from the worst finding.</summary>
    public static void Decision(JsonNode answer, string what)
    {
        if (answer["findings"] is not JsonArray findings)
        {
            // A verification has an outcome instead.
            That(answer["outcome"] is not null, $"{what}: neither findings nor an outcome");
            return;
        }

        var severities = findings.Select(finding => (string?)finding!["severity"]).ToHashSet();
        var expected = severities.Contains("stop") ? "doNotProceed"
            : severities.Contains("unknown") ? "undetermined"
            : severities.Contains("caution") ? "proceedWithCare" : "proceed";
        That((string?)answer["decision"] == expected, $"{what}: decision is {answer["decision"]}, the findings say {expected}");
    }

    /// <summary>A line for each request with the decision and digest that it had alone, and the summary.</summary>
    public static void Batch(string output, IReadOnlyList<JsonNode> alone, string what, bool isSame = true)
    {
        var lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line)!).ToArray();
        That(lines.Length == alone.Count + 1, $"{what}: {lines.Length} lines of output");
        foreach (var (line, answer) in lines.Zip(alone))
        {
            That((int)line["status"]! == 200, $"{what}: line {line["line"]} has {line["status"]}");
            if (!isSame)
            {
                continue;
            }

            That((string?)line["answer"]!["decision"] == (string?)answer["decision"],
                $"{what}: line {line["line"]} is {line["answer"]!["decision"]}");
            That((string?)line["answer"]!["provenance"]?["resultDigest"] == (string?)answer["provenance"]?["resultDigest"],
                $"{what}: line {line["line"]} has another digest");
        }

        That((int?)lines[^1]["summary"]?["answered"] == alone.Count, $"{what}: the summary is {lines[^1]}");
    }

    /// <summary>Runs a client against the address in the first argument; 0 if it found what it must.</summary>
    public static async Task<int> RunAsync(string client, string[] args, Func<Uri, CancellationToken, Task> run)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(100));
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
