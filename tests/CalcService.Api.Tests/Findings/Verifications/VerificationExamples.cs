using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Findings;

namespace CalcService.Api.Tests.Findings.Verifications;

/// <summary>An archived answer that matches, and what raises each finding of its own.</summary>
internal static class VerificationExamples
{
    public static OperationExamples Operation { get; } = new(ArchivedAnswers.Path, ArchivedAnswers.Example("match"),
    [
        new("answer-differs", Severity.Stop, "/answer", archived => archived.With("/answer/decision", "proceed")),
        new("answer-not-verifiable", Severity.Unknown, "/answer", archived => archived.With("/answer/provenance/engine", "0")),
    ]);
}
