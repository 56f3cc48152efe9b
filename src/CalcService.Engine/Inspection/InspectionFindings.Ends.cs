using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Inspection;

/// <content>Findings of what the eye sees on the end.</content>
public static partial class InspectionFindings
{
    private const string TakeOut = "Take the end out of service. Cut it off and socket again where enough rope is left.";

    private const string Decide = "Take the end out of service and have a competent person decide at once whether it is a hazard. "
        + "Unless it is found to be none, cut it off and socket again where enough rope is left.";

    public static FindingDefinition EndCracked { get; } = Stop("end-cracked", "2026-12", Actor.Inspector,
        "A crack in the socket or its pin.",
        "The end is cracked ({document}).",
        "Take the end out of service; the socket is not used again.",
        OfTheLimit, rules => LimitsOf(rules, EndCondition.Cracked));

    public static FindingDefinition EndCorroded { get; } = Stop("end-corroded", "2026-12", Actor.Inspector,
        "Corrosion of the socket, or of the rope where it leaves it, that has eaten into the section.",
        "The end is badly corroded ({document}).",
        Decide,
        OfTheLimit, rules => LimitsOf(rules, EndCondition.Corroded));

    public static FindingDefinition SurfaceCorroded { get; } = Caution("end-corroded-on-the-surface", "2026-12", Actor.Inspector,
        "Corrosion of the socket, or of the rope where it leaves it, on the surface only: size and strength are as they were.",
        "The end is corroded on its surface.",
        "Clean and protect it, and look at it more often.",
        Source.CommonPractice);

    public static FindingDefinition EndWorn { get; } = Stop("end-worn", "2026-12", Actor.Inspector,
        "Wear of the socket, its pin or its ears that has changed a size.",
        "The end is badly worn ({document}).",
        Decide,
        OfTheLimit, rules => LimitsOf(rules, EndCondition.Worn));

    public static FindingDefinition LightlyWorn { get; } = Caution("end-worn-lightly", "2026-12", Actor.Inspector,
        "Wear of the socket, its pin or its ears that has changed no size.",
        "The end is lightly worn.",
        "Look at it more often.",
        Source.CommonPractice);

    public static FindingDefinition EndBent { get; } = Stop("end-bent", "2026-12", Actor.Inspector,
        "The end connection is bent, or the rope is bent where it leaves the socket: its wires tire there.",
        "The end is bent ({document}).",
        Decide + " Find out what bends it.",
        OfTheLimit, rules => LimitsOf(rules, EndCondition.Bent));

    public static FindingDefinition EndImproper { get; } = Stop("end-improperly-applied", "2026-12", Actor.Inspector,
        "The end was not put together as it has to be.",
        "The end is improperly applied ({document}).",
        Decide,
        OfTheLimit, rules => LimitsOf(rules, EndCondition.ImproperlyApplied));

    public static FindingDefinition ConeMoved { get; } = Stop("cone-moved", "2026-12", Actor.Inspector,
        "The cone, or a wire in it, has moved since the end was proof loaded.",
        "The cone or a wire has moved ({document}).",
        TakeOut,
        OfTheLimit, rules => LimitsOf(rules, EndCondition.Slipped));

    public static FindingDefinition RustBleeds { get; } = Caution("rust-bleeds", "2026-12", Actor.Inspector,
        "Rust that bleeds from the mouth tells of water inside the socket.",
        "Rust bleeds from the end.",
        "Find where water gets in, seal it, and look at the wires at the mouth more often; where it goes on, cut off and socket again.",
        Source.CommonPractice);

    public static FindingDefinition LubricantPoor { get; } = Caution("lubricant-poor", "2026-12", Actor.Inspector,
        "A rope that is dry where it leaves the socket corrodes and tires there first.",
        "The lubricant at the end is {state}.",
        "Clean and lubricate the rope at the socket with what the rope's maker names.",
        Source.CommonPractice);
}
