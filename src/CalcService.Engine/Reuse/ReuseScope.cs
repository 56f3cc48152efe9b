using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Reuse;

/// <summary>What the checks of one assessment share: the question and the rules.</summary>
internal sealed record ReuseScope(ReuseInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CheckScope(Book, Budget)
{
    public ReuseRules Rules => Book.Reuse;

    public UsedSocket Socket => Input.Socket;

    /// <summary>Whether ears and pin are there to be checked. Where nobody said the type, they are.</summary>
    public bool HasEars => Socket.Type != SocketType.Closed;

    protected override IReadOnlyList<FindingDefinition> Lists => ReuseFindings.OfLists;
}
