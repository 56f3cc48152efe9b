using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Pouring;

/// <summary>Plans that can be read and make no sense: 422, with the pointers of both sides of a contradiction.</summary>
public sealed class PourPlanRefusalTests(Service service)
{
    private const string Basket = "/ends/0/socket/basket";

    /// <summary>Pointer, value in its place, pointers of the errors.</summary>
    public static TheoryData<string, string, string[]> Edits => new()
    {
        { "/ends/0/rope/diameter", """{"value":38.5,"unit":"m"}""", ["/ends/0/rope/diameter"] },
        { Basket + "/smallEndDiameter/value", "45", [Basket + "/smallEndDiameter", Basket + "/largeEndDiameter"] },
        { Basket + "/smallEndDiameter/value", "46", [Basket + "/smallEndDiameter", Basket + "/largeEndDiameter"] },
        { Basket + "/tolerance/value", "20", [Basket + "/tolerance", Basket + "/smallEndDiameter"] },
        { Basket + "/length/value", "3001", [Basket + "/length"] },
        { "/ends/0/rope/metallicArea", """{"value":400,"unit":"mm2"}""", ["/ends/0/rope/metallicArea", "/ends/0/rope/diameter"] },
        { "/ends/0/rope/outerWireDiameter", """{"value":20,"unit":"mm"}""", [] },
        { "/ends/0/rope/outerWireDiameter", """{"value":12,"unit":"cm"}""", ["/ends/0/rope/outerWireDiameter", "/ends/0/rope/diameter"] },
        { "/ends/0/rope/diameter", """{"value":1,"unit":"mm"}""", [] },
        { "/ends/0/rope/grade", "0", ["/ends/0/rope/grade"] },
        { "/ends/0/quantity", "0", ["/ends/0/quantity"] },
        { "/ends/0/quantity", "1001", ["/ends/0/quantity", "/ends"] },
        { "/ends", "[]", ["/ends"] },
        { "/stock/0", """{"lot":"L","kit":"small","count":1,"madeOn":"2026-02-01","expiresOn":"2026-01-31"}""", ["/stock/0/madeOn", "/stock/0/expiresOn"] },
        { "/stock/0/madeOn", "\"2026-03-13\"", ["/stock/0/madeOn", "/pourAt"] },
        { "/stock/0", """{"lot":"L","kit":"small","count":1,"madeOn":"2026-02-01","resinExpiresOn":"2026-01-31"}""", ["/stock/0/madeOn", "/stock/0/resinExpiresOn"] },
        { "/stock/0", """{"lot":"L","kit":"small","count":1,"madeOn":"2026-02-01","hardenerExpiresOn":"2026-01-31"}""", ["/stock/0/madeOn", "/stock/0/hardenerExpiresOn"] },
        { "/stock/0", """{"lot":"L","kit":"small","count":1,"madeOn":"2026-02-01","doseExpiresOn":"2026-01-31"}""", ["/stock/0/madeOn", "/stock/0/doseExpiresOn"] },
        { "/stock/0", """{"lot":"L","kit":"small","count":1,"madeOn":"2026-02-01","doseExpiresOn":"2026-02-01"}""", [] },
        { "/stock/0/state", "\"leaking\"", ["/stock/0/state"] },
        { "/stock/0/storage", """{"lowest":{"value":-61,"unit":"degC"}}""", ["/stock/0/storage/lowest"] },
        { "/stock/0/storage", """{"highest":{"value":101,"unit":"degC"}}""", ["/stock/0/storage/highest"] },
        { "/stock/0/storage", """{"lowest":{"value":20,"unit":"degC"},"highest":{"value":19,"unit":"degC"}}""", ["/stock/0/storage/lowest", "/stock/0/storage/highest"] },
        { "/stock/0/storage", """{"lowest":{"value":20,"unit":"degC"},"known":"no"}""", ["/stock/0/storage/lowest", "/stock/0/storage/known"] },
        { "/stock/0/storage", """{"highest":{"value":20,"unit":"degC"},"known":"no"}""", ["/stock/0/storage/highest", "/stock/0/storage/known"] },
        { "/stock/0/kit", "\"huge\"", ["/stock/0/kit"] },
        { "/stock/0/count", "-1", ["/stock/0/count"] },
        { "/compound", "{}", ["/compound/profile", "/compound/sheet"] },
        { "/compound", """{"profile":"nothing"}""", ["/compound/profile"] },
        { "/conditions/airTemperature/value", "-46", ["/conditions/airTemperature"] },
        { "/conditions/relativeHumidity/value", "101", ["/conditions/relativeHumidity"] },
        { "/conditions/relativeHumidity/value", "0", ["/conditions/relativeHumidity"] },
        { "/conditions/room/volume/value", "0", ["/conditions/room/volume"] },
        { "/crew/mixers", "0", ["/crew/mixers"] },
        { "/allowance/value", "201", ["/allowance"] },
        { "/vesselResidue", """{"value":-1,"unit":"mL"}""", ["/vesselResidue"] },
        { "/rules", "\"2020-01\"", ["/rules"] },
    };

    /// <summary>The same, in the sheet sent inline.</summary>
    public static TheoryData<string, string, string[]> SheetEdits => new()
    {
        { "/compound/profile", "\"demonstration\"", ["/compound/profile", "/compound/sheet"] },
        { "/compound/sheet/doses/0/from/value", "3", ["/compound/sheet/doses/0/from", "/compound/sheet/pouring/minimum"] },
        { "/compound/sheet/doses/2/below/value", "30", ["/compound/sheet/doses/2/below", "/compound/sheet/pouring/maximum"] },
        { "/compound/sheet/doses/1/from/value", "5", ["/compound/sheet/doses/0/below", "/compound/sheet/doses/1/from"] },
        { "/compound/sheet/doses/1/below/value", "4",
            ["/compound/sheet/doses/1/from", "/compound/sheet/doses/1/below", "/compound/sheet/doses/2/from"] },
        { "/compound/sheet/kits/1/code", "\"small\"", ["/compound/sheet/kits/0/code", "/compound/sheet/kits/1/code"] },
        { "/compound/sheet/kits", "[]", ["/compound/sheet/kits", "/stock/0/kit"] },
        { "/compound/sheet/kits/0/cost", "-1", ["/compound/sheet/kits/0/cost"] },
        { "/compound/sheet/kits/0/cost", "null", ["/objective", "/compound"] },
        { "/compound/sheet/kits/0/volume", """{"value":0,"unit":"mL"}""", ["/compound/sheet/kits/0/volume"] },
        { "/compound/sheet/gelTimes/1/temperature/value", "5", ["/compound/sheet/gelTimes/0", "/compound/sheet/gelTimes/1"] },
        { "/compound/sheet/pouring/minimum/value", "35", ["/compound/sheet/pouring/minimum", "/compound/sheet/pouring/maximum"] },
        { "/compound/sheet/storage", """{"minimum":{"value":25,"unit":"degC"},"maximum":{"value":5,"unit":"degC"}}""", ["/compound/sheet/storage/minimum", "/compound/sheet/storage/maximum"] },
        { "/compound/sheet/potLife/value", "0", ["/compound/sheet/potLife"] },
        { "/compound/sheet/shelfLife/value", "1.5", ["/compound/sheet/shelfLife"] },
        { "/compound/sheet/cured/poissonRatio/value", "0.5", ["/compound/sheet/cured/poissonRatio"] },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public Task Plan_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected) =>
        CheckAsync(Plans.Plan, pointer, raw, expected);

    [Theory]
    [MemberData(nameof(SheetEdits))]
    public async Task Sheet_that_makes_no_sense_is_refused_where_it_makes_none(string pointer, string raw, string[] expected) =>
        await CheckAsync(await Plans.WithSheetAsync(service), pointer, raw, expected);

    [Fact]
    public async Task Ends_of_the_same_name_are_refused_at_both()
    {
        var body = Plans.Plan;
        body["ends"]!.AsArray().Add(body.At("/ends/0")!.DeepClone());

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(["/ends/0/id", "/ends/1/id"], ProblemAssert.Pointers(reply.Json));
    }

    [Fact]
    public async Task Plan_wrong_in_many_places_is_refused_at_all_of_them()
    {
        var body = Plans.Plan.With("/ends/0/rope/diameter/value", 0).With("/ends/0/quantity", 0).With("/rules", "1999-01")
            .With("/stock/0/kit", "huge").With("/crew/mixers", 0);

        var reply = await service.PostAsync(Plans.Path, body);

        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(
            ["/crew/mixers", "/ends/0/quantity", "/ends/0/rope/diameter", "/rules", "/stock/0/kit"],
            ProblemAssert.Pointers(reply.Json).Order(StringComparer.Ordinal));
    }

    private async Task CheckAsync(JsonObject plan, string pointer, string raw, string[] expected)
    {
        var reply = await service.PostAsync(Plans.Path, plan.With(pointer, JsonNode.Parse(raw)));
        if (expected.Length == 0)
        {
            // Odd, but possible: the plan has findings for it.
            Assert.True(reply.Status == 200, reply.Text);
            return;
        }

        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal(expected.Order(StringComparer.Ordinal), ProblemAssert.Pointers(reply.Json).Order(StringComparer.Ordinal));
    }
}
