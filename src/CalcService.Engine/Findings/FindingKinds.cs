using System.Reflection;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Findings;

/// <summary>
/// Definitions by the severity that they come with, for the lists of the calculations. Number and source of a limit are those of the
/// edition in use; where no other source is named it is that of the first limit.
/// </summary>
internal static class FindingKinds
{
    public static FindingDefinition Stop(
        string code, string since, Actor actor, string meaning, string message, string action, Source? source = null,
        Func<RuleBook, IReadOnlyList<Rule>>? limits = null) =>
        Define(code, since, actor, [Severity.Stop], meaning, message, action, source, limits);

    public static FindingDefinition Unknown(
        string code, string since, Actor actor, string meaning, string message, string action, Source? source = null,
        Func<RuleBook, IReadOnlyList<Rule>>? limits = null) =>
        Define(code, since, actor, [Severity.Unknown], meaning, message, action, source, limits);

    public static FindingDefinition Caution(
        string code, string since, Actor actor, string meaning, string message, string action, Source? source = null,
        Func<RuleBook, IReadOnlyList<Rule>>? limits = null) =>
        Define(code, since, actor, [Severity.Caution], meaning, message, action, source, limits);

    public static FindingDefinition Note(
        string code, string since, Actor actor, string meaning, string message, string action, Source? source = null,
        Func<RuleBook, IReadOnlyList<Rule>>? limits = null) =>
        Define(code, since, actor, [Severity.Note], meaning, message, action, source, limits);

    /// <summary>One that comes with several, the usual one first.</summary>
    public static FindingDefinition Define(
        string code, string since, Actor actor, Severity[] severities, string meaning, string message, string action, Source? source = null,
        Func<RuleBook, IReadOnlyList<Rule>>? limits = null) =>
        new(code, since, actor, severities, meaning, message, action, rules => source ?? limits!(rules)[0].Source, limits ?? (_ => []));

    /// <summary>
    /// Every finding that a calculation can raise, by code: those that its class defines, and those that it shares with others.
    /// </summary>
    public static IReadOnlyList<FindingDefinition> CatalogueOf(Type findings, IEnumerable<FindingDefinition> shared) =>
    [
        .. findings.GetProperties(BindingFlags.Public | BindingFlags.Static)
        .Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => (FindingDefinition)property.GetValue(null)!)
            .Concat(shared).Distinct().OrderBy(definition => definition.Code, StringComparer.Ordinal),
    ];
}
