using System.Globalization;
using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Curing;

/// <summary>The law of release over HTTP, and what a sheet may state of full strength.</summary>
public sealed class ReleaseTests(Service service)
{
    private const string Path = "/v1/cure-schedules", Row = "/compound/sheet/fullStrength";

    /// <summary>
    /// Whole minutes after the results of an independent quadrature (SciPy); 90 min after gel at 20 °C, gel 66, 24, 10 min at 5, 20, 35 °C.
    /// </summary>
    [Theory]
    [InlineData("uniform", 20, 20, 20, 114)]
    [InlineData("coupled", 20, 20, 20, 114)]
    [InlineData("uniform", 30, 30, 30, 104)]
    [InlineData("coupled", 30, 30, 30, 104)]
    [InlineData("uniform", 10, 10, 10, 262)]
    [InlineData("uniform", 20, 8, 20, 311)]
    // A cold compound delays the gel; what follows goes by air and steel: 66 and 90 min.
    [InlineData("uniform", 30, 30, 5, 156)]
    public async Task Load_waits_for_the_sheet(string model, double air, double steel, double compound, int minutes)
    {
        var end = (await service.AnswerAsync(Path, At(model, air, steel, compound))).At("/result/ends/0")!;
        Assert.Equal(minutes, MinutesOf(end, "/proofLoadFrom"));
        Assert.Equal((minutes, "sheet"), (MinutesOf(end, "/release/sheetFrom"), (string?)end.At("/governedBy/proofLoadFrom")));
        Assert.True(end.At("/release/modelFrom") is null == (model == "uniform"));
    }

    [Fact]
    public async Task Gel_that_came_early_ends_the_rest_and_moves_no_load()
    {
        var seen = At("uniform", 20, 20, 20)
            .With("/observations",
            new JsonArray(new JsonObject { ["end"] = "A", ["gelAt"] = "2026-03-12T13:18:00+01:00", ["seenIn"] = "cone" }));
        var end = (await service.AnswerAsync(Path, seen)).At("/result/ends/0")!;
        Assert.Equal((18, 114), (MinutesOf(end, "/undisturbedUntil"), MinutesOf(end, "/proofLoadFrom")));
    }

    [Theory]
    [InlineData("""[{"temperature":{"value":10,"unit":"degC"},"afterGel":{"value":60,"unit":"min"}},{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":90,"unit":"min"}}]""",
        "/0/afterGel", "/1/afterGel")]
    [InlineData("""[{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":90,"unit":"min"}},{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":90,"unit":"min"}}]""",
        "/0", "/1")]
    [InlineData("""[{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":90,"unit":"min"},"doses":[0,2]},{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":80,"unit":"min"},"doses":[2]}]""",
        "/0", "/1")]
    [InlineData("""[{"temperature":{"value":20,"unit":"degC"},"afterGel":{"value":90,"unit":"min"},"isothermal":"yes"}]""", "/0/isothermal", "/0/isothermalSource")]
    public async Task Sheet_that_contradicts_itself_is_refused_at_both_places(string rows, string one, string other)
    {
        var sheet = (await service.GetAsync("/v1/compounds")).Json["compounds"]!.AsArray()
            .Single(entry => (string?)entry!["id"] == "demonstration")!["sheet"]!.AsObject();
        var reply = await service.PostAsync(Path,
            At("uniform", 20, 20, 20)
            .With("/compound", new JsonObject { ["sheet"] = sheet.DeepClone().AsObject().With("/fullStrength", JsonNode.Parse(rows)!) }));
        ProblemAssert.IsProblem(reply, 422);
        Assert.Equal([Row + one, Row + other], ProblemAssert.Pointers(reply.Json));
    }

    [Fact]
    public async Task Steel_series_that_begins_before_the_mixing_or_goes_back_is_refused()
    {
        JsonObject Reading(string clock) =>
            new() { ["at"] = $"2026-03-12T{clock}:00+01:00", ["temperature"] = NodeEdits.Quantity(20, "degC") };
        async Task<IReadOnlyList<string>> Refused(params string[] clocks)
        {
            var reply = await service.PostAsync(Path,
                At("uniform", 20, 20, 20).With("/conditions/steelSeries", new JsonArray([.. clocks.Select(Reading)])));
            ProblemAssert.IsProblem(reply, 422);
            return ProblemAssert.Pointers(reply.Json);
        }

        Assert.Equal(["/conditions/steelSeries/0/at", "/mixedAt"], await Refused("13:00"));
        Assert.Equal(["/conditions/steelSeries/0/at", "/conditions/steelSeries/1/at"], await Refused("14:00", "13:30"));
    }

    private static JsonObject At(string model, double air, double steel, double compound) =>
        JsonNode.Parse(RequestExamples.Of("cure-schedules", "table").Body)!.AsObject()
        .With("/thermalModel", model)
        .With("/mixedAt", "2026-03-12T13:00:00+01:00")
        .With("/doses", 0)
        .With("/conditions/air", new JsonObject { ["constant"] = NodeEdits.Quantity(air, "degC") })
        .With("/conditions/steelTemperature", NodeEdits.Quantity(steel, "degC"))
        .With("/conditions/compoundTemperature", NodeEdits.Quantity(compound, "degC"))
        .With("/ends/0/id", "A")
        .With("/ends/0/socket/outerDiameter", NodeEdits.Quantity(70, "mm"));

    private static int MinutesOf(JsonNode end, string at) =>
        (int)Math.Round((DateTimeOffset.Parse((string)end.At(at)!, CultureInfo.InvariantCulture) - new DateTimeOffset(2026, 3, 12, 13, 0, 0,
        TimeSpan.FromHours(1))).TotalMinutes);
}
