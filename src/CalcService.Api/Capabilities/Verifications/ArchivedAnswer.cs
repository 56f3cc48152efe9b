using System.Text.Json;
using CalcService.Api.Answers;
using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Reading;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Rules;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>An archived answer, as far as it says how it was computed.</summary>
public sealed class ArchivedAnswer(JsonElement answer)
{
    /// <summary>Where it stands in the request of the verification.</summary>
    private const string Root = "/answer";

    /// <summary>Whether it has what only an answer in full detail has.</summary>
    public bool IsFull => (Member(answer, "trace") is { ValueKind: JsonValueKind.Array } trace && trace.GetArrayLength() > 0)
        || Member(answer, "input") is { ValueKind: not JsonValueKind.Null };

    /// <summary>The version of the contract that it has; today's where it doesn't say.</summary>
    public Version Contract => Version.TryParse(Text("contract"), out var version) ? version : ContractVersion.Current;

    /// <summary>By what it was computed; else why it can't be computed again.</summary>
    public (AsOf? AsOf, Comparison? Against) ComputedBy(string operation, Editions editions)
    {
        if (Contract > ContractVersion.Current)
        {
            var reason = $"It has contract {Contract}; this service knows none after {ContractVersion.Text}";
            return (null, CannotVerify("/provenance/contract", reason));
        }

        if (Text("engine") is not { } engine)
        {
            return (null, CannotVerify("/provenance/engine", "The answer doesn't say which engine computed it"));
        }

        if (engine != EngineVersion.Of(operation))
        {
            var reason = $"It was computed by engine {ReadErrors.Show(engine)}; this is engine {EngineVersion.Of(operation)}";
            return (null, CannotVerify("/provenance/engine", reason));
        }

        if (Text("rules") is not { } edition || editions.Find(edition) is not { } rules)
        {
            return (null, CannotVerify("/provenance/rules", $"Its edition of the rules is not known here; known: {editions}"));
        }

        return (new(rules, Contract), null);
    }

    /// <summary>Compares with what was computed now.</summary>
    public Comparison Compare(ICapability calculation, object recomputed)
    {
        using var sent = ShapeWriter.WriteAnswer(recomputed);
        var now = JsonElement.Parse(sent.Written.Span);
        return Against(ShapeTable.Of(calculation.AnswerType), now) with
        {
            RecordId = Provenance(now, "recordId"),
            ResultDigest = Provenance(now, "resultDigest"),
        };
    }

    private Comparison Against(ObjectShape shape, JsonElement now)
    {
        if (SheetHasChanged(now))
        {
            return CannotVerify("/provenance/compound/digest", "The compound's profile has another sheet here than when it was computed");
        }

        if (Member(answer, "result") is { ValueKind: JsonValueKind.Null })
        {
            return CannotVerify("/result", "The answer was archived without its result");
        }

        var isWordedHere = Text("language") == AnswerMaker.Language && Text("contract") == ContractVersion.Text;
        var comparison = new AnswerComparison(isWordedHere, Contract);
        comparison.Walk(shape, answer, now, Root);
        var found = comparison.Found;
        var outcome = found.First is null ? VerificationOutcome.Match : VerificationOutcome.Differs;
        return new(outcome, found.First?.Pointer, found.First?.Reason)
        {
            OtherWords = found.Beside,
            UnknownMembers = found.Unknown,
            NotCompared = found.Unread,
        };
    }

    private static Comparison CannotVerify(string pointer, string reason) =>
        new(VerificationOutcome.CannotVerify, Root + pointer, reason) { NotCompared = [Root] };

    /// <summary>
    /// A profile is a name; what it stood for can only be told by the digest. The sheet is part of the input, so with it the input's
    /// digest has changed.
    /// </summary>
    private bool SheetHasChanged(JsonElement now) =>
        Compound(now) is { Profile: { } profile, Digest: { } digest } && Compound(answer) is { Digest: { } before } then
        && then.Profile == profile && before != digest && Text("inputDigest") != Provenance(now, "inputDigest");

    private static (string? Profile, string? Digest)? Compound(JsonElement of) =>
        Member(Member(of, "provenance"), "compound") is { ValueKind: JsonValueKind.Object } compound
            ? (TextOf(compound, "profile"), TextOf(compound, "digest")) : null;

    private string? Text(string name) => Provenance(answer, name);

    private static string? Provenance(JsonElement of, string name) => TextOf(Member(of, "provenance"), name);

    private static string? TextOf(JsonElement? owner, string name) =>
        Member(owner, name) is { ValueKind: JsonValueKind.String } text ? text.GetString() : null;

    private static JsonElement? Member(JsonElement? owner, string name) =>
        owner is { ValueKind: JsonValueKind.Object } known && known.TryGetProperty(name, out var member) ? member : null;
}
