using CalcService.Engine.Findings;

namespace CalcService.Api.Pages;

/// <summary>The list of all findings in Markdown, and the requests that their examples change.</summary>
internal static class FindingIndex
{
    public static string Write(IReadOnlyList<FindingDefinition> findings) => string.Join("\n\n",
    [
        "# Findings",
        "Every finding that an answer can have, the same as at [/v1/rules](../v1/rules). A code never changes its meaning. "
            + "The models behind them: /docs/pages.",
        "The worst finding makes the decision: stop → `doNotProceed`, unknown (a fact that a safety rule needs is missing) → "
            + "`undetermined`, "
            + "caution → `proceedWithCare`, note or none → `proceed`.",
        "Each page has an example that runs against a service on your machine: copy the request into `request.json` and send it to the "
            + "path that stands above it, such as",
        "```sh\ncurl -s http://localhost:5080/v1/pour-plans -H 'Content-Type: application/json' -d @request.json\n```",
        "The compounds of the examples are invented. What an example is answered is computed by this service when its page is first asked "
            + "for.",
        "| code | severities | what it means |\n|---|---|---|\n" + string.Join("\n", findings.Select(Row)),
        "## Nothing wrong",
        "What the examples change. Sent as they stand, these get the decision `proceed` without a finding.",
        .. OperationExamples.All.Select(operation => $"`POST {operation.Path}`\n\n```json\n{PageJson.Write(operation.Good)}\n```"),
    ]) + "\n";

    private static string Row(FindingDefinition finding) =>
        $"| [{finding.Code}](findings/{finding.Code}) | {string.Join(", ", finding.Severities.Select(FindingPage.Name))} | "
            + $"{finding.Meaning} |";
}
