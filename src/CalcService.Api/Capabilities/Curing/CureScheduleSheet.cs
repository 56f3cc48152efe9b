using System.Globalization;
using CalcService.Api.Contract;
using CalcService.Api.Sheets;
using CalcService.Engine.Findings;
using static CalcService.Api.Sheets.SheetText;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>The cure schedule for the wall of the shop, with boxes to fill in by hand.</summary>
public static class CureScheduleSheet
{
    public static string Write(CureScheduleRequest request, Answer<CureScheduleResult> answer) => SheetPage.Write(
        "Cure schedule",
        $"{request.Reference ?? "no reference"} · mixed at {Clock(request.MixedAt)}",
        answer,
        page =>
        {
            var isStopped = answer.Decision == Decision.DoNotProceed;
            Times(page, answer.Result, isStopped);
            // Its marks say from when to load.
            foreach (var picture in isStopped ? [] : CurePicture.Draw(answer.Result.Ends))
            {
                page.Raw($"<div class=\"picture\">{picture}</div>");
            }

            Tasks(page, answer.Result);
            page.Add("h2", "Read again until the load").Table(["Reading", "Reckoned with", "Read now", "At", "By"],
            [
                ["Air", request.Conditions.Air.Constant is { } constant ? SheetText.Or(constant) : "forecast", "", "", ""],
                ["Steel, on the socket", SheetText.Or(request.Conditions.SteelTemperature), "", "", ""],
                ["Compound when mixed", SheetText.Or(request.Conditions.CompoundTemperature), "", "", ""],
            ]);
            page.Add("h2", "Before the load").Table(
                ["End", "Gel seen at", "Seen in (vessel, cup, mouth, cone)", "Hardness at the lip", "Released by", "Proof load at"],
                answer.Result.Ends.Select(end => new[] { end.Id, "", "", "", "", "" }));
        },
        stop: "DO NOT POUR OR LOAD",
        words: Headline.For(request.Purpose));

    /// <summary>The curves, and below them the tasks where there are any.</summary>
    public static string Picture(CureScheduleRequest request, Answer<CureScheduleResult> answer) =>
        SvgText.Stack("Cure and tasks over time",
        [.. CurePicture.Draw(answer.Result.Ends), .. answer.Result.Tasks.Count == 0 ? [] : TaskPicture.Draw(answer.Result.Tasks)]);

    private static void Tasks(SheetHtml page, CureScheduleResult result)
    {
        if (result.Tasks.Count == 0)
        {
            return;
        }

        page.Add("h2", $"Tasks, finished {Or(result.FinishedAt)}");
        foreach (var picture in TaskPicture.Draw(result.Tasks))
        {
            page.Raw($"<div class=\"picture tall\">{picture}</div>");
        }

        page.Table(
            ["From", "To", "End", "Task", "On", "Done"],
            result.Tasks.Where(task => task.On is not null)
                .Select(task => new[] { Clock(task.From), Clock(task.To), $"{task.End} {task.Unit}", task.Task, task.On!, "" }));
    }

    /// <summary>Under a stop nothing is loaded, whatever the model says when it could be.</summary>
    private static void Times(SheetHtml page, CureScheduleResult result, bool isStopped) =>
        page.Add("h2", "Times").Table(
            ["End", "Number", "Gels between", "Expected", "Undisturbed until", "Proof load from", "Service from", "Peak"],
            result.Ends.Select(end => new[]
            {
                end.Id,
                Text(end.Quantity),
                $"{Or(end.GelAt.Earliest)} and {Or(end.GelAt.Latest)}",
                Or(end.GelAt.Expected),
                By(end.UndisturbedUntil, end.GovernedBy.UndisturbedUntil),
                isStopped ? "not before the stop is settled" : By(end.ProofLoadFrom, end.GovernedBy.ProofLoadFrom),
                isStopped ? "not before the stop is settled" : By(end.ServiceFrom, end.GovernedBy.ServiceFrom),
                end.Peak is { } peak ? $"{SheetText.Or(peak.Temperature)} at {Clock(peak.At)}" : "not computed",
            }));

    private static string By(DateTimeOffset? at, string? governor) => at is { } known ? $"{Clock(known)} ({Words(governor!)})" : NotKnown;

    private static string Or(DateTimeOffset? at) => at is { } known ? Clock(known) : NotKnown;

    private static string Clock(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
