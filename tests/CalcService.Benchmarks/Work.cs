using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api;
using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Catalogues;
using CalcService.Api.OpenApi;
using CalcService.Api.Reading;
using CalcService.Api.Validation;
using CalcService.Engine.Numerics.Covering;
using CalcService.Engine.Pouring;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Benchmarks;

/// <summary>What is measured, the same for the table and for BenchmarkDotNet.</summary>
internal static class Work
{
    /// <summary>A pour plan of one end: the first example of the documentation, as machines send it.</summary>
    public static byte[] Body { get; } = Encoding.UTF8.GetBytes(JsonNode.Parse(RequestExamples.Of("pour-plans")[0].Body)!.ToJsonString());

    /// <summary>The service with its calculations, not started.</summary>
    public static IServiceProvider Services { get; } = ServiceHost.Create([]).Services;

    public static CompoundCatalogue Compounds { get; } = Services.GetRequiredService<CompoundCatalogue>();

    public static ICapability Capability { get; } = Services.Calculation("pour-plans");

    public static ObjectChecks Checks { get; } = Services.GetRequiredService<ObjectChecks>();

    /// <summary>
    /// Six sizes of kit in whole millilitres, counted in microlitres as the planner counts them. Sizes and costs are invented.
    /// </summary>
    public static CoverItem[] Round { get; } = Kits(250, 400, 550, 800, 1100, 1500);

    /// <summary>The same without a common divisor.</summary>
    public static CoverItem[] Odd { get; } = Kits(251, 397, 553, 809, 1103, 1511);

    public const long TenLitres = 10_000_000;

    /// <summary>Thirty baskets of five sizes with three lots, whose pot life asks for several mixes.</summary>
    public static PourPlanInput Job { get; } = MakeJob();

    private static CoverItem[] Kits(params int[] millilitres) =>
        [.. millilitres.Select((size, i) => new CoverItem(size * 1000, (size * 55) + (1000 * (i + 1)), 0, null))];

    private static PourPlanInput MakeJob()
    {
        var read = BodyReader.Read(Body, ShapeTable.Of<PourPlanRequest>(), Checks);
        var one = PourPlanMapping.ToEngine((PourPlanRequest)read.Value!, Compounds.All[0].EngineSheet);
        var kits = one.Compound.Kits;
        return one with
        {
            Conditions = new() { AirK = 295.15, SteelK = 293.15, CompoundK = 293.15, RelativeHumidity = .5, Room = new(5000, 6.0 / 3600) },
            Ends = [.. new[] { 16, 20, 24, 28, 32 }.Select((millimetres, i) => Sized(one.Ends[0], i, 8 - i, millimetres / 1000.0))],
            Stock =
            [
                new("A", kits[0].Code, 6, new DateOnly(2026, 12, 31), null),
                new("B", kits[1].Code, 3, new DateOnly(2026, 6, 30), null),
                new("C", kits[^1].Code, 1, new DateOnly(2026, 9, 30), null),
            ],
        };
    }

    private static Engine.Pouring.PourEnd Sized(Engine.Pouring.PourEnd end, int number, int quantity, double d) => end with
    {
        Id = "E" + (char)('0' + number),
        Quantity = quantity,
        Rope = end.Rope with { DiameterM = d },
        SocketBreakingForceN = 1e6,
        Basket = end.Basket with { SmallEndDiameterM = 1.15 * d, LargeEndDiameterM = 2.25 * d, LengthM = 5 * d },
    };
}
