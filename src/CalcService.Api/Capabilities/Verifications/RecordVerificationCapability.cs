using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Units;
using CalcService.Engine;
using CalcService.Engine.Rules;
using CalcService.Engine.Verifications;
using FluentValidation;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>POST /v1/record-verifications: any other calculation once more, and what came of it beside the archive.</summary>
public sealed class RecordVerificationCapability(
    IEnumerable<IRecomputable> calculations,
    IValidator<RecordVerificationRequest> validator,
    TimeProvider clock, Editions editions)
    : Capability<RecordVerificationRequest, RecordVerificationResult, Comparison>(validator, clock, editions)
{
    private const string Request = "/request";

    private readonly Dictionary<string, IRecomputable> _calculations =
        calculations.ToDictionary(calculation => calculation.Operation, StringComparer.Ordinal);

    public override string Operation => "record-verifications";

    public override int BodyBytes => Limits.VerificationBytes;

    protected override (RecordVerificationRequest Request, IReadOnlyList<ProblemError> Errors) Prepare(
        RecordVerificationRequest request, CancellationToken cancellationToken)
    {
        var (calculation, archived) = (_calculations[request.Operation], new ArchivedAnswer(request.Answer));
        var (rules, against) = archived.Edition(Editions);
        // An archived request that can't be read is refused, whatever its answer says of itself.
        var sent = Encoding.UTF8.GetBytes(request.Request.GetRawText());
        var processed = calculation.Recompute(sent, rules ?? Editions.Current, archived.IsFull, cancellationToken);
        if (processed.Body is Problem problem)
        {
            // The document takes any object here, so what the calculation can't read is no fault of the verification's own form.
            return (request, [.. problem.Errors.Select(error => error with { Pointer = Request + error.Pointer })]);
        }

        return (request with { Compared = against ?? archived.Compare(calculation, processed.Body) }, []);
    }

    protected override RecordVerificationRequest Resolve(RecordVerificationRequest request) => request with { Units = null };

    protected override CompoundProvenance? CompoundOf(RecordVerificationRequest request) => null;

    protected override Outcome<Comparison> Calculate(
        RecordVerificationRequest request, RuleBook rules, Budget budget, CancellationToken cancellationToken) =>
        RecordVerification.Of(request.Compared!, budget);

    protected override RecordVerificationResult ToContract(RecordVerificationRequest request, Comparison result, UnitSystem units) => new()
    {
        Outcome = result.Outcome,
        Pointer = result.Pointer,
        Reason = result.Reason,
        Unchecked = [.. result.Unchecked],
        // No answer is signed yet; a member of this name is one that the contract doesn't know.
        Signature = AnswerSignature.Absent,
        RecordId = result.RecordId,
        ResultDigest = result.ResultDigest,
    };
}
