using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Proof;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The proof loads of the documentation, to be changed by tests.</summary>
public static class Proofs
{
    public const string Path = "/v1/proof-load-evaluations";

    public static TheoryData<string> Names => [.. ProofLoadEvaluationExamples.All.Select(example => example.Name)];

    public static JsonObject Example(string name) => JsonNode.Parse(ProofLoadEvaluationExamples.All.Single(example => example.Name == name).Body)!.AsObject();
}
