using System.Globalization;
using CalcService.Api.Answers;
using CalcService.Api.Sheets;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>The work of a plan on its printed sheet: steps to tick off, and hold points to sign.</summary>
internal static class WorkSheet
{
    private const int Digits = 3;

    /// <summary>The hold points, with what the plan was made with and what is allowed.</summary>
    public static void HoldPoints(SheetHtml page, IReadOnlyList<WorkHoldPoint> points) =>
        page.Add("h2", "Hold points: nobody goes on before these are looked at and signed").Table(
            ["Before", "What has to be so", "Planned with", "Allowed", "Found", "At", "Signed"],
            points.Select(point => new[]
            {
                Of(point.Task, point.End, point.Mix),
                $"{point.Text} ({point.By})",
                point.Reading is { } reading ? AnswerText.Of(reading, Digits) : "—",
                Allowed(point),
                "", "", "",
            }), "long");

    /// <summary>The steps in their order.</summary>
    public static void Steps(SheetHtml page, IReadOnlyList<SequenceStep> steps) =>
        page.Add("h2", "The work, in order").Table(["No", "On", "Do", "Done at", "By"],
            steps.Select(step => new[]
            {
                step.Number.ToString(CultureInfo.InvariantCulture), step.End ?? (step.Mix is { } mix ? $"mix {Text(mix)}" : "all"), step.Text, "", "",
            }), "long");

    private static string Of(string task, string? end, int? mix) => Words(task) + (end is not null ? $", {end}" : mix is { } number ? $", mix {Text(number)}" : "");

    /// <summary>openBroom as a person reads it.</summary>
    private static string Words(string task) => string.Concat(task.Select(letter => char.IsUpper(letter) ? " " + char.ToLowerInvariant(letter) : letter.ToString()));

    private static string Allowed(WorkHoldPoint point) => point switch
    {
        { Minimum: { } least, Maximum: { } most } => $"{Of(least)} to {Of(most)}",
        { Minimum: { } least } => $"from {Of(least)}",
        { Maximum: { } most } => $"up to {Of(most)}",
        { At: { } at, What: "gel" } => $"from {Clock(at)}",
        { At: { } at } => $"until {Clock(at)}",
        _ => "—",
    };

    private static string Of(Quantity quantity) => AnswerText.Of(quantity, Digits);

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
