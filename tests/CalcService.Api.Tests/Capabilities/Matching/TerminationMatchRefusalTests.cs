using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Matching;

/// <summary>Matches that can be read and make no sense: 422, with the pointers of both sides of a contradiction.</summary>
public sealed class TerminationMatchRefusalTests(Service service)
{
    private const string Socket = "/socket";

    /// <summary>Pointer, value in its place, pointers of the errors.</summary>
    public static TheoryData<string, string, string[]> Edits => new()
    {
        { Socket + "/outerDiameter", """{"value":70,"unit":"mm"}""", [Socket + "/outerDiameter", Socket + "/outerAtSmallEnd", Socket + "/outerAtMouth", Socket + "/outerDiameter"] },
        { Socket + "/outerAtMouth/value", "45", [Socket + "/outerAtMouth", Socket + "/basket/largeEndDiameter"] },
        { Socket + "/outerAtSmallEnd/value", "23", [Socket + "/outerAtSmallEnd", Socket + "/basket/smallEndDiameter"] },
        { Socket + "/ratedLoad/value", "311", [Socket + "/ratedLoad", Socket + "/breakingForce"] },
        { Socket + "/ropeRange/minimum/value", "21", [Socket + "/ropeRange/minimum", Socket + "/ropeRange/maximum"] },
        { Socket + "/basket/length/value", "0",
            [Socket + "/basket/length", Socket + "/basket/largeEndDiameter", Socket + "/basket/length", Socket + "/basket/tolerance",
            Socket + "/basket/smallEndDiameter"] },
        { "/duty/load/value", "0", ["/duty/load"] },
        { "/duty/designFactor/value", "0.9", ["/duty/designFactor"] },
        { "/duty/efficiency", """{"value":101,"unit":"%"}""", ["/duty/efficiency"] },
        { "/duty/use", "\"Sling\"", ["/duty/use"] },
        { "/service/lowest/value", "41", ["/service/lowest", "/service/highest"] },
        { "/service/chemicals", """[""]""", ["/service/chemicals/0"] },
        { "/cone/friction/value", "1.1", ["/cone/friction"] },
        { "/cone/cooling", """{"value":-1,"unit":"K"}""", ["/cone/cooling"] },
        { "/compound", """{"profile":"nothing"}""", ["/compound/profile"] },
    };

    /// <summary>The same, in the sheet sent inline.</summary>
    public static TheoryData<string, string, string[]> SheetEdits => new()
    {
        { "/compound/sheet/cured/shrinkageAfterGel/value", "5.1", ["/compound/sheet/cured/shrinkageAfterGel"] },
        { "/compound/sheet/cured/expansion", """{"value":0.001,"unit":"1/K"}""", ["/compound/sheet/cured/expansion"] },
        { "/compound/sheet/chemicals", """[{"substance":"Diesel","effect":"resists"},{"substance":"diesel","effect":"attacked"}]""", ["/compound/sheet/chemicals/0/substance", "/compound/sheet/chemicals/1/substance"] },
        { "/compound/sheet/chemicals/0/substance", "\"\"", ["/compound/sheet/chemicals/0/substance"] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public Task Match_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected) =>
        CheckAsync(Matches.Match, pointer, raw, expected);

    [Theory]
    [MemberData(nameof(SheetEdits))]
    public Task Sheet_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected) =>
        CheckAsync(Matches.Checked, pointer, raw, expected);

    private async Task CheckAsync(JsonObject match, string pointer, string raw, string[] expected)
    {
        var reply = await service.PostAsync(Matches.Path, match.With(pointer, JsonNode.Parse(raw)));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(expected.Distinct().Order(StringComparer.Ordinal),
            ProblemAssert.Pointers(reply.Json).Distinct().Order(StringComparer.Ordinal));
    }
}
