using CalcService.Api.Answers;
using CalcService.Api.Problems;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Catalogues;

/// <summary>The findings of every edition: number and source of a limit are those of the edition.</summary>
internal sealed class RuleCatalogue(IReadOnlyList<FindingDefinition> findings, Editions editions)
{
    /// <summary>The query parameter that names an edition.</summary>
    public const string Query = "edition";

    private readonly Dictionary<string, (Representation All, Dictionary<string, Representation> ByCode)> _editions =
        editions.All.ToDictionary(book => book.Edition, book =>
    {
        var rules = findings.Where(finding => finding.IsIn(book)).Select(finding => Entry(finding, book, editions.Before(book)))
            .OrderBy(rule => rule.Code, StringComparer.Ordinal).ToArray();
        return (new Representation(new RuleList { Rules = rules }), rules.ToDictionary(rule => rule.Code, rule => new Representation(rule),
            StringComparer.Ordinal));
    }, StringComparer.Ordinal);

    public static Problem Unknown(Editions editions) =>
        ProblemKinds.NotFound.With($"No edition of the rules has this name; known: {editions}.");

    public Task WriteAllAsync(HttpContext http, string? edition) =>
        _editions.TryGetValue(edition ?? editions.Current.Edition, out var known) ? known.All.WriteAsync(http)
            : ProblemWriter.WriteAsync(http, Unknown(editions));

    public Task WriteAsync(HttpContext http, string code, string? edition) =>
        !_editions.TryGetValue(edition ?? editions.Current.Edition, out var known) ? ProblemWriter.WriteAsync(http, Unknown(editions))
            : known.ByCode.TryGetValue(code, out var rule) ? rule.WriteAsync(http)
            : ProblemWriter.WriteAsync(http, ProblemKinds.NotFound.With("No finding has this code; /v1/rules lists them."));

    private static RuleEntry Entry(FindingDefinition definition, RuleBook book, RuleBook? before) => new()
    {
        Code = definition.Code,
        Severities = definition.Severities,
        Actor = AnswerMaker.Name(definition.Actor),
        Meaning = definition.Meaning,
        Action = definition.Action,
        Source = AnswerMaker.Source(definition.SourceIn(book)),
        Limits = [.. definition.LimitsIn(book).Select(RuleLimitEntry.From)],
        Since = definition.Since,
        Changes = before is null ? [] : [.. Changes(definition.IsIn(before) ? definition.LimitsIn(before) : [], definition.LimitsIn(book))],
    };

    /// <summary>Limits of which number, document or clause changed. Of one finding they stand in one order; where their number differs,
    /// their words tell which is which.</summary>
    private static IEnumerable<RuleChange> Changes(IReadOnlyList<Rule> was, IReadOnlyList<Rule> now)
    {
        var pairs = was.Count == now.Count ? was.Zip(now, (one, other) => ((Rule?)one, (Rule?)other))
            : now.Select(rule => (was.FirstOrDefault(other => Id(other) == Id(rule)), (Rule?)rule))
                .Concat(was.Where(rule => now.All(other => Id(other) != Id(rule))).Select(rule => ((Rule?)rule, (Rule?)null)));
        return pairs.Where(pair => Said(pair.Item1) != Said(pair.Item2)).Select(pair => new RuleChange
        {
            Was = pair.Item1 is { } before ? RuleLimitEntry.From(before) : null, Is = pair.Item2 is { } after ? RuleLimitEntry.From(after)
                : null,
        });

        static (string RuleSet, string Text) Id(Rule rule) => (rule.RuleSet, rule.Text);
        static (Measure? Number, Source Source)? Said(Rule? rule) => rule is null ? null : ((Measure?)rule, rule.Source);
    }
}
