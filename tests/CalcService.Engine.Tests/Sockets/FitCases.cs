using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Sockets;

/// <summary>An end as rooms describe it, to be changed by a case.</summary>
public sealed record FitEnd(Rope Rope, Basket Basket, double? SocketN = null, SocketMetal? Metal = null, RopeRange? Range = null);

/// <summary>A rope in a socket with one thing wrong, for every room that judges ends.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to, below the end.</param>
/// <param name="Change">What is wrong.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record FitCase(string Code, Severity Severity, string Pointer, Func<FitEnd, FitEnd> Change,
    params IReadOnlyList<string> Besides) : IFindingCase
{
    /// <summary>Codes that follow where tradition's proportions are looked at too.</summary>
    public IReadOnlyList<string> BesidesInAPlan { get; init; } = [];

    public PourPlanInput In(PourPlanInput pour) => pour with { Ends = [Applied(pour.Ends[0])] };

    private PourEnd Applied(PourEnd end)
    {
        var changed = Change(new(end.Rope, end.Basket, end.SocketBreakingForceN, end.Metal));
        return end with { Rope = changed.Rope, Basket = changed.Basket, SocketBreakingForceN = changed.SocketN, Metal = changed.Metal,
            RopeRange = changed.Range };
    }
}

/// <summary>Cases for an end of 6x36 rope, 20 mm, in a basket of 23, 45 and 100 mm: what can't be is caught in each room alike.</summary>
public static class FitCases
{
    private const string Basket = "/socket/basket";

    /// <summary>What rope and basket alone show.</summary>
    public static IReadOnlyList<FitCase> OfRopeAndBasket { get; } =
    [
        new("rope-does-not-enter", Severity.Stop, Basket + "/smallEndDiameter", OnBasket(b => b with { SmallEndDiameterM = .020 })),
        new("wires-do-not-fit", Severity.Stop, Basket, OnRope(r => r with { MetallicAreaM2 = 380e-6 })),
        new("fit-depends-on-tolerance", Severity.Caution, Basket + "/tolerance", OnBasket(b => b with { ToleranceM = .003 })),
        new("rope-loose", Severity.Note, Basket + "/smallEndDiameter",
        OnBasket(b => b with { SmallEndDiameterM = .041, LargeEndDiameterM = .055 })),
        new("rope-loose", Severity.Stop, Basket + "/smallEndDiameter",
        OnBasket(b => b with { SmallEndDiameterM = .060, LargeEndDiameterM = .075 })),
        new("basket-no-cone", Severity.Stop, Basket, OnBasket(b => b with { LargeEndDiameterM = .026 })),
        new("basket-too-short", Severity.Stop, Basket + "/length", OnBasket(b => b with { LengthM = .0399, LargeEndDiameterM = .034 })),
        new("basket-too-short", Severity.Unknown, Basket + "/length", OnBasket(b => b with { LengthM = .0799, LargeEndDiameterM = .040 })),
        new("breaking-force-implausible", Severity.Unknown, "/rope/certificate/breakingForce",
        OnRope(r => r with { CertifiedBreakingForceN = 150e3 })),
        new("rope-thin", Severity.Unknown, "/rope/measuredDiameter", OnRope(r => r with { MeasuredDiameterM = .0189 })),
        new("rope-thick", Severity.Unknown, "/rope/measuredDiameter", OnRope(r => r with { MeasuredDiameterM = .0217 })),
    ];

    /// <summary>What the socket's own facts show.</summary>
    public static IReadOnlyList<FitCase> OfTheSocket { get; } =
    [
        new("socket-weaker-than-rope", Severity.Stop, "/socket/breakingForce", end => end with { SocketN = 200e3 }),
        new("socket-metal-unfit", Severity.Stop, "/socket/material/kind", end => end with { Metal = SocketMetal.GreyIron }),
        new("socket-metal-unfit", Severity.Unknown, "/socket/material/kind", end => end with { Metal = SocketMetal.DuctileIron }),
        new("socket-metal-unfit", Severity.Unknown, "/socket/material/kind", end => end with { Metal = SocketMetal.Other }),
        new("rope-outside-socket-range", Severity.Caution, "/socket/ropeRange", end => end with { Range = new(.022, .026) }),
        new("rope-outside-socket-range", Severity.Caution, "/socket/ropeRange", end => end with { Range = new(.014, .018) }),
    ];

    public static IReadOnlyList<FitCase> All { get; } = [.. OfRopeAndBasket, .. OfTheSocket];

    private static Func<FitEnd, FitEnd> OnBasket(Func<Basket, Basket> change) => end => end with { Basket = change(end.Basket) };

    private static Func<FitEnd, FitEnd> OnRope(Func<Rope, Rope> change) => end => end with { Rope = change(end.Rope) };
}
