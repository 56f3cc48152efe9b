using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <content>Findings of rope and socket.</content>
public static partial class PouringFindings
{
    private static IReadOnlyList<FindingDefinition> Fit =>
    [
        WiresDoNotFit, RopeDoesNotEnter, RopeAreaUnknown, WireFitUnknown, FitDependsOnTolerance, RopeLoose,
        RopeIdentityMissing, RopeFactMissing, HighGrade, Stainless, SocketWeaker, SocketStrengthMissing, BasketShort,
        ConeAngleUnusual,
    ];

    public static FindingDefinition WiresDoNotFit => FitFindings.WiresDoNotFit;

    public static FindingDefinition RopeDoesNotEnter => FitFindings.RopeDoesNotEnter;

    public static FindingDefinition RopeAreaUnknown { get; } = Unknown("rope-area-unknown",
        "The metallic area of the rope isn't known, so the steel in the basket isn't either.",
        "No metallic area: neither a certificate's nor a rope class with its core.",
        "Give metallicArea from the certificate, or construction and core of a class at /v1/rope-classes. Kits are planned on a basket without steel.");

    public static FindingDefinition WireFitUnknown => FitFindings.WireFitUnknown;

    public static FindingDefinition FitDependsOnTolerance => FitFindings.FitDependsOnTolerance;

    public static FindingDefinition RopeLoose => FitFindings.RopeLoose;

    public static FindingDefinition RopeIdentityMissing => FitFindings.RopeIdentityMissing;

    public static FindingDefinition RopeFactMissing => FitFindings.RopeFactMissing;

    public static FindingDefinition HighGrade => FitFindings.HighGrade;

    public static FindingDefinition Stainless => FitFindings.Stainless;

    public static FindingDefinition SocketWeaker => FitFindings.SocketWeaker;

    public static FindingDefinition SocketStrengthMissing { get; } = Define("socket-strength-missing", [Severity.Caution],
        "The strength of socket or rope isn't known, so they are not compared.",
        "The {what} is not known: socket and rope are not compared.",
        "Give socket.breakingForce from the socket's maker, and the rope's certificate.",
        Prudence);

    public static FindingDefinition BasketShort => FitFindings.BasketShort;

    public static FindingDefinition ConeAngleUnusual => FitFindings.ConeAngleUnusual;
}
