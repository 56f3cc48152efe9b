using System.Text;
using System.Text.Json.Nodes;

namespace CalcService.Client;

/// <summary>A calculation of the document with the examples that it shows.</summary>
/// <param name="Path">Its path, such as /v1/pour-plans.</param>
/// <param name="Id">Its operation id.</param>
/// <param name="Examples">Requests by their names.</param>
internal sealed record Operation(string Path, string Id, IReadOnlyDictionary<string, string> Examples)
{
    /// <summary>All calculations: whatever has a batch.</summary>
    public static IReadOnlyList<Operation> ReadAll(string document)
    {
        var paths = JsonNode.Parse(File.ReadAllText(document))!["paths"]!.AsObject();
        return [.. paths.Where(path => paths.ContainsKey(path.Key + "/batch")).Select(path => From(path.Key, path.Value!["post"]!))];
    }

    /// <summary>A batch of the examples.</summary>
    public Stream Batch() => new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Examples.Values.Select(request => request + "\n"))));

    private static Operation From(string path, JsonNode post) => new(path, (string)post["operationId"]!,
        post["requestBody"]!["content"]!["application/json"]!["examples"]!.AsObject()
        .ToDictionary(example => example.Key, example => example.Value!["value"]!.ToJsonString()));
}
