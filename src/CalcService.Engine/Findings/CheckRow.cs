using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>What came of a check.</summary>
public enum CheckOutcome
{
    /// <summary>In order.</summary>
    Pass,

    /// <summary>Not in order.</summary>
    Fail,

    /// <summary>There is nothing to check here, or no limit is set for it.</summary>
    NotApplicable,

    /// <summary>
    /// A fact is missing, or what was found asks for care and decides nothing by itself; the finding of its rule says which.
    /// </summary>
    Undetermined,
}

/// <summary>One check with its evidence.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Outcome">What came of it.</param>
/// <param name="Judged">What was found and what is allowed, where they are numbers.</param>
/// <param name="Source">Where the limit or rule comes from.</param>
/// <param name="Missing">Members of the request that would decide it.</param>
/// <param name="Rule">Code of the finding that it raises when it fails.</param>
public sealed record CheckRow(
    string Id, CheckOutcome Outcome, Judged Judged, Source Source, IReadOnlyList<string> Missing, string Rule)
{
    /// <summary>What was found.</summary>
    public Measure? Measured => Judged.Measured;

    /// <summary>What is allowed.</summary>
    public Measure? Limit => (Measure?)Judged.Limit;
}
