using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Releases;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Curing;

namespace CalcService.Engine.Tests.Chains;

/// <summary>From a virtual job to the questions that the paths are asked.</summary>
internal static class Chain
{
    private const double Zero = VirtualJob.Zero;
    private static readonly double[] Hours = [-1, 3, 7, 20, 300];

    /// <summary>How many random jobs each relation is held against; a command of DEVELOPERS.md asks for ten thousand.</summary>
    public static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("CALCSERVICE_CHAINS"), NumberStyles.None, CultureInfo.InvariantCulture,
        out var asked) ? asked : 200;

    /// <summary>Cones that are followed by their heat cost a hundred times as much.</summary>
    public static int CoupledCount => Math.Max(5, Count / 20);

    public static DateTimeOffset MixedAt => GoodCure.MixedAt;

    public static CureScheduleInput Cure(VirtualJob job, ThermalModel model = ThermalModel.Uniform) => new()
    {
        Compound = job.Sheet,
        MixedAt = MixedAt,
        ThermalModel = model,
        Conditions = new()
        {
            ConstantAirK = job.Air.Length == 1 ? job.Air[0] + Zero : null,
            AirSeries = Series(job.Air),
            SteelK = job.Steel + Zero,
            CompoundK = job.Compound + Zero,
        },
        Ends = [new("A", 1, job.Rope, job.Basket) { OuterAtSmallEndM = job.Basket.SmallEndDiameterM * job.Wall,
        OuterAtMouthM = job.Basket.LargeEndDiameterM * job.Wall }],
        PourTimeS = 120,
        Observations = job.Seen is { } seen && Expected(job) is { } expected
        ? [new("A", MixedAt.AddSeconds(Math.Max(60, Math.Round(seen * expected))), job.Place)] : [],
    };

    public static IReadOnlyList<AirPoint> Series(double[] celsius) => celsius.Length == 1 ? []
        : [.. celsius.Select((c, i) => new AirPoint(MixedAt.AddHours(Hours[i]), c + Zero))];

    public static Outcome<CureScheduleResult> Schedule(CureScheduleInput input) =>
        CureSchedule.Calculate(input, Editions.Known.Current, new Budget(Budget.DefaultSteps), TestContext.Current.CancellationToken);

    public static CuredEnd End(CureScheduleInput input) => Schedule(input).Result.Ends[0];

    public static CuredEnd End(VirtualJob job, ThermalModel model = ThermalModel.Uniform) => End(Cure(job, model));

    /// <summary>Minutes from mixing.</summary>
    public static double? Minutes(DateTimeOffset? at) => (at - MixedAt)?.TotalMinutes;

    private static double? Expected(VirtualJob job) => End(job with { Seen = null }).GelAt.Expected is { } gel
        ? (gel - MixedAt).TotalSeconds : null;
}
