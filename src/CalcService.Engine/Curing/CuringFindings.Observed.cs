using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Curing;

/// <content>Findings of gels that somebody saw.</content>
public static partial class CuringFindings
{
    private static IReadOnlyList<FindingDefinition> Observed => [GelOutOfFamily, GelSeenInCup, GelPlaceUnknown];

    public static FindingDefinition GelOutOfFamily { get; } = Define(Severity.Caution, "gel-out-of-family",
        "A gel came so much sooner or later than the sheet's that the lot, its dose or its mixing has to be doubted.",
        "{end} was seen gelled {measured} after mixing; {limit} was to be expected.",
        "Set the lot aside, check dose and mixing, and go by hardness before any load.",
        Rules.LotSpread.Source, Rules.LotSpread, Rules.ObservationSpread, Rules.OutOfFamily);

    public static FindingDefinition GelSeenInCup { get; } = Define(Severity.Caution, "gel-seen-in-cup",
        "A gel seen in a cup says little about the cone: the cup warms itself, the cone is cooled by its steel. It changes no time.",
        "The gel was seen in a cup; the cone's times stay as the sheet gives them.",
        "Look at the cone itself before anybody moves the rope.",
        Source.CommonPractice);

    public static FindingDefinition GelPlaceUnknown { get; } = Define(Severity.Caution, "gel-place-unknown",
        "Nobody says where the gel was seen. It could be a cup's, which gels sooner than a cone, so it can make times later only.",
        "It is not said whether the gel was seen in the cone, at its mouth or in a cup.",
        "Give seenIn.",
        Source.CommonPractice);
}
