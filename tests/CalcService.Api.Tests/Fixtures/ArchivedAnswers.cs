using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>Archived answers to compute again.</summary>
public static class ArchivedAnswers
{
    public const string Path = "/v1/record-verifications";

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("record-verifications", name).Body)!.AsObject();

    /// <summary>A request with the answer that it got.</summary>
    public static JsonObject Of(string path, JsonNode request, JsonNode answer) =>
        new() { ["operation"] = path["/v1/".Length..], ["request"] = request.DeepClone(), ["answer"] = answer.DeepClone() };
}
