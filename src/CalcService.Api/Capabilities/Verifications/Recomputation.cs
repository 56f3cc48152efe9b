using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.Problems;
using CalcService.Api.Reading;
using CalcService.Engine;
using CalcService.Engine.Rules;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Any other calculation once more, and what came of it beside the archive.</summary>
public sealed class Recomputation(IServiceProvider services, Editions editions)
{
    private const string Request = "/request";

    // Looked up late: the verification is one of the calculations itself.
    private readonly Lazy<Dictionary<string, ICapability>> _calculations = new(() => services.GetServices<ICapability>()
        .Where(calculation => calculation.Operation != VerificationsSetup.Operation)
        .ToDictionary(calculation => calculation.Operation, StringComparer.Ordinal));

    /// <summary>The calculations whose archived answers can be computed again.</summary>
    public IReadOnlyList<string> Operations => [.. _calculations.Value.Keys.Order(StringComparer.Ordinal)];

    /// <exception cref="RefusedException">The archived request can't be read.</exception>
    public Outcome<Comparison> Calculate(Resolved<RecordVerificationRequest> asked, Budget budget, CancellationToken cancellationToken)
    {
        var (calculation, archived) = (_calculations.Value[asked.Request.Operation], new ArchivedAnswer(asked.Request.Answer));
        var (asOf, against) = archived.ComputedBy(calculation.Operation, editions);
        // An archived request that can't be read is refused, whatever its answer says of itself.
        var sent = Encoding.UTF8.GetBytes(asked.Request.Request.GetRawText());
        var processed = calculation.Process(sent, archived.IsFull, asOf ?? new(editions.Current, archived.Contract), cancellationToken);
        if (processed.Body is Problem problem)
        {
            // The document takes any object here, so what the calculation can't read is no fault of the verification's own form.
            throw new RefusedException(
                [.. problem.Errors.Select(error => new ReadError(Request + error.Pointer, error.Code, error.Detail, IsUnreadable: false))]);
        }

        return RecordVerification.Of(against ?? archived.Compare(calculation, processed.Body), budget);
    }
}
