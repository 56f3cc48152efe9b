using CalcService.Engine.Findings;

namespace CalcService.Engine.Reuse;

/// <summary>What becomes of the socket, by the findings on the socket itself.</summary>
public enum Disposition
{
    /// <summary>Use it again as it is.</summary>
    Reuse,

    /// <summary>Use it again once the work named is done.</summary>
    ReuseAfterWork,

    /// <summary>Set it aside: a fact is missing.</summary>
    Hold,

    /// <summary>Take it out of use.</summary>
    Withdraw,
}

/// <summary>A section of the basket against its drawing.</summary>
public sealed record StationWear(double FromSmallEndM, double NominalM, double SmallestM, double LargestM, double Growth, double Ovality);

/// <summary>Wear as far as it was measured.</summary>
public sealed record WearFacts
{
    public IReadOnlyList<StationWear> Stations { get; init; } = [];

    public double? BoreGrowth { get; init; }

    public double? Ovality { get; init; }

    public double? TaperLoss { get; init; }

    public double? PinHoleGrowth { get; init; }

    public double? PinHoleOvality { get; init; }

    public double? PinWear { get; init; }

    public double? EarSpread { get; init; }

    public double? EarThicknessLoss { get; init; }

    public double? EarWidthLoss { get; init; }

    public double? EarEndDistanceLoss { get; init; }

    /// <summary>Diameter lost by the outside of the basket, at the end that lost more.</summary>
    public double? OutsideLoss { get; init; }

    public double? PitDepthM { get; init; }
}

/// <summary>One part under load.</summary>
/// <param name="Id">The part and how it is stressed.</param>
/// <param name="StressPa">Stress at the rated load.</param>
/// <param name="AtRated">Stress at the rated load over strength, times the design factor.</param>
/// <param name="AtProof">Stress at the proof load over strength.</param>
public sealed record PartLoad(string Id, double StressPa, double AtRated, double AtProof)
{
    /// <summary>The worse of the two.</summary>
    public double Worst => Math.Max(AtRated, AtProof);
}

/// <summary>All parts of a socket under load.</summary>
public sealed record Utilisation(IReadOnlyList<PartLoad> Parts)
{
    /// <summary>The part that is used most.</summary>
    public PartLoad Governing => Parts.MaxBy(part => part.Worst)!;
}

/// <summary>Work that has to be done first.</summary>
public sealed record WorkToDo(FindingDefinition Finding, string Pointer);

/// <summary>An assessment. Whatever could not be computed is null and has its finding.</summary>
public sealed record ReuseResult
{
    public required Disposition Disposition { get; init; }

    public required IReadOnlyList<CheckRow> Checks { get; init; }

    public required WearFacts Wear { get; init; }

    public double? RatedLoadN { get; init; }

    public double? ProofLoadN { get; init; }

    public double? DesignFactor { get; init; }

    public Utilisation? AsMade { get; init; }

    public Utilisation? AsMeasured { get; init; }

    /// <summary>Breaking force of the socket with what is left of it.</summary>
    public double? RemainingStrengthN { get; init; }

    public required IReadOnlyList<WorkToDo> Work { get; init; }
}
