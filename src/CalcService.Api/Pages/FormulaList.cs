using System.Text.RegularExpressions;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Pages;

/// <summary>Formulas stand once, in the code that computes them: a page names them by id in a block ```formula, a line each.</summary>
public static partial class FormulaList
{
    /// <summary>A page with the formulas in the place of their names.</summary>
    public static string Fill(string markdown) => Block().Replace(markdown, block =>
        string.Join('\n', block.Groups["id"].Captures.Select(id => Item(FormulaCatalogue.All[id.Value]))));

    /// <summary>The formulas that a page names, in their order.</summary>
    public static IEnumerable<string> Named(string markdown) =>
        Block().Matches(markdown).SelectMany(block => block.Groups["id"].Captures).Select(id => id.Value);

    private static string Item(FormulaAttribute formula)
    {
        var source = FindingPage.SourceOf(new(formula.Document, formula.Clause, formula.Basis));
        return $"- `{formula.Symbol} = {formula.Expression}`\\\n  {formula.Name}. Range: {formula.Range}. Source: {source}";
    }

    [GeneratedRegex("^```formula\n(?:(?<id>.+)\n)+?```$", RegexOptions.Multiline)]
    private static partial Regex Block();
}
