using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>A value of an example, with the schema that it has to fit.</summary>
public sealed record Place(string Pointer, string? Name, JsonObject Schema, JsonNode Value, bool IsRequired)
{
    public bool IsType(string type) => ServedContract.Types(Schema).Contains(type);

    /// <summary>Whether it is a number with its unit.</summary>
    public bool IsQuantity => Schema["properties"] is JsonObject { Count: 2 } members && members.ContainsKey("value")
        && members.ContainsKey("unit");

    /// <summary>Whether it takes members of any name, as an archived request does.</summary>
    public bool IsOpen => ServedContract.IsOpen(Schema);

    public bool IsEnum => Schema["enum"] is not null;

    public bool IsText(string? format) => IsType("string") && !IsEnum && (string?)Schema["format"] == format;
}

/// <summary>A calculation as the service documents it.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="SchemaName">What a request has to fit.</param>
/// <param name="Examples">Requests that run as they stand.</param>
/// <param name="Places">Every value of every example, with the example that it is in.</param>
public sealed record CalculationRoute(
    string Path, string SchemaName, IReadOnlyList<(string Name, JsonObject Body)> Examples,
    IReadOnlyList<(JsonObject Example, Place Place)> Places)
{
    /// <summary>What it takes: one request as JSON, or many, one a line.</summary>
    public required string MediaType { get; init; }

    /// <summary>What it answers in.</summary>
    public required IReadOnlyList<string> AnswerTypes { get; init; }

    public bool IsBatch => MediaType == BatchEndpoint.MediaType;

    /// <summary>The first place of a kind.</summary>
    public (JsonObject Example, Place Place)? Find(Func<Place, bool> kind) =>
        Places.Where(found => kind(found.Place)).Select(found => ((JsonObject, Place)?)found).FirstOrDefault();
}

/// <summary>The served OpenAPI document. Tests take the routes from it, so that a route that is added joins them.</summary>
public sealed class ServedContract(JsonObject document)
{
    public JsonObject Document { get; } = document;

    public JsonObject Schemas => Document.At("/components/schemas")!.AsObject();

    public static async Task<ServedContract> ReadAsync(Service service) => new((await service.GetAsync("/openapi/v1.json")).Json);

    /// <summary>Every POST that takes one request as JSON.</summary>
    public IReadOnlyList<CalculationRoute> Calculations =>
    [
        .. Document["paths"]!.AsObject()
            .Select(path => (path.Key, Body: path.Value!["post"]?["requestBody"]?["content"]?[CalculationEndpoint.MediaType]))
            .Where(path => path.Body is not null)
            .Select(path => Route(path.Key, path.Body!)),
    ];

    /// <summary>Every POST that takes many requests, one a line. A line is what the single calculation takes.</summary>
    public IReadOnlyList<CalculationRoute> BatchRoutes
    {
        get
        {
            var single = Answering.ToDictionary(route => route.Path, StringComparer.Ordinal);
            return [.. Batches.Select(path =>
                single[path[..path.LastIndexOf('/')]] with { Path = path, MediaType = BatchEndpoint.MediaType,
                AnswerTypes = AnswerTypes(path) })];
        }
    }

    /// <summary>Those that answer with JSON rather than with a sheet to print.</summary>
    public IReadOnlyList<CalculationRoute> Answering =>
        [.. Calculations.Where(route => !route.Path.EndsWith("/sheet", StringComparison.Ordinal))];

    /// <summary>Paths that take many requests.</summary>
    public IReadOnlyList<string> Batches =>
    [
        .. Document["paths"]!.AsObject()
            .Where(path => path.Value!["post"]?["requestBody"]?["content"]?[BatchEndpoint.MediaType] is not null)
            .Select(path => path.Key),
    ];

    /// <summary>Paths that are only read.</summary>
    public IReadOnlyList<string> Reads =>
        [.. Document["paths"]!.AsObject().Where(path => path.Value!["get"] is not null).Select(path => path.Key)];

    /// <summary>Names and schemas of everything that a request can hold.</summary>
    public IReadOnlyDictionary<string, JsonObject> RequestSchemas
    {
        get
        {
            var found = new Dictionary<string, JsonObject>(StringComparer.Ordinal);
            foreach (var route in Calculations)
            {
                Collect(route.SchemaName, found);
            }

            return found;
        }
    }

    /// <summary>The types of a schema: one word or a list of words.</summary>
    public static IReadOnlyList<string> Types(JsonObject schema) => schema["type"] switch
    {
        JsonArray several => [.. several.Select(type => (string)type!)],
        { } one => [(string)one!],
        null => [],
    };

    /// <summary>Whether an object of the schema takes members of any name.</summary>
    public static bool IsOpen(JsonObject schema) => Types(schema).Contains("object") && schema["properties"] is null;

    /// <summary>The schema behind a reference, also where null is the other choice.</summary>
    public (string? Name, JsonObject Schema) Resolve(JsonNode schema)
    {
        var reference = schema["$ref"] ?? schema["oneOf"]?.AsArray().Select(choice => choice!["$ref"])
            .FirstOrDefault(found => found is not null);
        if (reference is null)
        {
            return (null, schema.AsObject());
        }

        var name = ((string)reference!).Split('/')[^1];
        return (name, Schemas[name]!.AsObject());
    }

    /// <summary>Whether a pointer names a member that the schema has, with any index into a list.</summary>
    public bool Has(string schemaName, string pointer)
    {
        var schema = Schemas[schemaName]!.AsObject();
        foreach (var segment in pointer.Split('/').Skip(1))
        {
            if (IsOpen(schema))
            {
                return true;
            }

            var next = schema["items"] is { } items && int.TryParse(segment, out _) ? items : schema["properties"]?[segment];
            if (next is null)
            {
                return false;
            }

            schema = Resolve(next).Schema;
        }

        return true;
    }

    private CalculationRoute Route(string path, JsonNode body)
    {
        var name = Resolve(body["schema"]!).Name!;
        var examples = body["examples"]!.AsObject().Select(example => (example.Key, example.Value!["value"]!.AsObject())).ToArray();
        return new(path, name, examples,
            [.. examples.SelectMany(example =>
            Places(body["schema"]!, example.Item2, "", isRequired: true).Select(place => (example.Item2, place)))])
        {
            MediaType = CalculationEndpoint.MediaType,
            AnswerTypes = AnswerTypes(path),
        };
    }

    private string[] AnswerTypes(string path) =>
        [.. Document["paths"]![path]!.At("/post/responses/200/content")!.AsObject().Select(content => content.Key)];

    /// <summary>Every value of a body, with the schema that it has to fit.</summary>
    public IEnumerable<Place> Places(JsonNode schema, JsonNode? value, string pointer, bool isRequired)
    {
        if (value is null)
        {
            yield break;
        }

        var (name, resolved) = Resolve(schema);
        var place = new Place(pointer, name, resolved, value, isRequired);
        yield return place;
        var required = resolved["required"]?.AsArray().Select(member => (string)member!).ToArray() ?? [];
        var below = value switch
        {
            JsonObject members when !place.IsQuantity && resolved["properties"] is JsonObject known =>
                members.SelectMany(member =>
                Places(known[member.Key]!, member.Value, $"{pointer}/{member.Key}", required.Contains(member.Key))),
            JsonArray items => items.SelectMany((item, i) => Places(resolved["items"]!, item, $"{pointer}/{i}", isRequired: true)),
            _ => [],
        };
        foreach (var inner in below)
        {
            yield return inner;
        }
    }

    private void Collect(string name, Dictionary<string, JsonObject> found)
    {
        if (found.TryAdd(name, Schemas[name]!.AsObject()))
        {
            foreach (var (_, node) in Schemas[name].Walk())
            {
                if (node is JsonObject && node["$ref"] is JsonValue reference)
                {
                    Collect(((string)reference!).Split('/')[^1], found);
                }
            }
        }
    }
}
