using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>The inspection for the record of the end, with boxes for the next look.</summary>
public static class ServiceInspectionSheet
{
    private const int Digits = 3;

    public static string Write(ServiceInspectionRequest request, Answer<ServiceInspectionResult> answer) => SheetPage.Write(
        "Inspection of an end in service",
        $"{request.Reference ?? "no reference"} · {AnswerText.Of(request.Rope.Diameter, Digits)} {request.Rope.Construction} · "
            + $"{Texts(request)}",
        answer,
        page =>
        {
            page.Raw($"<div class=\"picture\">{Picture(request, answer)}</div>");
            var result = answer.Result;
            page.Add("h2", "Cut and rope left")
                .Table(["Cut off", "Turns on the drum then", "Enough rope left", "Next due", "Strictest check"],
            [
                [result.CutFrom is { } cut ? AnswerText.AtLeast(cut, Digits) : result.Disposition < ServiceDisposition.Hold ? "no cut"
                    : "not known", Or(result.RopeLeft.DrumTurns, "not known"), result.RopeLeft.Enough.ToString().ToUpperInvariant(),
                    result.NextDue is { } due ? Reading.Texts.Write(due.On) + ": " + due.Rule : "no day set",
                    result.Strictest?.Id ?? "none"],
            ]);
            page.Add("h2", "Checks").Table(["Check", "Came out", "Found", "Limit", "Rule", "Found now", "By"],
                result.Checks.Where(check => check.Outcome != CheckOutcome.NotApplicable).Select(check => new[]
                {
                    check.Id, CheckTable.Word(check.Outcome), Or(check.Measured, "-"), Or(check.Limit, "-"),
                    $"{check.Rule}; {SheetText.From(check.Source)}", "", "",
                }), "long");
        },
        // A sound end on too little rope stays: what hangs on it doesn't.
        stop: answer.Result.Disposition == ServiceDisposition.Withdraw ? "TAKE OUT OF SERVICE" : "DO NOT USE WITH THE ROPE THAT IS LEFT");

    public static string Picture(ServiceInspectionRequest request, Answer<ServiceInspectionResult> answer) =>
        EndPicture.Write(request.Inspection?.BrokenWires ?? [], answer.Result.CutFrom);

    private static string Texts(ServiceInspectionRequest request) =>
        $"{Reading.Texts.Write(request.AssessedOn)} · {request.RuleSet ?? "no rule set"}";

    private static string Or(Quantity? quantity, string none) => quantity is null ? none : AnswerText.Of(quantity, Digits);
}
