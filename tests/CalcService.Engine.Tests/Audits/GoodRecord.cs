using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Curing;

namespace CalcService.Engine.Tests.Audits;

/// <summary>
/// The record of an end with which nothing is wrong and which holds everything, for tests that change one thing. It is invented.
/// </summary>
public static class GoodRecord
{
    public const double Zero = 273.15;

    /// <summary>At 20 °C it gels after 24 min, has a pot life of 18 min and full strength 90 min after gel.</summary>
    public static CompoundSheet Sheet { get; } = GoodCure.Sheet with
    {
        Hardness = new("indenter", 40),
        Cured = new() { ModulusPa = 6e9, PoissonRatio = .25, ShrinkageAfterGel = .004 },
    };

    public static DateTimeOffset MixedAt { get; } = new(2026, 3, 12, 8, 30, 0, TimeSpan.FromHours(1));

    public static AuditInput Input { get; } = new()
    {
        AuditedOn = new(2026, 3, 20),
        Compound = Sheet,
        Number = "TR-1",
        End = "A1",
        Rope = new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, Grade = 1770, Finish = WireFinish.Bright,
        CertifiedBreakingForceN = 252e3 },
        RopeCertificate = "C-1190",
        Socket = new()
        {
            Id = "SOCK-31", Certificate = "S-1",
                Basket = new() { SmallEndDiameterM = .023, LargeEndDiameterM = .045, LengthM = .100, ToleranceM = .0005 },
            OuterAtSmallEndM = .023 * 1.6, OuterAtMouthM = .045 * 1.6, Metal = SocketMetal.CastSteel, BreakingForceN = 320e3,
            ProofRatingN = 130e3,
        },
        Readings = Air((-.5, 20), (30, 20)),
        Mix = new() { Kits = [Lot], DosesPerKit = 0, Baskets = 3, VolumeM3 = 75.5e-6 },
        Times = new()
        {
            PreparedAt = After(-40), ReadAt = After(-10), MixedAt = MixedAt, PouredAt = After(12), GelAt = After(24), MovedAt = After(40),
                ReleasedAt = After(120),
            ProofAt = After(150), InServiceAt = After(2000),
        },
        GelSeenIn = GelPlace.Cone,
        Hardness = new("indenter", 45, HardnessPlace.Lip),
        Proof = new()
        {
            IsAsked = true, RatedN = 50e3, AskedN = 100e3, LoadN = 98e3, SeatingM = .0013, SeatingReadAt = SeatingPlace.Mouth,
                ReadUnderLoad = true, WireSlip = false, Creep = false, Cracks = false, Asymmetry = false,
        },
        People =
        [
            new(WorkRole.Preparer, "R. Vos", new(2026, 12, 31)), new(WorkRole.Mixer, "R. Vos", new(2026, 12, 31)),
                new(WorkRole.Pourer, "K. Lind", new(2026, 12, 31)),
            new(WorkRole.Inspector, "M. Arco", new(2026, 12, 31)), new(WorkRole.ProofTester, "M. Arco", new(2026, 12, 31)),
        ],
        Looks = new()
        {
            Bore = LookResult.Pass, Broom = LookResult.Pass, Core = LookResult.Pass, Alignment = LookResult.Pass, Seal = LookResult.Pass,
                Fill = LookResult.Pass,
            Surface = LookResult.Pass, AfterLoad = LookResult.Pass,
        },
    };

    private static StockLot Lot => new("A-118", "small", 1, new(2027, 1, 31), null) { State = LotState.Sealed, Quarantined = Fact.No };

    public static DateTimeOffset After(double minutes) => MixedAt.AddMinutes(minutes);

    public static Outcome<AuditResult> Audit(AuditInput input, bool trace = false, long steps = Budget.DefaultSteps) =>
        RecordAudit.Calculate(input, Editions.Known.Current, new Budget(steps, trace), TestContext.Current.CancellationToken);

    public static Func<AuditInput, AuditInput> Read(Func<RecordedReadings, RecordedReadings> change) => input =>
        input with { Readings = change(input.Readings) };

    public static Func<AuditInput, AuditInput> Mixed(Func<RecordedMix, RecordedMix> change) => input =>
        input with { Mix = change(input.Mix) };

    public static Func<AuditInput, AuditInput> Kit(Func<StockLot, StockLot> change) => Mixed(mix => mix with { Kits = [change(Lot)] });

    public static Func<AuditInput, AuditInput> At(Func<RecordedTimes, RecordedTimes> change) => input =>
        input with { Times = change(input.Times) };

    public static Func<AuditInput, AuditInput> Loaded(Func<RecordedProof, RecordedProof> change) => input =>
        input with { Proof = change(input.Proof) };

    public static Func<AuditInput, AuditInput> Looked(Func<RecordedLooks, RecordedLooks> change) => input =>
        input with { Looks = change(input.Looks) };

    public static Func<AuditInput, AuditInput> Socketed(Func<RecordedSocket, RecordedSocket> change) => input =>
        input with { Socket = change(input.Socket) };

    public static Func<AuditInput, AuditInput> Sheeted(Func<CompoundSheet, CompoundSheet> change) => input =>
        input with { Compound = change(input.Compound) };

    /// <summary>One person changed.</summary>
    public static Func<AuditInput, AuditInput> Person(int index, Func<RecordedPerson, RecordedPerson> change) =>
        input => input with { People = [.. input.People.Select((person, i) => i == index ? change(person) : person)] };

    /// <summary>Air that goes through temperatures (°C) at hours from mixing, steel and compound at 20 °C, air of 50 %.</summary>
    public static RecordedReadings Air(params (double Hours, double Celsius)[] points) => new()
    {
        AirSeries = [.. points.Select(point => new AirPoint(MixedAt.AddHours(point.Hours), point.Celsius + Zero))],
        SteelK = 20 + Zero,
        CompoundK = 20 + Zero,
        RelativeHumidity = .5,
        IgnitionSource = Fact.No,
    };
}
