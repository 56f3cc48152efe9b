using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The records of the documentation, to be changed by tests.</summary>
public static class TerminationRecords
{
    public const string Path = "/v1/record-audits";

    /// <summary>A record that holds everything.</summary>
    public static JsonObject Whole => Example("accepted");

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("record-audits", name).Body)!.AsObject();
}
