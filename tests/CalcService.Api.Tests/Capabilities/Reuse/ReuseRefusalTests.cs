using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Reuse;

/// <summary>Used sockets that can be read and make no sense: 422, with the pointers of both sides of a contradiction.</summary>
public sealed class ReuseRefusalTests(Service service)
{
    private const string Drawn = "/socket/nominal";
    private const string Found = "/socket/measured";

    /// <summary>Pointer, value in its place, pointers of the errors.</summary>
    public static TheoryData<string, string, string[]> Edits => new()
    {
        { "/assessedOn", "\"1949-12-31\"", ["/assessedOn"] },
        { "/assessedOn", "null", ["/assessedOn"] },
        { "/socket/nominal", "null", ["/socket/nominal"] },
        { "/ruleSet", "\"other\"", ["/ruleSet"] },
        { "/inspection/inspectedOn", "\"2026-03-13\"", ["/assessedOn", "/inspection/inspectedOn"] },
        { "/inspection/visual/corrosion", "\"pitted\"", ["/inspection/visual/corrosion", Found + "/pitDepth"] },
        { "/inspection/surfaceMethod", "\"magnet\"", ["/inspection/surfaceMethod"] },
        { "/coneRemoval/maximumTemperature/value", "61", ["/coneRemoval/maximumTemperature", "/coneRemoval/method"] },
        { "/coneRemoval/method", "\"melted\"", ["/coneRemoval/maximumTemperature", "/coneRemoval/method"] },
        { "/socket/material/kind", "\"iron\"", ["/socket/material/kind"] },
        { "/socket/material/yieldStrength/value", "571", ["/socket/material/tensileStrength", "/socket/material/yieldStrength"] },
        { "/socket/material/known", "\"no\"", ["/socket/material/known", "/socket/material/yieldStrength"] },
        { "/socket/breakingForce", """{"value":49,"unit":"kN"}""", ["/socket/breakingForce", "/socket/ratedLoad"] },
        { "/socket/history/pours", "-1", ["/socket/history/pours"] },
        { "/limits/boreGrowth/value", "-1", ["/limits/boreGrowth"] },
        { "/limits/boreGrowth", "2", ["/limits/boreGrowth"] },
        { "/intended/proofLoad", """{"value":40,"unit":"kN"}""", ["/intended/proofLoad", "/intended/ratedLoad"] },
        { Drawn + "/outerAtMouth", """{"value":70,"unit":"mm"}""", [Drawn + "/outerAtMouth", Drawn + "/outerDiameter"] },
        { Drawn + "/outerDiameter/value", "45", [Drawn + "/basket", Drawn + "/outerDiameter"] },
        { Drawn + "/pinDiameter/value", "37", [Drawn + "/pinDiameter", Drawn + "/pinHoleDiameter"] },
        { Drawn + "/earWidth/value", "36.5", [Drawn + "/earWidth", Drawn + "/pinHoleDiameter"] },
        { Drawn + "/earEndDistance/value", "18.25", [Drawn + "/earEndDistance", Drawn + "/pinHoleDiameter"] },
        { Found + "/pitDepth/value", "-0.1", [Found + "/pitDepth"] },
        { Found + "/earThickness/value", "-5", [Found + "/earThickness"] },
        { Found + "/stations/2/fromSmallEnd/value", "101", [Drawn + "/basket/length", Found + "/stations/2/fromSmallEnd"] },
        { Found + "/stations/1/fromSmallEnd/value", "100", [Found + "/stations/1/fromSmallEnd", Found + "/stations/2/fromSmallEnd"] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public async Task Socket_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected)
    {
        var reply = await service.PostAsync(Reuses.Path, Reuses.Sound.With(pointer, JsonNode.Parse(raw)));
        Assert.Equal(raw == "2" ? 400 : 422, reply.Status);
        Assert.Equal(expected.Order(StringComparer.Ordinal), ProblemAssert.Pointers(reply.Json).Distinct().Order(StringComparer.Ordinal));
    }
}
