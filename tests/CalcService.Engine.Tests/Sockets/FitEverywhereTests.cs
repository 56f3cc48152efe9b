using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Audits;
using CalcService.Engine.Tests.Curing;
using CalcService.Engine.Tests.Findings;
using CalcService.Engine.Tests.Matching;
using CalcService.Engine.Tests.Pouring;
using CalcService.Engine.Tests.Proof;
using CalcService.Engine.Tests.Reuse;
using CsCheck;

namespace CalcService.Engine.Tests.Sockets;

/// <summary>Whether a rope belongs in a socket is one question: each room that is asked says the same of the same end.</summary>
public sealed class FitEverywhereTests
{
    /// <summary>A room that judges ends.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="At">Where the end stands in its request.</param>
    /// <param name="Judge">What it finds of an end.</param>
    /// <param name="NotTold">Findings on what it isn't told of.</param>
    private sealed record Room(string Name, string At, Func<FitEnd, IReadOnlyList<Finding>> Judge, params string[] NotTold)
    {
        /// <summary>A member of the end in the request of this room.</summary>
        public string PlaceOf(string pointer) => Name != "reuse" ? At + pointer
            : pointer.StartsWith("/rope", StringComparison.Ordinal) ? "/intended" + pointer
            : pointer.Replace("/socket/basket", "/socket/nominal/basket", StringComparison.Ordinal);
    }

    private const string Strength = "socket-weaker-than-rope", Metal = "socket-metal-unfit", Range = "rope-outside-socket-range";

    private static readonly FitEnd Good = new(GoodPour.End("A", 1).Rope, GoodPour.End("A", 1).Basket, 310e3, SocketMetal.CastSteel);

    private static readonly Room[] Rooms =
    [
        new("plan", "/ends/0", end => GoodPour.Plan(GoodPour.Input with
        {
            Ends = [GoodPour.Input.Ends[0] with { Rope = end.Rope, Basket = end.Basket, SocketBreakingForceN = end.SocketN,
                Metal = end.Metal, RopeRange = end.Range }],
        }).Findings),
        new("schedule", "/ends/0", end => GoodCure.Schedule(GoodCure.Input with
        {
            Ends = [GoodCure.Input.Ends[0] with { Rope = end.Rope, Basket = end.Basket, SocketBreakingForceN = end.SocketN,
                Metal = end.Metal, RopeRange = end.Range }],
        }).Findings),
        new("match", "", end => GoodMatch.Match(GoodMatch.Input with
        {
            Rope = end.Rope, Duty = GoodMatch.Input.Duty! with { TypeTested = null },
            Socket = GoodMatch.Input.Socket with { Basket = end.Basket, BreakingForceN = end.SocketN, Metal = end.Metal,
            RopeRange = end.Range },
        }).Findings),
        new("audit", "", end => GoodRecord.Audit(GoodRecord.Input with
        {
            Rope = end.Rope, Socket = GoodRecord.Input.Socket with { Basket = end.Basket, BreakingForceN = end.SocketN, Metal = end.Metal },
        }).Findings, Range),
        new("proof", "", end => GoodProof.Evaluate(GoodProof.Before with { Rope = end.Rope, Basket = end.Basket }).Findings, Strength,
        Metal, Range),
        new("reuse", "", end => GoodSocket.Assess(Unworn(end)).Findings, Range),
    ];

    public static TheoryData<int, string> Cases => CatalogueCases.Numbered(FitCases.All);

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_wrong_with_an_end_is_found_in_every_room_that_knows_of_it(int index, string what)
    {
        var one = FitCases.All[index];
        foreach (var room in Rooms)
        {
            var found = room.Judge(one.Change(Good))
                .Any(finding =>
                (finding.Definition.Code, finding.Severity, finding.Pointer) == (one.Code, one.Severity, room.PlaceOf(one.Pointer)));
            Assert.True(found == Knows(room, one.Code), $"{room.Name}: {what}");
        }
    }

    /// <summary>Relation 19 between answers, and the same for all that can't be: a thousand random ends.</summary>
    [Fact]
    public void Verdict_on_any_end_is_the_same_in_every_room() =>
        Gen.Select(Gen.Double[.008, .040], Gen.Double[.9, 3.4], Gen.Double[1, 8], Gen.Double[.5, 25], Gen.Double[.4, 2],
        Gen.Double[.9, 1.1]).Sample(
            (diameter, opening, length, degrees, strength, measured) =>
            {
                var small = diameter * opening;
                var basket = Good.Basket with
                {
                    SmallEndDiameterM = small, LengthM = diameter * length,
                        LargeEndDiameterM = small + (2 * diameter * length * Math.Tan(degrees * Math.PI / 360)), ToleranceM = .0003,
                };
                var force = 1770e6 * .356 * diameter * diameter;
                var end = Good with
                {
                    Rope = Good.Rope with { DiameterM = diameter, MeasuredDiameterM = measured * diameter,
                        CertifiedBreakingForceN = strength * force },
                    Basket = basket, SocketN = force,
                };
                var plan = Verdict(Rooms[0], end);
                foreach (var room in Rooms.Skip(1))
                {
                    Assert.Equal(plan.Where(code => Knows(room, code.Split(' ')[0])), Verdict(room, end));
                }
            },
            iter: 1000);

    [Fact]
    public void Type_tested_end_may_be_short() => Assert.All(Rooms.Where(room => room.Name != "proof"), room =>
    {
        var end = Good with { Basket = Good.Basket with { LengthM = .070, LargeEndDiameterM = .040 } };
        Assert.Contains("basket-too-short Unknown", Verdict(room, end));
        Assert.DoesNotContain("basket-too-short Unknown", Verdict(room, end with { Basket = end.Basket with { IsTypeTested = true } }));
    });

    private static bool Knows(Room room, string code) => !room.NotTold.Contains(code);

    /// <summary>A used socket at the sizes of its drawing, as strong as new.</summary>
    private static ReuseInput Unworn(FitEnd end)
    {
        var (basket, good) = (end.Basket, GoodSocket.Input.Socket);
        var drawn = good.Nominal with { Basket = basket, OuterAtSmallEndM = 3 * basket.LargeEndDiameterM,
            OuterAtMouthM = 3 * basket.LargeEndDiameterM };
        return GoodSocket.Input with
        {
            Intended = GoodSocket.Input.Intended with { Rope = end.Rope },
            Socket = good with
            {
                BreakingForceN = end.SocketN, Metal = end.Metal, Nominal = drawn,
                Measured = good.Measured with
                {
                    Stations =
                        [.. new[] { 0, .5,
                        1 }.Select(share =>
                        new BoreStation(share * basket.LengthM, [basket.DiameterAtM(share), basket.DiameterAtM(share)]))],
                    OuterAtSmallEndM = drawn.OuterAtSmallEndM, OuterAtMouthM = drawn.OuterAtMouthM, PinDiameterM = drawn.PinDiameterM,
                    PinHoleDiametersM = [drawn.PinHoleDiameterM!.Value, drawn.PinHoleDiameterM.Value], EarThicknessM = drawn.EarThicknessM,
                    EarGapM = drawn.EarGapM,
                },
            },
        };
    }

    private static string[] Verdict(Room room, FitEnd end) =>
        [.. room.Judge(end).Where(finding => FitCases.All.Any(one => one.Code == finding.Definition.Code))
        .Select(finding => $"{finding.Definition.Code} {finding.Severity}").Order(StringComparer.Ordinal)];
}
