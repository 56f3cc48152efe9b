using CalcService.Engine.Compounds;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Inspection;

/// <summary>Where in the rope wires are broken.</summary>
public enum WirePlace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Where the rope leaves the socket: at the end connection.</summary>
    Mouth,

    /// <summary>On the crowns of the strands, in the rope beyond the end.</summary>
    Lay,

    /// <summary>In a valley between two strands.</summary>
    Valley,

    /// <summary>In the core.</summary>
    Core,
}

/// <summary>How far something has gone.</summary>
public enum Degree
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>None.</summary>
    None,

    /// <summary>On the surface only: size and strength are as they were.</summary>
    Light,

    /// <summary>It has eaten into the section.</summary>
    Heavy,
}

/// <summary>What the lubricant at the end looks like.</summary>
public enum LubricantState
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>It covers the wires.</summary>
    Good,

    /// <summary>The wires are dry, or what is there no longer protects them.</summary>
    Dry,
}

/// <summary>Wires found broken at one place, all within one rope lay.</summary>
/// <param name="Count">How many, at least one.</param>
/// <param name="Place">Where in the rope.</param>
/// <param name="FromMouthM">Distance from where the rope leaves the socket.</param>
/// <param name="InOneStrand">How many of them are in one strand.</param>
public sealed record BrokenWires(int Count, WirePlace Place, double? FromMouthM, int? InOneStrand);

/// <summary>Evidence that a mine asks for. Null where nobody said.</summary>
/// <param name="Efficiency">Strength of the end over that of the rope, as tested.</param>
/// <param name="ResinByDesign">Whether the socket is designed for resin.</param>
public sealed record AttachmentEvidence(double? Efficiency, bool? ResinByDesign);

/// <summary>An end in service and what was found on it. Null where nobody said.</summary>
public sealed record InspectionInput
{
    public required DateOnly AssessedOn { get; init; }

    /// <summary>The rule set that holds; null where nobody said.</summary>
    public string? RuleSet { get; init; }

    public required Rope Rope { get; init; }

    /// <summary>The compound in the socket, where it is known.</summary>
    public CompoundSheet? Compound { get; init; }

    /// <summary>An empty list where none are broken.</summary>
    public IReadOnlyList<BrokenWires>? BrokenWires { get; init; }

    public bool? Cracks { get; init; }

    public Degree Corrosion { get; init; }

    public Degree Wear { get; init; }

    public bool? BendAtMouth { get; init; }

    public bool? ImproperlyApplied { get; init; }

    /// <summary>Whether the cone or a wire has moved since the end was proof loaded.</summary>
    public bool? ConeMovement { get; init; }

    public bool? RustBleed { get; init; }

    public LubricantState Lubricant { get; init; }

    public double? HighestTemperatureK { get; init; }

    public IReadOnlyList<string>? Chemicals { get; init; }

    public DateOnly? SocketedOn { get; init; }

    /// <summary>Whether it is the end at the drum.</summary>
    public bool? IsAtDrum { get; init; }

    /// <summary>Diameter when the rope was new and had taken load.</summary>
    public double? BaselineDiameterM { get; init; }

    /// <summary>Loss of strength by a nondestructive test.</summary>
    public double? StrengthLoss { get; init; }

    /// <summary>Rope that can be cut off before it is too short for its work.</summary>
    public double? LengthLeftM { get; init; }

    /// <summary>Full turns on the drum at the longest working length.</summary>
    public double? DrumTurnsLeft { get; init; }

    /// <summary>Diameter of the drum, to the middle of the rope on it.</summary>
    public double? DrumDiameterM { get; init; }

    public AttachmentEvidence Attachment { get; init; } = new(null, null);
}
