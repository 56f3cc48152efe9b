using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Units;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>What generated clients need from request schemas: nothing that they would invent, nothing that depends on shape.</summary>
public sealed class RequestSchemaTests(Service service)
{
    [Fact]
    public async Task Request_object_is_closed() =>
        Assert.All(await SchemasAsync(), schema => Assert.True(
            !ServedContract.Types(schema.Value).Contains("object")
            || (schema.Value["additionalProperties"] is JsonValue open && !(bool)open), schema.Key));

    [Fact]
    public async Task Document_has_no_default_keyword() =>
        Assert.DoesNotContain((await ServedContract.ReadAsync(service)).Document.Walk(),
        found => found.Pointer.EndsWith("/default", StringComparison.Ordinal));

    [Fact]
    public async Task Request_member_is_never_a_boolean() =>
        Assert.DoesNotContain(await MembersAsync(), member => ServedContract.Types(member.Schema).Contains("boolean"));

    /// <summary>A generated client writes 0 for a number that nobody set, so a plain one that may be absent has to be nullable.</summary>
    [Fact]
    public async Task Request_number_without_a_unit_is_required_or_null_where_nobody_set_it() =>
        Assert.All((await MembersAsync()).Where(member => ServedContract.Types(member.Schema).Any(type => type is "integer" or "number")),
        member =>
            Assert.True(member.Required || ServedContract.Types(member.Schema).Contains("null"), member.Pointer));

    [Fact]
    public async Task Request_member_that_may_be_absent_may_be_null() =>
        Assert.All((await MembersAsync()).Where(member => !member.Required), member =>
            Assert.True(
                ServedContract.Types(member.Schema).Contains("null")
                || (member.Schema["oneOf"]?.AsArray().Any(choice => (string?)choice!["type"] == "null") ?? false),
                member.Pointer));

    /// <summary>The only choice is between null and one reference; everything else would be a union by shape.</summary>
    [Fact]
    public async Task Request_schema_has_no_union_but_null_or_one_reference() =>
        Assert.All((await SchemasAsync()).SelectMany(schema => schema.Value.Walk("/" + schema.Key))
        .Where(found => found.Value is JsonObject), found =>
        {
            var schema = found.Value!.AsObject();
            Assert.False(schema.ContainsKey("anyOf") || schema.ContainsKey("allOf") || schema.ContainsKey("discriminator"), found.Pointer);
            if (schema["oneOf"] is JsonArray choices)
            {
                Assert.Equal(2, choices.Count);
                Assert.Single(choices, choice => (string?)choice!["type"] == "null");
                Assert.Single(choices, choice => choice!["$ref"] is not null);
            }
        });

    [Fact]
    public async Task Quantity_has_one_schema_for_each_kind_with_the_units_of_its_kind()
    {
        var quantities = (await SchemasAsync()).Where(schema =>
            schema.Value["properties"] is JsonObject { Count: 2 } members && members.ContainsKey("value") && members.ContainsKey("unit"))
            .ToArray();

        Assert.True(quantities.Length > 10);
        Assert.All(quantities, schema =>
        {
            var kind = UnitTable.All.Single(kind => kind.Name == schema.Key);
            Assert.Equal(["value", "unit"], schema.Value["required"]!.AsArray().Select(name => (string)name!));
            Assert.Equal(kind.Units.Select(unit => unit.Code),
                schema.Value.At("/properties/unit/enum")!.AsArray().Select(code => (string)code!));
        });
        // Nothing with members of its own stands inline.
        Assert.DoesNotContain(await MembersAsync(), member => member.Schema["properties"] is not null);
    }

    [Fact]
    public async Task Fact_that_may_be_unknown_says_unknown_first()
    {
        var words = (await SchemasAsync())
            .Where(schema => schema.Value["enum"] is JsonArray known && known.Any(word => (string?)word == "unknown")).ToArray();

        Assert.NotEmpty(words);
        Assert.All(words, schema => Assert.Equal("unknown", (string?)schema.Value["enum"]![0]));
    }

    private async Task<IReadOnlyDictionary<string, JsonObject>> SchemasAsync() => (await ServedContract.ReadAsync(service)).RequestSchemas;

    /// <summary>Members of all request objects, those of quantities apart.</summary>
    private async Task<IReadOnlyList<(string Pointer, JsonObject Schema, bool Required)>> MembersAsync() =>
    [
        .. (await SchemasAsync())
            .Where(schema => UnitTable.All.All(kind => kind.Name != schema.Key) && schema.Value["properties"] is not null)
            .SelectMany(schema => schema.Value["properties"]!.AsObject().Select(member => (
                $"/{schema.Key}/{member.Key}",
                member.Value!.AsObject(),
                schema.Value["required"]?.AsArray().Any(name => (string?)name == member.Key) ?? false))),
    ];
}
