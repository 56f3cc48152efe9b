using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>What the checks of one assessment share: the question and the rules.</summary>
internal sealed record ReuseScope(ReuseInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CheckScope(Book, Budget)
{
    private readonly List<(FindingDefinition Finding, string Pointer, string What)> _missing = [];

    public ReuseRules Rules => Book.Reuse;

    public UsedSocket Socket => Input.Socket;

    /// <summary>Whether ears and pin are there to be checked. Where nobody said the type, they are.</summary>
    public bool HasEars => Socket.Type != SocketType.Closed;

    /// <summary>What only lists what nobody said is gathered, so that a socket of which little is known has one finding of a kind.</summary>
    public override void Find(FindingDefinition definition, string pointer, Judged judged = default,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params ReadOnlySpan<FindingWord> words)
    {
        if (ReuseFindings.OfLists.Contains(definition))
        {
            _missing.Add((definition, pointer, words[0].Text!));
        }
        else
        {
            base.Find(definition, pointer, judged, related, severity, source, words);
        }
    }

    /// <summary>Raises one finding for each kind of what is missing, at the first member with the others beside it.</summary>
    public void ListMissing()
    {
        foreach (var kind in _missing.DistinctBy(one => (one.Finding.Code, one.Pointer)).GroupBy(one => one.Finding))
        {
            var members = kind.Select(one => one.Pointer).ToArray();
            base.Find(kind.Key, members[0], related: members[1..],
                words: new FindingWord("what", string.Join("; ", kind.Select(one => one.What).Distinct(StringComparer.Ordinal))));
        }
    }
}
