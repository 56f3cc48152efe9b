using CalcService.Engine.Compounds;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Curing;
using CsCheck;

namespace CalcService.Engine.Tests.Chains;

/// <summary>One virtual end with its rope, socket, sheet, weather and history: what every path is asked about.</summary>
public sealed record VirtualJob
{
    public const double Zero = 273.15;

    /// <summary>°C; the sheets allow no pour that is warmer.</summary>
    public const double Warmest = 34;

    private static readonly Gen<(double MinutesAt5, double At20, double At35)> Gels =
        Gen.Select(Gen.Double[40, 160], Gen.Double[.25, .5], Gen.Double[.3, .6],
        (cold, mid, warm) => (cold, cold * mid, cold * mid * warm));

    /// <summary>Rows of full strength: one, two or three, colder is slower; the first by far the most common on sheets.</summary>
    private static readonly Gen<FullStrength[]> Rows = Gen.Select(Gen.Int[1, 3], Gen.Double[30, 240], Gen.Double[1.05, 2.5],
        Gen.Double[1.05, 2.5], (count, warm, step1, step2) => count switch
    {
        1 => new FullStrength[] { new(20 + Zero, warm * 60) },
        2 => [new(10 + Zero, warm * step1 * 60), new(20 + Zero, warm * 60)],
        _ => [new(10 + Zero, warm * step1 * step2 * 60), new(20 + Zero, warm * step1 * 60), new(30 + Zero, warm * 60)],
    });

    private static readonly Gen<CompoundSheet> Sheets = Gen.Select(Gels, Rows, Gen.Double[0, 60], Gen.Bool, Gen.Double[.5, .9],
        Gen.Double[100e3, 400e3], (gel, rows, hold, isPoor, potLife, heat) => GoodCure.Coupled.Compound with
    {
        GelTimes = isPoor
            ? [new(20 + Zero, 0, gel.At20 * 60) { SelfHeating = SelfHeating.Unknown }]
            : [.. new[] { (5.0, gel.MinutesAt5), (20, gel.At20),
            (35, gel.At35) }.Select(row => new GelTime(row.Item1 + Zero, 0, row.Item2 * 60) { SelfHeating = SelfHeating.No })],
        FullStrength = rows,
        MinimumHoldS = isPoor ? null : hold * 60,
        LowestCureK = isPoor ? null : 2 + Zero,
        Pouring = new(2 + Zero, Warmest + Zero),
        Doses = [new(2 + Zero, Warmest + Zero, 0)],
        PotLife = potLife,
        Reaction = new(heat, .3),
        Hardness = null,
        PeakLimitK = null,
        Service = null,
    });

    /// <summary>Air at hours from an hour before mixing: constant, or through five temperatures.</summary>
    private static readonly Gen<double[]> Weathers = Gen.OneOf(Gen.Double[3, 32].Select(celsius => new[] { celsius }),
        Gen.Double[3, 32].Array[5]);

    private static readonly Gen<(double Diameter, double Small, double Large, double Length)> Sizes = Gen.Select(Gen.Double[.010, .048],
        Gen.Double[1.08, 1.3], Gen.Double[1.7, 2.3], Gen.Double[4.5, 6],
        (d, small, large, length) => (d, d * small, d * large, d * length));

    public required CompoundSheet Sheet { get; init; }

    /// <summary>°C; one value is a constant, more are a series at hours -1, 3, 7, 20 and 300 from mixing.</summary>
    public required double[] Air { get; init; }

    public required double Steel { get; init; }

    public required double Compound { get; init; }

    public required Rope Rope { get; init; }

    public required Basket Basket { get; init; }

    /// <summary>Outside over bore.</summary>
    public required double Wall { get; init; }

    /// <summary>Gel seen, as a share of the expected time; null where nobody looked.</summary>
    public double? Seen { get; init; }

    public GelPlace Place { get; init; }

    public static Gen<VirtualJob> Any { get; } = Gen.Select(Sheets, Weathers, Gen.Double[3, 32], Gen.Double[5, 30], Sizes,
        Gen.Double[1.4, 1.9], (sheet, air, steel, compound, size, wall) => new VirtualJob
    {
        Sheet = sheet,
        Air = air,
        Steel = steel,
        Compound = compound,
        Wall = wall,
        Rope = new() { DiameterM = size.Diameter, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770, Finish = WireFinish.Bright },
        Basket = new() { SmallEndDiameterM = size.Small, LargeEndDiameterM = size.Large, LengthM = size.Length },
    });

    /// <summary>The same with a gel that somebody saw.</summary>
    public static Gen<VirtualJob> Watched { get; } = Gen.Select(Any, Gen.Double[.6, 1.6], Gen.Enum<GelPlace>(),
        (job, seen, place) => job with { Seen = seen, Place = place });
}
