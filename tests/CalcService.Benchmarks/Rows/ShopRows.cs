using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Curing;
using CalcService.Api.OpenApi;
using CalcService.Api.Reading;
using CalcService.Benchmarks.Measuring;
using CalcService.Engine;
using CalcService.Engine.Curing;
using CalcService.Engine.Rules;

namespace CalcService.Benchmarks.Rows;

/// <summary>Sixty ends of two sizes through a shop of six people in three shifts, with two nights between them.</summary>
internal static class ShopRows
{
    private const double BarS = 5;
    private const int Rounds = 5;

    public static IReadOnlyList<Row> Measure() =>
        [Row("uniform", "60 ends through a shop in three shifts, the compound as warm as the air"),
        Row("coupled", "the same, each cone by its own heat")];

    private static Row Row(string model, string work)
    {
        var input = Input(model);
        var first = Time(input);
        var median = Interleaved.Median([.. Enumerable.Range(0, Rounds).Select(_ => Time(input))]);
        var shop = Plan(input);
        var gap = shop is null ? "no schedule" : $"gap {shop.Gap * 100:0.0} %";
        return new($"{work}, {gap}", $"{median:0.00} s of CPU (first {first:0.00} s)", "5 s, gap stated", shop is null
            ? double.PositiveInfinity : Math.Max(first, median) / BarS);
    }

    private static double Time(CureScheduleInput input)
    {
        var before = CpuClock.Process();
        Plan(input);
        return (CpuClock.Process() - before) / 1e9;
    }

    private static ShopSchedule? Plan(CureScheduleInput input) => CureSchedule.Calculate(input, Editions.Known.Current,
        new Budget(Budget.DefaultSteps), CancellationToken.None).Result.Shop;

    /// <summary>The example of a shop, enlarged.</summary>
    private static CureScheduleInput Input(string model)
    {
        var request = JsonNode.Parse(RequestExamples.Of("cure-schedules", "shop").Body)!;
        request["mixedAt"] = "2026-03-16T07:00:00+01:00";
        request["thermalModel"] = model;
        request["conditions"]!["air"]!["series"] =
            new JsonArray([.. new[] { (16, 5, 16), (16, 14, 20), (17, 5, 16), (17, 15, 20), (18, 5, 16), (18, 15, 20), (19, 5, 16) }
            .Select(air =>
            new JsonObject { ["at"] = $"2026-03-{air.Item1}T{air.Item2:00}:00:00+01:00", ["temperature"] = Quantity(air.Item3, "degC") })]);
        var first = request["ends"]![0]!;
        first["quantity"] = 40;
        first["socket"]!["outerDiameter"] = Quantity(70, "mm");
        var second = first.DeepClone();
        second["id"] = "B";
        second["quantity"] = 20;
        second["rope"]!["diameter"] = Quantity(26, "mm");
        second["socket"] = new JsonObject
        {
            ["basket"] = new JsonObject { ["smallEndDiameter"] = Quantity(30, "mm"), ["largeEndDiameter"] = Quantity(59, "mm"),
                ["length"] = Quantity(132, "mm") },
            ["outerDiameter"] = Quantity(92, "mm"),
        };
        request["ends"]!.AsArray().Add(second);
        var shop = request["shop"]!;
        (shop["crew"], shop["stands"], shop["mixers"], shop["testBeds"]) = (5, 12, 2, 2);
        shop["shifts"] =
            new JsonArray([.. new[] { 16, 17,
            18 }.Select(day => new JsonObject { ["from"] = $"2026-03-{day}T06:00:00+01:00", ["to"] = $"2026-03-{day}T14:00:00+01:00" })]);
        var read = BodyReader.Read(Encoding.UTF8.GetBytes(request.ToJsonString()), ShapeTable.Of<CureScheduleRequest>(), Work.Checks);
        return CureScheduleMapping.ToEngine((CureScheduleRequest)read.Value!, Work.Compounds.All[0].EngineSheet);
    }

    private static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };
}
