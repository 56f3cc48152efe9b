using CalcService.Engine.Findings;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of rope and socket.</content>
public static partial class PouringFindings
{
    public static FindingDefinition RopeAreaUnknown { get; } = Unknown("rope-area-unknown", "2026-12", Actor.Office,
        "The metallic area of the rope isn't known, so the steel in the basket isn't either.",
        "No metallic area: neither a certificate's nor a rope class with its core.",
        "Give metallicArea from the certificate, or construction and core of a class at /v1/rope-classes. Kits are planned on a basket "
            + "without steel.");

    public static FindingDefinition ServingShortensGrip { get; } = Caution("serving-shortens-grip", "2026-12", Actor.Crew,
        "A serving stands inside the basket. The compound grips no wire that it covers, and the small end works hardest.",
        "With the serving in it the compound grips over {measured} of a basket of {limit}.",
        "End the serving at the small end unless the socket's maker says otherwise.",
        Geometry);

    public static FindingDefinition ServingFitUnknown { get; } = Unknown("serving-fit-unknown", "2026-12", Actor.Crew,
        "A serving stands in the small end and nobody says how thick it is.",
        "The diameter over the serving is not given.",
        "Measure over the serving and send servingDiameter.");

    public static FindingDefinition ServingDoesNotFit { get; } = Stop("serving-does-not-fit", "2026-12", Actor.Crew,
        "The serving is not thinner than the small end in which it is meant to stand.",
        "The serving of {measured} does not enter a small end of {limit}.",
        "Use thinner serving wire, or end the serving at the small end.",
        Geometry);

    public static FindingDefinition VentSmallBasket { get; } = Note("vent-small-basket", "2026-12", Actor.Crew,
        "In a small basket air stays caught at the small end unless the seal has a vent.",
        "Rope of {measured}: up to {limit} the seal gets a vent.",
        "Make a vent in the seal, and close it when compound comes out.",
        limits: rules => [rules.Pouring.VentUpTo]);
}
