using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Verifications;

/// <summary>Every finding that a verification can raise.</summary>
public static class VerificationFindings
{
    private const string Document = "/docs/record-verifications";

    public static FindingDefinition CannotVerify { get; } = Define("answer-not-verifiable", "2026-12", Actor.Integrator, [Severity.Unknown],
        "The archived answer can't be computed again here: its rules, its engine or its compound are others than this service has.",
        "{reason} ({pointer}).",
        "Verify it where the service of its day is still kept, or compute the request anew and file the new answer beside the old one.",
        new("an answer is computed again by the rules, the engine and the sheet that it names", Document, Basis.Derived));

    public static FindingDefinition Differs { get; } = Define("answer-differs", "2026-12", Actor.Integrator, [Severity.Stop],
        "Computed again, the request gives another answer than the archived one.",
        "{reason} ({pointer}).",
        "Do not rely on the archived answer. Find out whether request or answer were changed after they were archived.",
        new("the same request gives the same answer", Document, Basis.Derived));

    public static FindingDefinition OtherWords { get; } = Define("answer-words-differ", "2026-12", Actor.Integrator, [Severity.Caution],
        "The numbers of the archived answer match, but words, notes or sources beside them are not those of this release.",
        "Beside the numbers these places are not as computed again: {count}, the first at {pointer}.",
        "Do not go by the archived words: read these places in an answer computed anew, and find out who changed them.",
        new("the same numbers come with the same words", Document, Basis.Derived));

    public static FindingDefinition UnknownMembers { get; } = Define("answer-members-unknown", "2026-12", Actor.Integrator,
        [Severity.Caution],
        "The archived answer has members that the contract doesn't know. Nothing is computed that they could be held against.",
        "Members that are not of the contract: {count}, the first at {pointer}.",
        "Do not go by what they say. Find out who added them; what people write to an answer belongs beside it, not into it.",
        new("an answer has the members of its contract", Document, Basis.Derived));

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All { get; } = [Differs, UnknownMembers, CannotVerify, OtherWords];
}
