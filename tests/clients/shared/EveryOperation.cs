using System.Text.Json.Nodes;

namespace CalcService.Client;

/// <summary>What a generated client does with one calculation. Answers are written again from the generated types.</summary>
internal interface IGeneratedClient
{
    /// <summary>
    /// Whether an object of any members comes out of the generated type as it went in. Without that a verification compares another answer
    /// than was archived.
    /// </summary>
    bool KeepsAnyObject { get; }

    /// <summary>Sends a request, read into the generated type, and gives the answer.</summary>
    Task<JsonNode> CallAsync(Operation operation, string request, CancellationToken cancel);

    /// <summary>Sends lines and gives what came back.</summary>
    Task<Stream> CallBatchAsync(Operation operation, Stream lines, CancellationToken cancel);
}

/// <summary>Calls every calculation of the document with every example, alone and in a batch.</summary>
internal static class EveryOperation
{
    public static async Task RunAsync(IGeneratedClient client, string document, CancellationToken cancel)
    {
        var operations = Operation.ReadAll(document);
        Expect.That(operations.Count > 0, "the document has no calculation");
        foreach (var operation in operations)
        {
            var alone = new List<JsonNode>();
            foreach (var (name, request) in operation.Examples)
            {
                var answer = await client.CallAsync(operation, request, cancel);
                Expect.Decision(answer, $"{operation.Path} {name}");
                alone.Add(answer);
            }

            Expect.That(alone.Count > 0, $"{operation.Path} has no examples");
            await using var output = await client.CallBatchAsync(operation, operation.Batch(), cancel);
            using var reader = new StreamReader(output);
            Expect.Batch(await reader.ReadToEndAsync(cancel), alone, operation.Path, isSame: client.KeepsAnyObject
                || operation.Path != "/v1/record-verifications");
        }

        Console.WriteLine(
            $"{operations.Sum(operation => operation.Examples.Count)} examples of {operations.Count} calculations, alone and in batches");
    }
}
