using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>The verification for the archive.</summary>
public static class RecordVerificationSheet
{
    private static readonly Dictionary<VerificationOutcome, (string Words, string Fill)> Outcomes = new()
    {
        [VerificationOutcome.Match] = ("The archived answer is what its request gives.", "#3f7d4e"),
        [VerificationOutcome.Differs] = ("The archived answer differs from what its request gives.", "#b5451b"),
        [VerificationOutcome.CannotVerify] = ("The archived answer can't be computed again here.", "#8a8a8a"),
    };

    public static string Write(RecordVerificationRequest request, Answer<RecordVerificationResult> answer) => SheetPage.Write(
        "Verification of an archived answer",
        $"{request.Operation} · {request.Reference ?? "no reference"}",
        answer,
        page =>
        {
            var result = answer.Result;
            page.Add("p", Outcomes[result.Outcome].Words).Table(["", ""],
            [
                ["First difference", result.Pointer ?? "none"], ["Why", result.Reason ?? "-"],
                ["Record id, archived", Archived(request)], ["Record id, computed", result.RecordId ?? SheetText.NotKnown],
            ]);
            page.Raw($"<div class=\"picture\">{Picture(answer)}</div>");
            page.Add("h2", "Signed").Table(["Verified by", "Date"], [["", ""]]);
        },
        stop: "DIFFERS");

    public static string Picture(Answer<RecordVerificationResult> answer)
    {
        var (words, fill) = Outcomes[answer.Result.Outcome];
        var svg = new SvgText(680, 60, words);
        svg.Box(12, 14, 32, 32, fill, SvgText.Ink);
        svg.Label(58, 28, words, "start", bold: true).Label(58, 44, answer.Result.Pointer ?? "no difference", "start");
        return svg.ToString();
    }

    private static string Archived(RecordVerificationRequest request) =>
        request.Answer.TryGetProperty("provenance", out var from) && from.ValueKind == JsonValueKind.Object && from.TryGetProperty("recordId", out var id) && id.ValueKind == JsonValueKind.String
            ? id.GetString()! : SheetText.NotKnown;
}
