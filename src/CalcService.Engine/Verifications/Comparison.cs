namespace CalcService.Engine.Verifications;

/// <summary>What came of computing an archived answer again.</summary>
public enum VerificationOutcome
{
    /// <summary>It is the answer that was archived, in its numbers, decision and findings.</summary>
    Match,

    /// <summary>It is another.</summary>
    Differs,

    /// <summary>It can't be computed again here.</summary>
    CannotVerify,
}

/// <summary>An archived answer beside the one computed now. All pointers go into the request of the verification.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Pointer">The first member that differs, or that stands against computing it again; null where it matches.</param>
/// <param name="Reason">Why, in words; null where it matches.</param>
public sealed record Comparison(VerificationOutcome Outcome, string? Pointer = null, string? Reason = null)
{
    /// <summary>Words, notes and sources that are not those computed.</summary>
    public IReadOnlyList<string> OtherWords { get; init; } = [];

    /// <summary>Members that this contract doesn't know.</summary>
    public IReadOnlyList<string> UnknownMembers { get; init; } = [];

    /// <summary>What could not be held against anything besides.</summary>
    public IReadOnlyList<string> NotCompared { get; init; } = [];

    /// <summary>Id of the recomputed answer; null where there is none.</summary>
    public string? RecordId { get; init; }

    /// <summary>Digest of its result; null where there is none.</summary>
    public string? ResultDigest { get; init; }

    /// <summary>What this verification says nothing about.</summary>
    public IEnumerable<string> Unchecked => UnknownMembers.Concat(NotCompared);
}
