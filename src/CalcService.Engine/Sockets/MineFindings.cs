using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Sockets;

/// <summary>Findings about the attachment of a mine's hoist rope, planned or in service.</summary>
public static class MineFindings
{
    /// <summary>Evidence of the medium.</summary>
    internal const string ByDesign = "that the socket is designed for resin instead of zinc";

    /// <summary>Evidence of the strength.</summary>
    internal const string Holds = "that the end holds the share of the rope's strength that the law asks for";

    public static FindingDefinition EvidenceMissing { get; } = Define("mine-evidence-missing", "2026-12", Actor.Inspector,
        [Severity.Unknown],
        "A mine's attachment needs evidence: of its strength, and that it is designed for a medium other than zinc.",
        "There is no evidence {what}.",
        "Get it in writing from the makers; until then the end is not poured and does not serve.",
        Source.NotGiven("/docs/termination-matches"), rules => [rules.Matching.MineAttachment]);

    public static FindingDefinition MediumNotByDesign { get; } = Define("mine-medium-not-by-design", "2026-12", Actor.Inspector,
        [Severity.Stop, Severity.Unknown],
        "In a mine a socket is poured with zinc unless another medium is a feature of its design: its maker's own, or one that a "
            + "registered professional engineer approved. "
            + "Elsewhere nobody knows whether a socket that isn't designed for resin holds with it.",
        "The socket is not designed for resin.",
        "Pour it as its design says, or take a socket that is designed for resin; an end in service is taken out. Elsewhere than in a "
            + "mine ask the socket's maker first.") with
        {
            SourceIn = rules => rules.Matching.MineAttachment.Source,
        };

    public static FindingDefinition AttachmentWeak { get; } = Define("mine-attachment-weak", "2026-12", Actor.Inspector, [Severity.Stop],
        "A mine's attachment has to hold a share of the rope's strength.",
        "The end holds {measured} of the rope; the law asks for {limit}.",
        "Take another attachment.",
        limits: rules => [rules.Matching.MineAttachment]);

    internal static IReadOnlyList<FindingDefinition> All => [EvidenceMissing, MediumNotByDesign, AttachmentWeak];
}
