using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>A finding that the service can raise. Codes never change their meaning; texts may.</summary>
/// <param name="Code">Stable code, also the id at /v1/rules/{code}.</param>
/// <param name="Since">The edition that first had it: an older one never raises it.</param>
/// <param name="Actor">Who can do something about it.</param>
/// <param name="Severities">The severities it can come with.</param>
/// <param name="Meaning">What it means, in a sentence.</param>
/// <param name="Message">Template of the message: {measured}, {limit} and the finding's own words by name.</param>
/// <param name="Action">Template of what to do.</param>
/// <param name="SourceIn">Where the rule comes from in an edition.</param>
/// <param name="LimitsIn">The limits that it holds against in an edition.</param>
public sealed record FindingDefinition(
    string Code,
    string Since,
    Actor Actor,
    IReadOnlyList<Severity> Severities,
    string Meaning,
    string Message,
    string Action,
    Func<RuleBook, Source> SourceIn,
    Func<RuleBook, IReadOnlyList<Rule>> LimitsIn)
{
    /// <summary>Whether an edition has it.</summary>
    public bool IsIn(RuleBook book) => string.CompareOrdinal(Since, book.Edition) <= 0;
}
