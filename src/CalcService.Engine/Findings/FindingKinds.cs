using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>Definitions by the severity that they come with, for the lists of the rooms.</summary>
internal static class FindingKinds
{
    public static FindingDefinition Stop(string code, Actor actor, string meaning, string message, string action, Source source, params Rule[] limits) =>
        Define(code, actor, [Severity.Stop], meaning, message, action, source, limits);

    public static FindingDefinition Unknown(string code, Actor actor, string meaning, string message, string action, Source source, params Rule[] limits) =>
        Define(code, actor, [Severity.Unknown], meaning, message, action, source, limits);

    public static FindingDefinition Caution(string code, Actor actor, string meaning, string message, string action, Source source, params Rule[] limits) =>
        Define(code, actor, [Severity.Caution], meaning, message, action, source, limits);

    public static FindingDefinition Note(string code, Actor actor, string meaning, string message, string action, Source source, params Rule[] limits) =>
        Define(code, actor, [Severity.Note], meaning, message, action, source, limits);

    /// <summary>One that comes with several, the usual one first.</summary>
    public static FindingDefinition Define(string code, Actor actor, Severity[] severities, string meaning, string message, string action, Source source, params Rule[] limits) =>
        new(code, actor, severities, meaning, message, action, source, limits);
}
