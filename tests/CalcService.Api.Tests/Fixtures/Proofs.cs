using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The proof loads of the documentation, to be changed by tests.</summary>
public static class Proofs
{
    public const string Path = "/v1/proof-load-evaluations";

    public static TheoryData<string> Names => [.. RequestExamples.Of("proof-load-evaluations").Select(example => example.Name)];

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("proof-load-evaluations", name).Body)!.AsObject();
}
