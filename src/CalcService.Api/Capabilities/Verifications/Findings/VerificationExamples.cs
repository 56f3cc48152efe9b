using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;

namespace CalcService.Api.Capabilities.Verifications.Findings;

/// <summary>An archived answer that matches, and what raises each finding of its own.</summary>
internal static class VerificationExamples
{
    public static OperationExamples Operation { get; } = new("/v1/record-verifications",
        RequestExamples.Of("record-verifications", "match").Json,
    [
        new("answer-differs", Severity.Stop, "/answer/decision", archived => archived.With("/answer/decision", "proceed")),
        new("answer-members-unknown", Severity.Caution, "/answer/approvedBy",
        archived => archived.With("/answer/approvedBy", "the foreman")),
        new("answer-words-differ", Severity.Caution, "/answer/safetyNotes",
        archived => archived.With("/answer/safetyNotes", new JsonArray())),
        new("answer-not-verifiable", Severity.Unknown, "/answer/provenance/engine",
        archived => archived.With("/answer/provenance/engine", "0")),
    ]);
}
