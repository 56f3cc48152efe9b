using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>The sound socket with a rope, a basket or a metal that a match or a plan refuses: refused here too.</summary>
public static class ReuseEndCases
{
    private const string Drawn = "/socket/nominal/basket", Rope = "/intended/rope";

    public static IReadOnlyList<ReuseCase> All { get; } =
    [
        new("rope-does-not-enter", Severity.Stop, Drawn + "/smallEndDiameter", "rope-entry",
            Roped(rope => rope with { DiameterM = .023, Grade = null }), "rope-fact-missing"),
        new("rope-loose", Severity.Stop, Drawn + "/smallEndDiameter", "rope-fit",
            input => Light(Roped(rope => rope with { DiameterM = .007, CertifiedBreakingForceN = 31e3 })(input))),
        new("rope-loose", Severity.Note, Drawn + "/smallEndDiameter", "rope-fit",
            input => Light(Roped(rope => rope with { DiameterM = .011, CertifiedBreakingForceN = 76e3 })(input))),
        new("fit-depends-on-tolerance", Severity.Caution, Drawn + "/tolerance", "rope-fit",
            input => Roped(rope => rope with { DiameterM = .0226 })(Basket(basket => basket with { ToleranceM = .0005 })(input))),
        new("wires-do-not-fit", Severity.Stop, Drawn, "rope-fit",
            Roped(rope => rope with { MetallicAreaM2 = 380e-6 })),
        new("breaking-force-implausible", Severity.Unknown, Rope + "/certificate/breakingForce", "rope-fit",
            input => Roped(rope =>
            rope with { CertifiedBreakingForceN = 756e3 })(Socket(socket => socket with { BreakingForceN = 900e3 })(input))),
        new("rope-thin", Severity.Unknown, Rope + "/measuredDiameter", "rope-fit", Roped(rope => rope with { MeasuredDiameterM = .018 })),
        new("rope-thick", Severity.Unknown, Rope + "/measuredDiameter", "rope-fit", Roped(rope => rope with { MeasuredDiameterM = .0217 })),
        new("wire-fit-unknown", Severity.Unknown, Rope + "/wireCount", "rope-fit", Roped(rope => rope with { Construction = "1x37" })),
        new("rope-identity-missing", Severity.Unknown, Rope + "/core", "rope-fit", Roped(rope => rope with { Core = RopeCore.Unknown })),
        new("rope-fact-missing", Severity.Caution, Rope + "/finish", "rope-fit", Roped(rope => rope with { Finish = WireFinish.Unknown })),
        new("basket-too-short", Severity.Stop, Drawn + "/length", "basket-shape", Sized(.0316, .039)),
        new("basket-too-short", Severity.Unknown, Drawn + "/length", "basket-shape", Sized(.0362, .060)),
        new("basket-no-cone", Severity.Stop, Drawn, "basket-shape", Sized(.026, .100)),
        new("socket-breaking-force-missing", Severity.Unknown, "/socket/breakingForce", "rope-strength",
            Socket(socket => socket with { BreakingForceN = null })),
        new("remaining-strength-unsure", Severity.Unknown, "/socket/measured/uncertainty", "rope-strength",
            input => Socket(socket => socket with { BreakingForceN = 258e3 })(Found(found => found with { UncertaintyM = .0001 })(input))),
        new("socket-metal-unfit", Severity.Stop, "/socket/material/kind", "socket-metal",
            Socket(socket => socket with { Metal = SocketMetal.GreyIron })),
        new("socket-metal-unfit", Severity.Unknown, "/socket/material/kind", "socket-metal",
            Socket(socket => socket with { Metal = SocketMetal.DuctileIron })),
    ];

    /// <summary>A thin rope is meant for a small load.</summary>
    private static ReuseInput Light(ReuseInput input) => For(use => use with { RatedLoadN = 6e3, ProofLoadN = 12e3 })(input);

    /// <summary>A basket of other sizes, found as drawn.</summary>
    private static Func<ReuseInput, ReuseInput> Sized(double mouthM, double lengthM) => input =>
    {
        var sized = Basket(basket => basket with { LargeEndDiameterM = mouthM, LengthM = lengthM })(input);
        var drawn = sized.Socket.Nominal.Basket;
        return Found(found => found with
        {
            Stations =
                [.. new[] { 0, .5,
                1 }.Select(share => new BoreStation(share * lengthM, [drawn.DiameterAtM(share), drawn.DiameterAtM(share)]))],
        })(sized);
    };
}
