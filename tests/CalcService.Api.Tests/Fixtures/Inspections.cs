using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The inspections of the documentation, to be changed by tests.</summary>
public static class Inspections
{
    public const string Path = "/v1/service-inspections";

    /// <summary>A crane's hoist rope with two broken wires.</summary>
    public static JsonObject Serve => Example("serve");

    public static TheoryData<string> Names => [.. RequestExamples.Of("service-inspections").Select(example => example.Name)];

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("service-inspections", name).Body)!.AsObject();
}
