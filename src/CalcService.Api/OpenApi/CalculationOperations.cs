using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Batches;
using CalcService.Api.Calculations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalcService.Api.OpenApi;

/// <summary>Marks the endpoint of a calculation with its examples.</summary>
/// <param name="IsBatch">Whether it takes many requests, one a line.</param>
/// <param name="Examples">Requests that run as they stand.</param>
/// <param name="HasDetail">Whether it takes ?detail=full.</param>
public sealed record CalculationMetadata(bool IsBatch, IReadOnlyList<RequestExample> Examples, bool HasDetail = true);

/// <summary>Adds what all calculations share to the document: ?detail=full, examples, and the lines of a batch.</summary>
public sealed class CalculationOperations : IOperationFilter
{
    /// <summary>The format of what is no JSON. Without it generated clients put the whole batch into one JSON string.</summary>
    private const string AsItIs = "binary";

    /// <summary>An example is shown as a person would type it.</summary>
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var endpoint = context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<CalculationMetadata>().SingleOrDefault();
        if (endpoint is null)
        {
            return;
        }

        if (endpoint.HasDetail)
        {
            operation.Parameters ??= [];
            operation.Parameters.Add(new OpenApiParameter
            {
                Name = "detail",
                In = ParameterLocation.Query,
                Description = "full fills trace and input.",
                Schema = Detail(context.SchemaRepository),
            });
        }

        if (endpoint.IsBatch)
        {
            Batch(operation, endpoint);
        }
        else if (operation.RequestBody?.Content?[CalculationEndpoint.MediaType] is OpenApiMediaType body)
        {
            body.Examples = endpoint.Examples.ToDictionary(example => example.Name, IOpenApiExample (example) =>
                new OpenApiExample { Summary = example.Summary, Value = example.Json });
        }

        // A page and its picture; an answer has a schema of its own.
        foreach (var media in operation.Responses!["200"].Content!.Values)
        {
            if (media.Schema is OpenApiSchema { Type: JsonSchemaType.String } text)
            {
                text.Format = AsItIs;
            }
        }
    }

    /// <summary>One name for all calculations, so that generated clients have one type for it.</summary>
    private static OpenApiSchemaReference Detail(SchemaRepository repository)
    {
        const string Name = "Detail";
        if (!repository.Schemas.ContainsKey(Name))
        {
            repository.AddDefinition(Name, new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Description = "How much an answer tells.",
                Enum = [(JsonNode)"full"],
            });
        }

        return new OpenApiSchemaReference(Name);
    }

    /// <summary>A stream of JSON values has no schema in OpenAPI 3.1: it is text, and its lines are described in words.</summary>
    private static void Batch(OpenApiOperation operation, CalculationMetadata endpoint)
    {
        var line = string.Join("\n", endpoint.Examples.Select(example => example.Json.ToJsonString(Plain)));
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Description = "One request a line, as for the single calculation.",
            Content = new Dictionary<string, IOpenApiMediaType>
            {
                [BatchEndpoint.MediaType] = new OpenApiMediaType { Schema = Text("Lines of JSON, each a request."),
                    Example = (JsonNode)(line + "\n") },
            },
        };
        ((OpenApiResponse)operation.Responses!["200"]).Content = new Dictionary<string, IOpenApiMediaType>
        {
            [BatchEndpoint.MediaType] = new OpenApiMediaType
            {
                Schema = Text("Lines of JSON: {line, id, status, answer | problem} for each request in order, then {summary} or "
                    + "{aborted}. Without its summary a batch proves nothing."),
            },
        };
    }

    private static OpenApiSchema Text(string description) =>
        new() { Type = JsonSchemaType.String, Format = AsItIs, Description = description };
}
