using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>Facts behind stop rules that nobody stated, or that are said to be unknown.</summary>
public static class StatedCases
{
    private const string Code = "facts-not-stated", At = "/ends/0";

    public static IReadOnlyList<FindingCase> All { get; } =
    [
        new(Code, Severity.Unknown, At + "/socket/bore", End(end => end with { Bore = null })),
        new(Code, Severity.Unknown, At + "/socket/bore", End(end => end with { Bore = BoreState.Unknown })),
        new(Code, Severity.Unknown, At + "/fibreCore", Rope(rope => rope with { Core = RopeCore.Fibre })),
        new(Code, Severity.Unknown, At + "/fibreCore",
        pour => Rope(rope => rope with { Core = RopeCore.Fibre })(End(end => end with { FibreCore = BroomPart.Unknown })(pour))),
        new(Code, Severity.Unknown, At + "/plastic", Rope(rope => rope with { PlasticFilled = Fact.Yes })),
        new(Code, Severity.Unknown, At + "/plastic", End(end => end with { Plastic = BroomPart.Unknown })),
        new(Code, Severity.Caution, At + "/plastic", Rope(rope => rope with { PlasticFilled = null })),
        new(Code, Severity.Unknown, At + "/rope/plasticFilled", Rope(rope => rope with { PlasticFilled = Fact.Unknown })),
        new(Code, Severity.Caution, At + "/cleaner", End(end => end with { Cleaner = null })),
        new(Code, Severity.Unknown, At + "/cleaner", End(end => end with { Cleaner = Cleaner.Unknown })),
        new(Code, Severity.Unknown, At + "/cleaner",
        pour => Rope(rope => rope with { Lubricant = Lubricant.Heavy })(End(end => end with { Cleaner = null })(pour))),
        new(Code, Severity.Unknown, At + "/cleaner",
        pour => Rope(rope => rope with { Lubricant = Lubricant.Unknown })(End(end => end with { Cleaner = null })(pour))),
        new(Code, Severity.Caution, At + "/driedAt", End(end => end with { DriedAt = null })),
        new(Code, Severity.Caution, At + "/tilt", End(end => end with { TiltRad = null })),
        new(Code, Severity.Caution, At + "/straightBelow", End(end => end with { StraightBelowM = null })),
        new(Code, Severity.Caution, At + "/socket/material/kind", End(end => end with { Metal = null })),
        new(Code, Severity.Unknown, At + "/socket/material/kind", End(end => end with { Metal = SocketMetal.Unknown })),
        new(Code, Severity.Caution, At + "/socket/breakingForce", End(end => end with { SocketBreakingForceN = null })),
        new(Code, Severity.Unknown, "/conditions/ignitionSource",
        pour => pour with { Conditions = pour.Conditions with { IgnitionSource = null } }),
        new(Code, Severity.Unknown, "/conditions/ignitionSource",
        pour => pour with { Conditions = pour.Conditions with { IgnitionSource = Fact.Unknown } }),
        new(Code, Severity.Caution, "/conditions/place", pour => pour with { Conditions = pour.Conditions with { Place = null } }),
        new(Code, Severity.Unknown, "/conditions/place",
        pour => pour with { Conditions = pour.Conditions with { Place = PourPlace.Unknown } }),
        new(Code, Severity.Unknown, "/stock", pour => pour with { Stock = null }),
        new(Code, Severity.Unknown, "/stock", pour => pour with { Stock = [] }),
        new(Code, Severity.Unknown, "/stock",
        pour => pour with { Stock = [GoodPour.Lot("A", "small", 0, "2026-12-31"), GoodPour.Lot("B", "large", 0, "2026-12-31")] }),
        new(Code, Severity.Caution, "/stock", pour => pour with { Purpose = Purpose.Plan, Stock = null }),
        new(Code, Severity.Caution, "/dose/added", pour => pour with { IntendedDose = new(null, null) }),
        new(Code, Severity.Unknown, "/dose/added", pour => pour with { IntendedDose = new(null, DoseMoment.Unknown) }),
    ];

    private static Func<PourPlanInput, PourPlanInput> End(Func<PourEnd, PourEnd> change) => pour =>
        pour with { Ends = [change(pour.Ends[0])] };

    private static Func<PourPlanInput, PourPlanInput> Rope(Func<Rope, Rope> change) => End(end => end with { Rope = change(end.Rope) });
}
