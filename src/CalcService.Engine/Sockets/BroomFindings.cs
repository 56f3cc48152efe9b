using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Sockets;

/// <summary>Findings about the broom, as it is or as it is meant to be, that mean the same in every calculation.</summary>
public static class BroomFindings
{
    /// <summary>Where plastic is the matter, no standard was found.</summary>
    public static Source PlasticOnWires { get; } = new("plastic keeps the compound off the wires", "/docs/pour-plans", Basis.Derived);

    public static FindingDefinition LeftInBroom { get; } = Define("left-in-broom", "2026-12", Actor.Crew, [Severity.Stop],
        "A fibre core or plastic is in the broom, or is meant to stay: the compound grips neither, and takes the place of neither.",
        "The {what} is left in the broom.",
        "Cut it out down to the seizing, and clean the broom again.",
        new("ISO 17558", "§4.5", Basis.Published));

    public static FindingDefinition PartContradicted { get; } = Define("broom-part-contradicted", "2026-12", Actor.Crew, [Severity.Unknown],
        "The rope is said to have a part that must not stay in the broom, and the end is said to have none. One of the two is wrong, and "
            + "the part may still be there.",
        "The rope is said to have {what}; the end is said to have none.",
        "Look at the broom and at the rope's certificate, and correct the one that is wrong.",
        new("two statements that can't both hold", "/docs/pour-plans", Basis.Derived));

    public static FindingDefinition CleanerForbidden { get; } = Define("cleaner-forbidden", "2026-12", Actor.Crew, [Severity.Stop],
        "Acid or flux on the wires: neither belongs under resin. What stays on the wire keeps the compound off it and goes on eating the "
            + "wire.",
        "The broom is cleaned with {cleaner}.",
        "Clean with fresh solvent for each end. A broom that had acid or flux on it is cut off and made new.",
        new("what acid or flux leaves on a wire keeps the compound off it and eats the wire", "/docs/pour-plans", Basis.Derived));

    public static FindingDefinition BoreNotClean { get; } = Define("bore-not-clean", "2026-12", Actor.Crew, [Severity.Stop],
        "There is old resin or metal in the bore, so the new cone can't seat on the taper.",
        "There is old {what} in the bore.",
        "Take it out without heat that hurts the socket, and look at the bare bore before anything goes on.",
        new("a cone seats on a clean taper", "/docs/pour-plans", Basis.Derived));
}
