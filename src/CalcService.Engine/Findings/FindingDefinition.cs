using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>A finding that the service can raise. Codes never change their meaning; texts may.</summary>
/// <param name="Code">Stable code, also the id at /v1/rules/{code}.</param>
/// <param name="Actor">Who can do something about it.</param>
/// <param name="Severities">The severities it can come with.</param>
/// <param name="Meaning">What it means, in a sentence.</param>
/// <param name="Message">Template of the message: {measured}, {limit} and the finding's own words by name.</param>
/// <param name="Action">Template of what to do.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Limits">The limits that it holds against.</param>
public sealed record FindingDefinition(
    string Code,
    Actor Actor,
    IReadOnlyList<Severity> Severities,
    string Meaning,
    string Message,
    string Action,
    Source Source,
    IReadOnlyList<Rule> Limits)
{
    /// <summary>The rules edition that first had it.</summary>
    public string Since { get; init; } = "2026-12";
}
