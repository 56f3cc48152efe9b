using System.Globalization;
using CalcService.Api.Sheets;
using static CalcService.Api.Sheets.SheetText;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>The work of a plan on its printed sheet: steps to tick off, and hold points to sign.</summary>
internal static class WorkSheet
{
    /// <summary>The hold points, with what the plan was made with and what is allowed.</summary>
    public static void HoldPoints(SheetHtml page, IReadOnlyList<WorkHoldPoint> points) =>
        page.Add("h2", "Hold points: nobody goes on before these are looked at and signed").Table(
            ["Before", "What has to be so", "Planned with", "Allowed", "Found", "At", "Signed"],
            points.Select(point => new[]
            {
                Of(point.Task, point.End, point.Mix),
                $"{point.Text} ({point.By})",
                point.Reading is { } reading ? Or(reading) : "—",
                Allowed(point),
                "", "", "",
            }), "long");

    /// <summary>The steps in their order.</summary>
    public static void Steps(SheetHtml page, IReadOnlyList<SequenceStep> steps) =>
        page.Add("h2", "The work, in order").Table(["No", "On", "Do", "Done at", "By"],
            steps.Select(step => new[]
            {
                step.Number.ToString(CultureInfo.InvariantCulture), step.End ?? (step.Mix is { } mix ? $"mix {Text(mix)}" : "all"),
                    step.Text, "", "",
            }), "long");

    private static string Of(string task, string? end, int? mix) =>
        Words(task) + (end is not null ? $", {end}" : mix is { } number ? $", mix {Text(number)}" : "");

    private static string Allowed(WorkHoldPoint point) => point switch
    {
        { Minimum: { } least, Maximum: { } most } => $"{Least(least)} to {Most(most)}",
        { Minimum: { } least } => $"from {Least(least)}",
        { Maximum: { } most } => $"up to {Most(most)}",
        { At: { } at, What: "gel" } => $"from {Clock(at)}",
        { At: { } at } => $"until {Clock(at)}",
        _ => "—",
    };
}
