using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The pour plans of the documentation, to be changed by tests.</summary>
public static class Plans
{
    public const string Path = "/v1/pour-plans";
    public const string SteelTemperature = "/conditions/steelTemperature";

    /// <summary>Six ends on a cool morning: the request of the contract.</summary>
    public static JsonObject Plan => Example("plan");

    /// <summary>A plan of so many ends.</summary>
    public static JsonObject OfEnds(int count)
    {
        var plan = Plan;
        var end = plan["ends"]![0]!.AsObject();
        plan["ends"] = new JsonArray([.. Enumerable.Range(0, count).Select(at => end.With("/id", $"end {at}").With("/quantity", 1))]);
        return plan;
    }

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("pour-plans", name).Body)!.AsObject();

    /// <summary>The plan with the demonstration sheet inline.</summary>
    public static async Task<JsonObject> WithSheetAsync(Service service)
    {
        var compounds = (await service.GetAsync("/v1/compounds")).Json;
        var sheet = compounds["compounds"]!.AsArray().Single(entry => (string?)entry!["id"] == "demonstration")!["sheet"]!;
        return Plan.With("/compound", new JsonObject { ["sheet"] = sheet.DeepClone() });
    }

    public static JsonObject Find(JsonObject answer, string code) =>
        answer["findings"]!.AsArray().Single(finding => (string?)finding!["code"] == code)!.AsObject();

    public static IReadOnlyList<string> Codes(JsonObject answer) =>
        [.. answer["findings"]!.AsArray().Select(finding => (string)finding!["code"]!)];

    public static string Provenance(JsonObject answer, string member) => (string)answer["provenance"]![member]!;
}
