using System.Text.Json.Nodes;
using Newtonsoft.Json;

namespace CalcService.Client.NSwag;

/// <summary>Finds what NSwag made of an operation: a method of its name.</summary>
internal sealed class Generated(CalcClient client) : IGeneratedClient
{
    public bool KeepsAnyObject => true;

    // As it stands: a reader that takes texts for dates would write them differently.
    private static readonly JsonSerializerSettings Settings = new() { DateParseHandling = DateParseHandling.None };

    public async Task<JsonNode> CallAsync(Operation operation, string request, CancellationToken cancel)
    {
        var post = client.GetType().GetMethod(Name(operation.Id))!;
        var body = JsonConvert.DeserializeObject(request, post.GetParameters()[0].ParameterType, Settings);
        dynamic answer = await (dynamic)post.Invoke(client, [body, null, cancel])!;
        return JsonNode.Parse((string)JsonConvert.SerializeObject((object)answer, Settings))!;
    }

    public async Task<Stream> CallBatchAsync(Operation operation, Stream lines, CancellationToken cancel) =>
        (await (Task<FileResponse>)client.GetType().GetMethod(Name(operation.Id + "Batch"))!.Invoke(client, [lines, null, cancel])!).Stream;

    private static string Name(string id) => char.ToUpperInvariant(id[0]) + id[1..] + "Async";
}
