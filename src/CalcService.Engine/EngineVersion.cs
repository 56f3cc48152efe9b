using System.Collections.Frozen;
using System.Globalization;

namespace CalcService.Engine;

/// <summary>
/// The versions of the computation, one for each calculation, so that a better cure leaves every archived pour plan verifiable. A version
/// changes only when a number in an answer of its calculation can; docs/changed-numbers.md says which.
/// </summary>
public static class EngineVersion
{
    /// <summary>Every calculation with its version.</summary>
    public static FrozenDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["cure-schedules"] = "2",
        ["pour-plans"] = "2",
        ["proof-load-evaluations"] = "2",
        ["record-audits"] = "2",
        ["record-verifications"] = "2",
        ["reuse-assessments"] = "2",
        ["service-inspections"] = "2",
        ["termination-matches"] = "2",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The newest version of all.</summary>
    public static string Newest { get; } = All.Values.MaxBy(version => int.Parse(version, CultureInfo.InvariantCulture))!;

    /// <summary>The version of a calculation.</summary>
    /// <param name="operation">Its name, as in its path.</param>
    public static string Of(string operation) => All[operation];
}
