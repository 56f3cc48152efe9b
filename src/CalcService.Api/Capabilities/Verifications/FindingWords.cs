using System.Text.Json;
using CalcService.Api.Answers;
using CalcService.Engine.Findings;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What findings say, to tell words that were filled in otherwise from words that were never the finding's.</summary>
/// <param name="catalogue">Every finding of this release.</param>
public sealed class FindingWords(IReadOnlyList<FindingDefinition> catalogue)
{
    private readonly Dictionary<string, FindingDefinition> _byCode =
        catalogue.ToDictionary(definition => definition.Code, StringComparer.Ordinal);

    /// <summary>The member of an archived stop or missing fact whose words come of no template of its code; null if none does.</summary>
    public string? Foreign(JsonElement archived, JsonElement computed)
    {
        if (computed.GetProperty("severity").GetString() is not ("stop" or "unknown"))
        {
            return null;
        }

        var definition = _byCode[computed.GetProperty("code").GetString()!];
        return IsForeign(archived, "message", definition.Message) ? "message"
            : IsForeign(archived, "action", definition.Action) ? "action"
            : null;
    }

    private static bool IsForeign(JsonElement archived, string name, string template) =>
        archived.TryGetProperty(name, out var words)
        && !(words.ValueKind == JsonValueKind.String && Template.Of(template).Matches(words.GetString()!));
}
