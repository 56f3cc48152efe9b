using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The matches of the documentation, to be changed by tests.</summary>
public static class Matches
{
    public const string Path = "/v1/termination-matches";

    /// <summary>A sling of 20 mm rope in a socket of its size.</summary>
    public static JsonObject Match => Example("match");

    public static TheoryData<string> Names => [.. RequestExamples.Of("termination-matches").Select(example => example.Name)];

    public static JsonObject Example(string name) => JsonNode.Parse(RequestExamples.Of("termination-matches", name).Body)!.AsObject();

    /// <summary>
    /// The cone of the published check values: 0.6 % of shrinkage, wall 1.6 times the bore, pulled with 250 kN. The sheet is invented.
    /// </summary>
    public static JsonObject Checked => Match
        .With("/compound", JsonNode.Parse("""
            {
              "sheet": {
                "name": "invented", "kits": [ { "code": "small", "volume": { "value": 300, "unit": "mL" } } ],
                "service": { "minimum": { "value": -30, "unit": "degC" }, "maximum": { "value": 85, "unit": "degC" } },
                "cured": {
                  "compressiveStrength": { "value": 110, "unit": "MPa" }, "modulus": { "value": 6000, "unit": "MPa" },
                  "poissonRatio": { "value": 0.25, "unit": "1" }, "shrinkageAfterGel": { "value": 0.6, "unit": "%" }
                },
                "chemicals": [ { "substance": "diesel", "effect": "attacked" } ]
              }
            }
            """))
        .With("/socket/outerAtSmallEnd/value", 36.8)
        .With("/socket/outerAtMouth/value", 72)
        .With("/socket/ratedLoad/value", 260)
        .With("/duty", JsonNode.Parse("""{ "use": "other", "load": { "value": 250, "unit": "kN" }, "designFactor": { "value": 1, "unit": "1" }, "typeTested": "yes" }"""));
}
