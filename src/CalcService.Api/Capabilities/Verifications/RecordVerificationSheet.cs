using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Engine.Findings;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>The verification for the archive.</summary>
public static class RecordVerificationSheet
{
    private static readonly Dictionary<VerificationOutcome, (string Words, string Fill)> Outcomes = new()
    {
        [VerificationOutcome.Match] = ("Numbers, decision and findings are what the request gives.", "#3f7d4e"),
        [VerificationOutcome.Differs] = ("The archived answer differs from what its request gives.", "#b5451b"),
        [VerificationOutcome.CannotVerify] = ("The archived answer can't be computed again here.", "#8a8a8a"),
    };

    private static readonly (string Words, string Fill) Beside =
        ("Numbers, decision and findings match; what stands beside them does not.", "#c99a2e");

    public static string Write(RecordVerificationRequest request, Answer<RecordVerificationResult> answer) => SheetPage.Write(
        "Verification of an archived answer",
        $"{request.Operation} · {request.Reference ?? "no reference"}",
        answer,
        page =>
        {
            var result = answer.Result;
            page.Add("p", Of(answer).Words).Table(["", ""],
            [
                ["Decision, archived", Archived(request.Answer, "decision")],
                ["First difference", result.Pointer ?? "none"], ["Why", result.Reason ?? "-"],
                ["Not checked", result.Unchecked.Count == 0 ? "-" : string.Join(", ", result.Unchecked)],
                ["Signature", SheetText.Words(result.Signature.ToString()).Trim()],
                ["Record id, archived", ArchivedId(request.Answer)], ["Record id, computed", result.RecordId ?? SheetText.NotKnown],
            ]);
            page.Raw($"<div class=\"picture\">{Picture(answer)}</div>");
            page.Add("h2", "Signed").Table(["Verified by", "Date"], [["", ""]]);
        },
        stop: "DIFFERS",
        // That an archived stop was verified is no go.
        words: Headline.Of("MATCHES", "MATCHES IN PART", "NOT VERIFIED"));

    public static string Picture(Answer<RecordVerificationResult> answer)
    {
        var (words, fill) = Of(answer);
        var svg = new SvgText(680, 60, words);
        svg.Box(12, 14, 32, 32, fill, SvgText.Ink);
        svg.Label(58, 28, words, "start", bold: true)
            .Label(58, 44, answer.Findings.Count > 0 ? answer.Findings[0].Pointer : "no difference", "start");
        return svg.ToString();
    }

    private static (string Words, string Fill) Of(Answer<RecordVerificationResult> answer) =>
        answer.Decision == Decision.ProceedWithCare ? Beside : Outcomes[answer.Result.Outcome];

    private static string ArchivedId(JsonElement answer) =>
        answer.TryGetProperty("provenance", out var from) && from.ValueKind == JsonValueKind.Object
            ? Archived(from, "recordId") : SheetText.NotKnown;

    private static string Archived(JsonElement from, string name) =>
        from.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString()! : SheetText.NotKnown;
}
