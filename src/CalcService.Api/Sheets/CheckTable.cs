using CalcService.Api.Contract;
using CalcService.Engine.Findings;

namespace CalcService.Api.Sheets;

/// <summary>The checks of an answer, as a table.</summary>
internal static class CheckTable
{
    private const int Digits = 4;

    private static readonly Dictionary<CheckOutcome, string> Outcomes = new()
    {
        [CheckOutcome.Pass] = "pass", [CheckOutcome.Fail] = "FAIL", [CheckOutcome.NotApplicable] = "does not apply",
            [CheckOutcome.Undetermined] = "OPEN",
    };

    public static void Checks(this SheetHtml page, IReadOnlyList<CheckResult> checks) => page.Add("h2", "Checks").Table(
        ["Check", "Outcome", "Found", "Limit", "Source", "Missing"],
        checks.Select(check => new[]
        {
            Name(check.Id), Word(check.Outcome), check.Measured is null ? "-" : SheetText.Or(check.Measured, Digits),
            check.Limit is null ? "-" : SheetText.Or(check.Limit, Digits), SheetText.From(check.Source),
            check.Missing.Count == 0 ? "-" : string.Join(" ", check.Missing),
        }),
        "long");

    public static string Word(CheckOutcome outcome) => Outcomes[outcome];

    /// <summary>dew-point as dew point.</summary>
    public static string Name(string id) => id.Replace('-', ' ');
}
