using System.Text.Json.Nodes;

namespace CalcService.Api.OpenApi;

/// <summary>A request that runs as it stands.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Summary">What it shows.</param>
/// <param name="Body">The request.</param>
public sealed record RequestExample(string Name, string Summary, string Body)
{
    /// <summary>The request, read.</summary>
    public JsonObject Json => JsonNode.Parse(Body)!.AsObject();
}

/// <summary>The requests of the documentation: those of http-examples/ that have a name. They stand there once.</summary>
public static class RequestExamples
{
    private const string Title = "\n### ", Name = "# @name ";

    /// <summary>The examples of a calculation, in the order of its file.</summary>
    /// <param name="operation">Name of the calculation, as in its path.</param>
    public static IReadOnlyList<RequestExample> Of(string operation)
    {
        using var stream = typeof(RequestExamples).Assembly.GetManifestResourceStream($"http-examples/{operation}.http")!;
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().ReplaceLineEndings("\n").Split(Title).Skip(1).Select(Read).OfType<RequestExample>()];
    }

    /// <summary>The example of a name.</summary>
    public static RequestExample Of(string operation, string name) => Of(operation).Single(example => example.Name == name);

    private static RequestExample? Read(string request)
    {
        var lines = request.Split('\n');
        return lines.FirstOrDefault(line => line.StartsWith(Name, StringComparison.Ordinal)) is { } named
            ? new(named[Name.Length..], lines[0], request[request.IndexOf("\n\n", StringComparison.Ordinal)..].Trim())
            : null;
    }
}
