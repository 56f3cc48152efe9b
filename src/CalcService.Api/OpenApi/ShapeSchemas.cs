using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using Microsoft.AspNetCore.Mvc.ApiExplorer;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalcService.Api.OpenApi;

/// <summary>
/// Schemas from the same table of shapes that the reader uses, so that the document can't promise what the reader
/// refuses. Requests are closed, answers open; a member that may be absent may be null.
/// </summary>
public sealed class ShapeSchemas(IServiceProvider services) : ISchemaGenerator
{
    private static readonly Assembly[] Documented = [typeof(ShapeSchemas).Assembly, typeof(Engine.EngineVersion).Assembly];

    private readonly XmlSummaries _summaries = new(Documented);
    private readonly Lazy<HashSet<Type>> _requests = new(() => RequestTypes(services));

    public IOpenApiSchema GenerateSchema(
        Type modelType, SchemaRepository schemaRepository, MemberInfo? memberInfo = null, ParameterInfo? parameterInfo = null,
        ApiParameterRouteInfo? routeInfo = null) =>
        modelType == typeof(string) ? new OpenApiSchema { Type = JsonSchemaType.String }
        : Object(ShapeTable.Of(modelType), schemaRepository);

    /// <summary>Name of a type's schema: Answer of PourPlanResult is PourPlanAnswer.</summary>
    public static string NameOf(Type type) => type.IsGenericType
        ? type.GetGenericArguments()[0].Name.Replace("Result", "", StringComparison.Ordinal)
        + type.Name[..type.Name.IndexOf('`', StringComparison.Ordinal)]
        : type.Name;

    private OpenApiSchemaReference Object(ObjectShape shape, SchemaRepository repository)
    {
        if (repository.TryLookupByType(shape.Type, out var known))
        {
            return known;
        }

        var name = NameOf(shape.Type);
        if (repository.Schemas.ContainsKey(name))
        {
            throw new InvalidOperationException($"Two contract types are called {name}.");
        }

        repository.RegisterType(shape.Type, name);
        var isRequest = _requests.Value.Contains(shape.Type);
        var schema = new OpenApiSchema
        {
            Type = JsonSchemaType.Object,
            Description = _summaries.Of(shape.Type),
            AdditionalPropertiesAllowed = !isRequest,
            Properties = new Dictionary<string, IOpenApiSchema>(),
            Required = new HashSet<string>(),
        };
        var reference = repository.AddDefinition(name, schema);
        foreach (var member in shape.Members)
        {
            if (member.Required)
            {
                schema.Required.Add(member.Name);
            }

            schema.Properties[member.Name] = Member(member, isRequest, repository);
        }

        return reference;
    }

    private IOpenApiSchema Member(MemberShape member, bool isRequest, SchemaRepository repository)
    {
        var description = _summaries.Of(member.Property);
        if (isRequest && RangeOf(member.Shape) is { } range)
        {
            description = $"{description} Allowed: {range}.";
        }

        if (isRequest && member.Shape is TextShape { IsId: true })
        {
            description = $"{description} It is an id: /docs/texts says which characters that takes.";
        }

        if (member.IsKept)
        {
            description = $"{description} Kept only: it is part of the record, and no number goes by it.";
        }

        if (member.Since is { } since)
        {
            description = $"{description} Since contract {since}.";
        }

        var schema = Value(member.Shape, isRequest, repository);
        if (schema is OpenApiSchemaReference reference)
        {
            if (!member.Nullable)
            {
                return new OpenApiSchemaReference(reference.Reference.Id!) { Description = description };
            }

            return new OpenApiSchema { Description = description, OneOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, reference] };
        }

        var inline = (OpenApiSchema)schema;
        inline.Description = description;
        if (member.Nullable && inline.Type is { } type)
        {
            inline.Type = type | JsonSchemaType.Null;
        }

        return inline;
    }

    /// <summary>What a quantity may be, in words: units are too many for a schema to say it.</summary>
    private static string? RangeOf(Shape shape) => shape is ListShape list ? RangeOf(list.Item) : (shape as QuantityShape)?.Range?.Text;

    /// <summary>Only requests have limits of length: answers are as long as they are.</summary>
    private IOpenApiSchema Value(Shape shape, bool limited, SchemaRepository repository) => shape switch
    {
        ObjectShape value => Object(value, repository),
        QuantityShape value => Quantity(value.Kind, repository),
        EnumShape value => Enum(value, repository),
        ListShape value => new OpenApiSchema
        {
            Type = JsonSchemaType.Array,
            Items = Value(value.Item, limited, repository),
            MinItems = limited && value.LeastItems > 0 ? value.LeastItems : null,
            MaxItems = limited ? value.MostItems : null,
        },
        TextShape value => new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = limited ? value.MaxLength : null },
        IntegerShape value => new OpenApiSchema
        {
            Type = JsonSchemaType.Integer,
            Format = value.IsLong ? "int64" : "int32",
            Minimum = limited ? value.Range?.Least.ToString(CultureInfo.InvariantCulture) : null,
            Maximum = limited ? value.Range?.Most.ToString(CultureInfo.InvariantCulture) : null,
        },
        DecimalShape when limited => new OpenApiSchema
        {
            Type = JsonSchemaType.Number, Format = "double", Minimum = "0",
                Maximum = DecimalShape.Most.ToString(CultureInfo.InvariantCulture),
        },
        DecimalShape or NumberShape => new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double" },
        BooleanShape => new OpenApiSchema { Type = JsonSchemaType.Boolean },
        DateShape => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date" },
        InstantShape => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time" },
        _ => new OpenApiSchema { Type = JsonSchemaType.Object, AdditionalPropertiesAllowed = true },
    };

    private static OpenApiSchemaReference Quantity(UnitKind? kind, SchemaRepository repository)
    {
        var name = kind?.Name ?? nameof(Units.Quantity);
        if (!repository.Schemas.ContainsKey(name))
        {
            var unit = new OpenApiSchema { Type = JsonSchemaType.String, Description = "Code of the unit, case-sensitive." };
            if (kind is not null)
            {
                unit.Enum = [.. kind.Units.Select(known => (JsonNode)known.Code)];
            }

            repository.AddDefinition(name, new OpenApiSchema
            {
                Type = JsonSchemaType.Object,
                Description = kind is null ? "A number of any kind with its unit."
                : $"A number with its unit; {kind.Metric.Code} in metric answers.",
                AdditionalPropertiesAllowed = kind is null,
                Required = new HashSet<string> { "value", "unit" },
                Properties = new Dictionary<string, IOpenApiSchema>
                {
                    ["value"] = new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double", Description = "The number." },
                    ["unit"] = unit,
                },
            });
        }

        return new OpenApiSchemaReference(name);
    }

    private OpenApiSchemaReference Enum(EnumShape shape, SchemaRepository repository)
    {
        if (!repository.Schemas.ContainsKey(shape.Type.Name))
        {
            repository.AddDefinition(shape.Type.Name, new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Description = _summaries.Of(shape.Type),
                Enum = [.. shape.Words.Select(word => (JsonNode)word.Key)],
            });
        }

        return new OpenApiSchemaReference(shape.Type.Name);
    }

    /// <summary>Every type that stands in a request.</summary>
    private static HashSet<Type> RequestTypes(IServiceProvider services)
    {
        var types = new HashSet<Type>();
        foreach (var capability in services.GetServices<ICapability>())
        {
            Add(ShapeTable.Of(capability.RequestType));
        }

        return types;

        void Add(ObjectShape shape)
        {
            if (types.Add(shape.Type))
            {
                foreach (var inner in shape.Members.Select(member => member.Shape is ListShape list ? list.Item : member.Shape)
                    .OfType<ObjectShape>())
                {
                    Add(inner);
                }
            }
        }
    }
}
