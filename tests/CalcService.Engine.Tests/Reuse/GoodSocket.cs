using CalcService.Engine.Reuse;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>
/// A used socket with which nothing is wrong and of which everything is known, for tests that change one thing. It is invented.
/// </summary>
public static class GoodSocket
{
    public const double Zero = 273.15;

    public static ReuseInput Input { get; } = new()
    {
        AssessedOn = new(2026, 3, 12),
        Socket = new()
        {
            Id = "SOCK-31",
            Type = SocketType.Open,
            SteelKnown = true,
            Metal = SocketMetal.ForgedSteel,
            YieldStrengthPa = 355e6,
            TensileStrengthPa = 570e6,
            PinYieldStrengthPa = 600e6,
            RatedLoadN = 50e3,
            ProofRatingN = 120e3,
            BreakingForceN = 320e3,
            Nominal = new()
            {
                Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100 },
                OuterAtSmallEndM = .070, OuterAtMouthM = .070, PinDiameterM = .035, PinHoleDiameterM = .0365,
                EarThicknessM = .016, EarWidthM = .080, EarEndDistanceM = .040, EarGapM = .040,
            },
            Measured = new()
            {
                Stations = [new(0, [.0231, .0232]), new(.050, [.0341, .0342]), new(.100, [.0451, .0451])],
                OuterAtSmallEndM = .0698, OuterAtMouthM = .0698, PinDiameterM = .0349, PinHoleDiametersM = [.0368, .0366],
                EarThicknessM = .0159, EarWidthM = .080, EarEndDistanceM = .040, EarGapM = .0403, PitDepthM = 0,
            },
            History = new() { Pours = 2, LastMedium = SocketMedium.Resin, Overloaded = false, Welded = false, Straightened = false,
            ArcStruck = false },
        },
        Limits = new()
        {
            BoreGrowth = .02, Ovality = .02, PinHoleGrowth = .05, EarSpread = .03, PitDepthM = .0008, TaperLoss = .10, PinWear = .02,
                EarThicknessLoss = .05,
            Source = "operator's rule 7",
        },
        Removal = new(RemovalMethod.PressedCold, 20 + Zero),
        Inspection = new()
        {
            InspectedOn = new(2026, 3, 11), Method = SurfaceMethod.MagneticParticle,
                Places = [SocketPlace.Basket, SocketPlace.Ears, SocketPlace.PinHoles, SocketPlace.Pin, SocketPlace.Bail],
            Indications = [], VisibleCracks = false,
            Corrosion = CorrosionState.None, Surface = SurfaceState.Clean,
        },
        Intended = new() { Rope = Rope, RatedLoadN = 50e3, ProofLoadN = 100e3 },
    };

    private static Rope Rope => new()
    {
        DiameterM = .020, CertifiedBreakingForceN = 252e3, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770,
            Finish = WireFinish.Bright,
    };

    public static Outcome<ReuseResult> Assess(ReuseInput input, bool trace = false) =>
        ReuseAssessment.Calculate(input, Editions.Known.Current, new Budget(Budget.DefaultSteps, trace),
            TestContext.Current.CancellationToken);

    public static Func<ReuseInput, ReuseInput> Socket(Func<UsedSocket, UsedSocket> change) => input =>
        input with { Socket = change(input.Socket) };

    public static Func<ReuseInput, ReuseInput> Drawn(Func<NominalSizes, NominalSizes> change) =>
        Socket(socket => socket with { Nominal = change(socket.Nominal) });

    public static Func<ReuseInput, ReuseInput> Found(Func<MeasuredSizes, MeasuredSizes> change) =>
        Socket(socket => socket with { Measured = change(socket.Measured) });

    public static Func<ReuseInput, ReuseInput> Past(Func<SocketHistory, SocketHistory> change) =>
        Socket(socket => socket with { History = change(socket.History) });

    public static Func<ReuseInput, ReuseInput> Limits(Func<WearLimits, WearLimits> change) => input =>
        input with { Limits = change(input.Limits) };

    public static Func<ReuseInput, ReuseInput> Seen(Func<CrackInspection, CrackInspection> change) => input =>
        input with { Inspection = change(input.Inspection) };

    public static Func<ReuseInput, ReuseInput> For(Func<IntendedUse, IntendedUse> change) => input =>
        input with { Intended = change(input.Intended) };

    public static Func<ReuseInput, ReuseInput> Roped(Func<Rope, Rope> change) => For(use => use with { Rope = change(use.Rope!) });

    public static Func<ReuseInput, ReuseInput> Basket(Func<Engine.Sockets.Basket, Engine.Sockets.Basket> change) =>
        Drawn(drawn => drawn with { Basket = change(drawn.Basket) });

    public static Func<ReuseInput, ReuseInput> Removed(RemovalMethod method, double? celsius) => input =>
        input with { Removal = new(method, celsius + Zero) };

    /// <summary>The stations with one of them changed or, by null, left out.</summary>
    public static Func<ReuseInput, ReuseInput> Station(int index, params double[]? diametersM) => Found(found => found with
    {
        Stations =
            [.. found.Stations.Select((station, i) => i == index ? diametersM is null ? null : station with { DiametersM = diametersM }
            : station).OfType<BoreStation>()],
    });
}
