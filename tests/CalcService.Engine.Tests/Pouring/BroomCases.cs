using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>One pour for each finding of the broom, the bore, the serving and how the rope stands.</summary>
public static class BroomCases
{
    private const string At = "/ends/0";

    public static IReadOnlyList<FindingCase> All { get; } =
    [
        new("left-in-broom", Severity.Stop, At + "/fibreCore", End(end => end with { FibreCore = BroomPart.Left })),
        new("left-in-broom", Severity.Stop, At + "/plastic", End(end => end with { Plastic = BroomPart.Left })),
        new("cleaner-forbidden", Severity.Stop, At + "/cleaner", End(end => end with { Cleaner = Cleaner.Acid })),
        new("cleaner-forbidden", Severity.Stop, At + "/cleaner", End(end => end with { Cleaner = Cleaner.Flux })),
        new("broom-not-dry", Severity.Stop, At + "/driedAt", End(end => end with { DriedAt = GoodPour.Input.PourAt.AddMinutes(1) })),
        new("bore-not-clean", Severity.Stop, At + "/socket/bore", End(end => end with { Bore = BoreState.OldResin })),
        new("bore-not-clean", Severity.Stop, At + "/socket/bore", End(end => end with { Bore = BoreState.OldMetal })),
        new("release-agent", Severity.Note, At + "/releaseAgent", End(end => end with { HasReleaseAgent = true })),
        new("used-rope", Severity.Caution, At + "/rope/used", End(end => end with { Rope = end.Rope with { IsUsed = true } })),
        new("broom-too-wide", Severity.Note, At + "/broomAngle", End(end => end with { BroomAngleRad = 91 * Math.PI / 180 })),
        new("broom-too-narrow", Severity.Caution, At + "/broomAngle", End(end => end with { BroomAngleRad = 19.9 * Math.PI / 180 })),
        new("broom-dried-long-ago", Severity.Caution, At + "/driedAt",
        End(end => end with { DriedAt = GoodPour.Input.PourAt.AddHours(-12).AddSeconds(-1) })),
        new("rope-tilted", Severity.Unknown, At + "/tilt", End(end => end with { TiltRad = 5.1 * Math.PI / 180 })),
        new("no-straight-rope", Severity.Stop, At + "/straightBelow", End(end => end with { StraightBelowM = 0 })),
        new("straight-rope-short", Severity.Caution, At + "/straightBelow", End(end => end with { StraightBelowM = .001 })),
        new("straight-rope-short", Severity.Caution, At + "/straightBelow", End(end => end with { StraightBelowM = .0399 })),
        new("broom-part-contradicted", Severity.Unknown, At + "/fibreCore",
            End(end => end with { Rope = end.Rope with { Core = RopeCore.Fibre }, FibreCore = BroomPart.None })),
        new("broom-part-contradicted", Severity.Unknown, At + "/plastic",
            End(end => end with { Rope = end.Rope with { PlasticFilled = Fact.Yes }, Plastic = BroomPart.None })),
        // Gap at the small end 0.40 mm (see the section shares), over 100 mm that is 0.23°.
        new("rope-tilted", Severity.Caution, At + "/tilt", End(end => end with { TiltRad = 1.1 * Math.PI / 180 })),
        new("serving-shortens-grip", Severity.Caution, At + "/servingInBasket",
            End(end => end with { Basket = end.Basket with { LengthM = .120 }, ServingInBasketM = .020, ServingDiameterM = .0222 })),
        new("serving-fit-unknown", Severity.Unknown, At + "/servingDiameter",
            End(end => end with { Basket = end.Basket with { LengthM = .120 }, ServingInBasketM = .020 }), "serving-shortens-grip"),
        new("serving-does-not-fit", Severity.Stop, At + "/servingDiameter",
            End(end => end with { Basket = end.Basket with { LengthM = .120 }, ServingInBasketM = .020, ServingDiameterM = .023 }),
            "serving-shortens-grip"),
        new("fit-depends-on-tolerance", Severity.Caution, At + "/socket/basket/tolerance",
            End(end => end with { Basket = end.Basket with { LengthM = .120 }, ServingInBasketM = .020, ServingDiameterM = .0226 }),
            "serving-shortens-grip"),
        new("basket-short", Severity.Note, At + "/socket/basket/length", End(end => end with { WireEndsBelowMouthM = .002 })),
        new("rope-does-not-enter", Severity.Stop, At + "/socket/basket/smallEndDiameter",
        End(end => end with { Rope = end.Rope with { MeasuredDiameterM = .023 } }), "rope-thick"),
        new("geometry-from-memory", Severity.Caution, At + "/socket/basket/sizesFrom",
        End(end => end with { SizesFrom = SizesFrom.Memory })),
        new("vent-small-basket", Severity.Note, At + "/rope/diameter", End(end => end with
        {
            Rope = end.Rope with { DiameterM = .016 },
                Basket = end.Basket with { SmallEndDiameterM = .019, LargeEndDiameterM = .037, LengthM = .085 },
        })),
        new("outside-pouring-range", Severity.Stop, At + "/socket/temperature",
        End(end => end with { SocketTemperatureK = 35 + GoodPour.Zero })),
        new("outside-pouring-range", Severity.Stop, At + "/rope/temperature",
        End(end => end with { Rope = end.Rope with { TemperatureK = 35 + GoodPour.Zero } })),
        new("steel-near-dew-point", Severity.Caution, At + "/socket/temperature",
        End(end => end with { SocketTemperatureK = 12.5 + GoodPour.Zero })),
        new("dose-edge", Severity.Caution, At + "/rope/temperature", pour => pour with
        {
            Conditions = pour.Conditions with { RelativeHumidity = .2 },
                Ends = [pour.Ends[0] with { Rope = pour.Ends[0].Rope with { TemperatureK = 6 + GoodPour.Zero } }],
        }, "gel-time-extrapolated"),
    ];

    private static Func<PourPlanInput, PourPlanInput> End(Func<PourEnd, PourEnd> change) => pour =>
        pour with { Ends = [change(pour.Ends[0])] };
}
