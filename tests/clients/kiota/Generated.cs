using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Serialization.Json;

namespace CalcService.Client.Kiota;

/// <summary>Finds what Kiota made of a path: a property for each of its parts.</summary>
internal sealed class Generated(CalcClient client) : IGeneratedClient
{
    /// <summary>Kiota reads numbers, dates and nulls of such an object into types of its own and writes them otherwise.</summary>
    public bool KeepsAnyObject => false;

    public async Task<JsonNode> CallAsync(Operation operation, string request, CancellationToken cancel)
    {
        var (builder, post) = Post(operation.Path);
        var type = post.GetParameters()[0].ParameterType;
        var parse = (ParsableFactory<IParsable>)typeof(Generated)
            .GetMethod(nameof(Factory), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, null)!;
        using var body = new MemoryStream(Encoding.UTF8.GetBytes(request));
        var node = await new JsonParseNodeFactory().GetRootParseNodeAsync("application/json", body, cancel);
        var answer = await Result<IParsable>(post.Invoke(builder, [node.GetObjectValue(parse), null, cancel])!);
        using var writer = new JsonSerializationWriter();
        writer.WriteObjectValue(null, answer);
        return (await JsonNode.ParseAsync(writer.GetSerializedContent(), cancellationToken: cancel))!;
    }

    public async Task<Stream> CallBatchAsync(Operation operation, Stream lines, CancellationToken cancel)
    {
        var (builder, post) = Post(operation.Path + "/batch");
        return await Result<Stream>(post.Invoke(builder, [lines, null, cancel])!);
    }

    private (object Builder, MethodInfo Post) Post(string path)
    {
        object builder = client;
        foreach (var part in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            var name = string.Concat(part.Split('-').Select(CultureInfo.InvariantCulture.TextInfo.ToTitleCase));
            builder = builder.GetType().GetProperty(name)!.GetValue(builder)!;
        }

        return (builder, builder.GetType().GetMethod("PostAsync")!);
    }

    private static ParsableFactory<IParsable> Factory<T>()
        where T : IParsable, new() => _ => new T();

    private static async Task<T> Result<T>(object task)
    {
        await (Task)task;
        return (T)task.GetType().GetProperty("Result")!.GetValue(task)!;
    }
}
