using CalcService.Api.Calculations;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What the request of a verification may be. The archived request is read by its own calculation.</summary>
public sealed class RecordVerificationValidator : AbstractValidator<RecordVerificationRequest>
{
    public RecordVerificationValidator(IEnumerable<IRecomputable> calculations)
    {
        string[] known = [.. calculations.Select(calculation => calculation.Operation).Order(StringComparer.Ordinal)];
        RuleFor(request => request).Custom((request, context) =>
        {
            if (!known.Contains(request.Operation))
            {
                context.Fail(nameof(RecordVerificationRequest.Operation), $"No such calculation; known: {string.Join(", ", known)}.", "unknown-operation");
            }
        });
    }
}
