using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Problems;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Findings;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Calculations;

/// <summary>What came of one body.</summary>
/// <param name="Status">The HTTP status.</param>
/// <param name="Body">The answer or the problem.</param>
/// <param name="Reference">The client's reference.</param>
/// <param name="Request">The request, where there is an answer.</param>
/// <param name="Decision">The decision, where there is an answer.</param>
public readonly record struct Processed(int Status, object Body, string? Reference, object? Request = null, Decision? Decision = null);

/// <summary>A calculation, from the bytes of a request to the answer. Single requests and batch lines go the same way.</summary>
public interface ICapability
{
    /// <summary>Name of the calculation, as in its path.</summary>
    string Operation { get; }

    /// <summary>Type of the request.</summary>
    Type RequestType { get; }

    /// <summary>Type of the answer.</summary>
    Type AnswerType { get; }

    /// <summary>Longest body of a single request.</summary>
    int BodyBytes => Hosting.Limits.BodyBytes;

    /// <summary>Reads, validates and computes one body.</summary>
    Processed Process(ReadOnlySpan<byte> body, bool full, CancellationToken cancellationToken);

    /// <summary>Gathers what the lines of a batch say together; null where each line stands alone.</summary>
    ISummaryCollector? NewCollector() => null;
}

/// <summary>A calculation whose archived answers can be computed again.</summary>
public interface IRecomputable : ICapability
{
    /// <summary>What of its answers is compared when one is computed again.</summary>
    ObjectShape Compared { get; }

    /// <summary>The same as for any request, by the rules of an edition whatever the request names.</summary>
    Processed Recompute(ReadOnlySpan<byte> body, RuleBook rules, bool full, CancellationToken cancellationToken);
}

/// <summary>The way that all calculations share: read, validate, map, calculate, map.</summary>
public abstract class Capability<TRequest, TResult, TEngine>(IValidator<TRequest> validator, TimeProvider clock, Editions editions)
    : IRecomputable
    where TRequest : class, ICalculationRequest
    where TResult : class
{
    private readonly ObjectShape _shape = ShapeTable.Of<TRequest>();

    /// <summary>The editions that a request can name.</summary>
    protected Editions Editions { get; } = editions;

    public abstract string Operation { get; }

    public Type RequestType => typeof(TRequest);

    public Type AnswerType => typeof(Answer<TResult>);

    public ObjectShape Compared => ShapeTable.Of<Answer<TResult>>();

    public virtual int BodyBytes => Hosting.Limits.BodyBytes;

    public virtual ISummaryCollector? NewCollector() => null;

    public Processed Process(ReadOnlySpan<byte> body, bool full, CancellationToken cancellationToken) => Process(body, full, edition: null, cancellationToken);

    public Processed Recompute(ReadOnlySpan<byte> body, RuleBook rules, bool full, CancellationToken cancellationToken) =>
        Process(body, full, rules, cancellationToken);

    private Processed Process(ReadOnlySpan<byte> body, bool full, RuleBook? edition, CancellationToken cancellationToken)
    {
        var read = BodyReader.Read(body, _shape);
        var reference = (read.Value as TRequest)?.Reference;
        if (read.Errors.Count > 0)
        {
            return Refuse([.. read.Errors.Select(ProblemError.From)], read.Errors.Any(error => error.IsUnreadable), reference);
        }

        var request = (TRequest)read.Value!;
        var errors = RequestCheck.Errors(validator, request);
        var rules = request.Rules is { } name ? Editions.Find(name) : Editions.Current;
        if (rules is null)
        {
            errors = [.. errors, new() { Pointer = "/rules", Code = "unknown-rules", Detail = $"No such edition; known: {Editions}." }];
        }

        if (errors.Count == 0)
        {
            (request, errors) = Prepare(request, cancellationToken);
        }

        if (errors.Count > 0)
        {
            return Refuse(errors, isUnreadable: false, reference);
        }

        try
        {
            var answer = Answer(request, edition ?? rules!, full, cancellationToken);
            return new(200, answer, reference, request, answer.Decision);
        }
        catch (NonFiniteResultException)
        {
            return Refuse([new() { Pointer = "", Code = "not-finite", Detail = "A number of the result overflows: the sizes do not belong together." }], false, reference);
        }
    }

    /// <summary>The request with its profile replaced by the sheet and without units: what the canonical form is made of.</summary>
    protected abstract TRequest Resolve(TRequest request);

    /// <summary>What a valid request needs before it can be computed, and what stands against it.</summary>
    protected virtual (TRequest Request, IReadOnlyList<ProblemError> Errors) Prepare(TRequest request, CancellationToken cancellationToken) => (request, []);

    /// <summary>Knows parts of resolved requests whose canonical form is there already.</summary>
    protected virtual IKnownParts? Known => null;

    /// <summary>Which compound the request means; null where the calculation needs none.</summary>
    protected abstract CompoundProvenance? CompoundOf(TRequest request);

    /// <summary>Maps to the engine and computes.</summary>
    protected abstract Outcome<TEngine> Calculate(TRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken);

    /// <summary>Maps the numbers back.</summary>
    protected abstract TResult ToContract(TRequest request, TEngine result, UnitSystem units);

    private Answer<TResult> Answer(TRequest request, RuleBook rules, bool full, CancellationToken cancellationToken)
    {
        var outcome = Calculate(request, rules, new Budget(Budget.DefaultSteps, trace: full), cancellationToken);
        using var canonical = ShapeWriter.Write(JsonForm.Canonical, _shape, Resolve(request), Known);
        return AnswerMaker.Make(outcome, (result, units) => ToContract(request, result, units),
            new(Operation, rules, request.Units ?? UnitSystem.Metric, canonical.Written, CompoundOf(request), full, clock.GetUtcNow()));
    }

    private static Processed Refuse(IReadOnlyList<ProblemError> errors, bool isUnreadable, string? reference)
    {
        var kind = isUnreadable ? ProblemKinds.Unreadable : ProblemKinds.NotComputable;
        return new(kind.Status, kind.With(errors: errors), reference);
    }
}
