using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine.Proof;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>The test for the bed, with boxes for what is read.</summary>
public static class ProofLoadEvaluationSheet
{
    private const int Digits = 3;

    /// <summary>Loads are read to a tenth of a per cent; what is printed never crosses its limit.</summary>
    private const int LoadDigits = 4;

    /// <summary>So that a load and its limit that differ by little are seen to differ.</summary>
    private const int CheckDigits = 5;

    public static string Write(ProofLoadEvaluationRequest request, Answer<ProofLoadEvaluationResult> answer) => SheetPage.Write(
        answer.Result.Phase == "before" ? "Proof load: the test" : "Proof load: the verdict",
        $"{request.Reference ?? "no reference"} · {AnswerText.Of(request.Rope.Diameter, Digits)} {request.Rope.Construction} · "
            + $"{request.RuleSet ?? "no rule set"}",
        answer,
        page =>
        {
            var result = answer.Result;
            page.Add("h2", "Load").Table(["Proof load", "Counts from", "At most", "Socket's proof rating"],
            [
                [Most(result.ProofLoad), SheetText.Least(result.LeastTestLoad, LoadDigits), Most(result.MostTestLoad),
                    Most(request.Socket.ProofRating)],
            ]);
            page.Add("h2", $"Steps; seating is read at the {Place(result)} under load")
                .Table(["Share", "Load", "Seating expected", "Seating read", "Held, min", "Load read", "By"],
                result.Steps.Select(step => new[]
                {
                    Or(step.Share), Most(step.Load), step.ExpectedSeating is { } band ? $"{Or(band.Low)} to {Or(band.High)}"
                        : "not computed",
                    step.Seating is null ? "" : Or(step.Seating), "", "", "",
                }));
            page.Raw($"<div class=\"picture\">{Picture(answer)}</div>");
            page.Add("h2", "Checks").Table(["Check", "Came out", "Found", "Limit", "Source"], result.Checks.Select(check => new[]
            {
                check.Id, CheckTable.Word(check.Outcome), Found(check, request), Limit(check, request), SheetText.From(check.Source),
            }), "long");
        },
        stop: answer.Result.Phase == "before" ? "DO NOT LOAD" : "FAILED",
        words: answer.Result.Phase == "before" ? Headline.For(request.Purpose) : Headline.Of("PASSED", "PASSED, WITH CARE"));

    public static string Picture(Answer<ProofLoadEvaluationResult> answer) =>
        SeatingPicture.Write(answer.Result.Steps, Place(answer.Result));

    private static bool IsTime(ProofCheckResult check) => check is { Id: "cure", Measured: not null };

    private static string Found(ProofCheckResult check, ProofLoadEvaluationRequest request) =>
        IsTime(check) ? $"test at {TestTimes.At(request.TestedAt)}" : OrNothing(check.Measured);

    private static string Limit(ProofCheckResult check, ProofLoadEvaluationRequest request) =>
        IsTime(check) ? $"from {TestTimes.NotBefore(request.Test!.ProofLoadFrom!.Value, request.TestedAt.Offset)} on"
        : OrNothing(check.Limit);

    private static string OrNothing(Quantity? quantity) => quantity is null ? "-" : AnswerText.Of(quantity, CheckDigits);

    private static string Place(ProofLoadEvaluationResult result) => result.SeatingReadAt == Engine.Cones.SeatingPlace.SmallEnd
        ? "small end" : "mouth";

    private static string Most(Quantity? load) => SheetText.Most(load, LoadDigits);

    private static string Or(Quantity? quantity) => quantity is null ? "not known" : AnswerText.Of(quantity, Digits);
}
