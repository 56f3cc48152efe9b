using CalcService.Engine.Cones;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Proof;

/// <summary>What the evaluation comes to, one to one with the decision: of the test before it, of the end after it.</summary>
public enum ProofVerdict
{
    /// <summary>It may be loaded; it has passed.</summary>
    Pass,

    /// <summary>The same, with the care that the findings name.</summary>
    PassWithCare,

    /// <summary>It rests until what is missing is known.</summary>
    Hold,

    /// <summary>It may not be loaded; it has failed.</summary>
    Reject,
}

/// <summary>One step of the test.</summary>
/// <param name="Share">Share of the proof load; null where that is not known.</param>
/// <param name="LoadN">Load to bring up, or that was read.</param>
/// <param name="Expected">Seating expected under it; null where it can't be computed.</param>
/// <param name="SeatingM">Seating that was read; null before the test.</param>
public sealed record ProofStep(double? Share, double LoadN, SeatingBand? Expected, double? SeatingM);

/// <summary>A proof load evaluation.</summary>
public sealed record ProofResult
{
    public required ProofVerdict Verdict { get; init; }

    /// <summary>Whether the test has been made.</summary>
    public required bool IsAfter { get; init; }

    public double? ProofLoadN { get; init; }

    /// <summary>Least test load that counts.</summary>
    public double? LeastTestLoadN { get; init; }

    /// <summary>Highest test load that is meant.</summary>
    public double? MostTestLoadN { get; init; }

    public required IReadOnlyList<ProofStep> Steps { get; init; }

    /// <summary>Seating expected at the proof load, or at the last load read.</summary>
    public SeatingBand? Expected { get; init; }

    /// <summary>Where the expected seating is read.</summary>
    public required SeatingPlace ReadAt { get; init; }

    public required IReadOnlyList<CheckRow> Checks { get; init; }
}
