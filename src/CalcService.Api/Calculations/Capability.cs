using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Engine;

namespace CalcService.Api.Calculations;

/// <summary>A calculation: what is asked to what came of it, and that to the contract.</summary>
/// <param name="operation">Its name, as in its path.</param>
/// <param name="calculate">Computes what a resolved request asks.</param>
/// <param name="toContract">Maps the numbers to a system of units.</param>
/// <param name="resolver">Makes of bytes what is asked.</param>
/// <param name="clock">Says when it was computed.</param>
public sealed class Capability<TRequest, TResult, TOutcome>(
    string operation,
    Func<Resolved<TRequest>, Budget, CancellationToken, Outcome<TOutcome>> calculate,
    Func<Resolved<TRequest>, TOutcome, UnitSystem, TResult> toContract,
    Resolver resolver,
    TimeProvider clock) : ICapability
    where TRequest : class, ICalculationRequest
    where TResult : class
{
    public string Operation => operation;

    public Type RequestType => typeof(TRequest);

    public Type AnswerType => typeof(Answer<TResult>);

    public int BodyBytes { get; init; } = Limits.BodyBytes;

    /// <summary>Makes what gathers the lines of a batch; null where each line stands alone.</summary>
    public Func<ISummaryCollector>? Collector { get; init; }

    public ISummaryCollector? NewCollector() => Collector?.Invoke();

    public Processed Process(ReadOnlySpan<byte> body, bool full, AsOf? asOf, CancellationToken cancellationToken)
    {
        var (read, errors, asked) = resolver.Resolve<TRequest>(body, asOf);
        if (asked is null)
        {
            return Refuse(errors, read?.Reference);
        }

        try
        {
            var outcome = calculate(asked, new Budget(Budget.DefaultSteps, trace: full), cancellationToken);
            var answer = AnswerMaker.Make(operation, outcome, (result, units) => toContract(asked, result, units), asked, full,
                clock.GetUtcNow());
            return new(200, answer, asked.Request.Reference, asked.Request, answer.Decision);
        }
        catch (RefusedException refused)
        {
            return Refuse(refused.Errors, asked.Request.Reference);
        }
    }

    private static Processed Refuse(IReadOnlyList<ReadError> errors, string? reference)
    {
        var kind = errors.Any(error => error.IsUnreadable) ? ProblemKinds.Unreadable : ProblemKinds.NotComputable;
        return new(kind.Status, kind.With(errors: [.. errors.Select(ProblemError.From)]), reference);
    }
}
