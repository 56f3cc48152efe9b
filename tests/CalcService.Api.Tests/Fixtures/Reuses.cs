using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The used sockets of the documentation, to be changed by tests.</summary>
public static class Reuses
{
    public const string Path = "/v1/reuse-assessments";

    /// <summary>The sound socket of the contract, measured all over.</summary>
    public static JsonObject Sound => Example("reuse");

    public static TheoryData<string> Names => [.. RequestExamples.Of("reuse-assessments").Select(example => example.Name)];

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("reuse-assessments", name).Body)!.AsObject();

    public static JsonObject Check(JsonObject answer, string id) =>
        answer["result"]!["checks"]!.AsArray().Single(check => (string?)check!["id"] == id)!.AsObject();
}
