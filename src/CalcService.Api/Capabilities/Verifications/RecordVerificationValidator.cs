using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What the request of a verification may be. The archived request is read by its own calculation.</summary>
public sealed class RecordVerificationValidator(Recomputation recomputation) : Contradictions<RecordVerificationRequest>
{
    protected override void Check(RecordVerificationRequest request, ValidationContext<RecordVerificationRequest> context) =>
        context.MustKnow(nameof(RecordVerificationRequest.Operation), request.Operation, recomputation.Operations, "operation");
}
