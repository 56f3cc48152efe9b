using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Reading;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Rules;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>An archived answer, as far as it says how it was computed.</summary>
internal sealed class ArchivedAnswer(JsonElement answer)
{
    /// <summary>The edition by which it was computed; else why it can't be computed again.</summary>
    public (RuleBook? Rules, Comparison? Against) Edition()
    {
        if (Text("engine") is not { } engine)
        {
            return (null, Comparison.CannotVerify("/provenance/engine", "The answer doesn't say which engine computed it"));
        }

        if (engine != EngineVersion.Current)
        {
            return (null, Comparison.CannotVerify("/provenance/engine", $"It was computed by engine {ReadErrors.Show(engine)}; this is engine {EngineVersion.Current}"));
        }

        if (Text("rules") is not { } edition || RuleBook.Find(edition) is not { } rules)
        {
            return (null, Comparison.CannotVerify("/provenance/rules", $"Its edition of the rules is not known here; known: {string.Join(", ", RuleBook.All.Select(book => book.Edition))}"));
        }

        return (rules, null);
    }

    /// <summary>Compares with what was computed now.</summary>
    public Comparison Compare(IRecomputable calculation, object recomputed)
    {
        using var sent = ShapeWriter.WriteAnswer(recomputed);
        var now = JsonElement.Parse(sent.Written.Span);
        var (id, digest) = (now.GetProperty("provenance").GetProperty("recordId").GetString(), now.GetProperty("provenance").GetProperty("resultDigest").GetString());
        if (SheetHasChanged(now))
        {
            return Comparison.CannotVerify("/provenance/compound/digest", "The compound's profile has another sheet here than when it was computed") with { RecordId = id, ResultDigest = digest };
        }

        var difference = AnswerComparison.First(calculation.Compared, answer, now) ?? Provenance(now) ?? ResultDigest(calculation.Compared, now, digest);
        return difference is (var pointer, var reason)
            ? new(VerificationOutcome.Differs, pointer, reason, id, digest)
            : new(VerificationOutcome.Match, null, null, id, digest);
    }

    private (string Pointer, string Reason)? Provenance(JsonElement now)
    {
        foreach (var name in new[] { "operation", "recordId", "inputDigest" })
        {
            var computed = TextOf(Member(now, "provenance"), name);
            if (Text(name) != computed)
            {
                return Differs("/provenance/" + name, computed);
            }
        }

        var (sheet, archived) = (Compound(now), Compound(answer));
        return sheet?.Profile != archived?.Profile ? Differs("/provenance/compound/profile", sheet?.Profile)
            : sheet?.Digest != archived?.Digest ? Differs("/provenance/compound/digest", sheet?.Digest)
            : null;
    }

    /// <summary>Another machine may round the last digit the other way, and then has another digest. Where every digit is the same, so is the digest.</summary>
    private (string Pointer, string Reason)? ResultDigest(ObjectShape compared, JsonElement now, string? computed) =>
        Text("resultDigest") != computed && AnswerComparison.First(compared, answer, now, isExact: true) is null ? Differs("/provenance/resultDigest", computed) : null;

    private static (string Pointer, string Reason)? Differs(string pointer, string? computed) => (pointer, $"Computed again it is {computed ?? "null"}");

    /// <summary>A profile is a name; what it stood for can only be told by the digest. The sheet is part of the input, so with it the input's digest has changed.</summary>
    private bool SheetHasChanged(JsonElement now) =>
        Compound(now) is { Profile: { } profile, Digest: { } digest } && Compound(answer) is { Digest: { } before } then && then.Profile == profile && before != digest
        && Text("inputDigest") != TextOf(Member(now, "provenance"), "inputDigest");

    private static (string? Profile, string? Digest)? Compound(JsonElement of) =>
        Member(Member(of, "provenance"), "compound") is { ValueKind: JsonValueKind.Object } compound ? (TextOf(compound, "profile"), TextOf(compound, "digest")) : null;

    private string? Text(string name) => TextOf(Member(answer, "provenance"), name);

    private static string? TextOf(JsonElement? owner, string name) => Member(owner, name) is { ValueKind: JsonValueKind.String } text ? text.GetString() : null;

    private static JsonElement? Member(JsonElement? owner, string name) =>
        owner is { ValueKind: JsonValueKind.Object } known && known.TryGetProperty(name, out var member) ? member : null;
}
