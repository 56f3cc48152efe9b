using CalcService.Api.Problems;

namespace CalcService.Api.Pages;

/// <summary>The page that the type of a problem leads to, in Markdown.</summary>
internal static class ProblemPage
{
    public static string Write() => string.Join("\n\n",
    [
        "# Problems",
        "Every refusal is `application/problem+json` (RFC 9457). `errors` lists everything that is wrong, each with a JSON Pointer.",
        .. ProblemKinds.All.Select(kind => $"## {kind.Code}\n\n**{kind.Status}: {kind.Title}.** {kind.Advice}"),
    ]) + "\n";
}
