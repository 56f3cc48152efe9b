using System.Diagnostics;
using CalcService.Api.Reading;

namespace CalcService.Api.Problems;

/// <summary>Why a request got no answer (RFC 9457).</summary>
public sealed record Problem
{
    /// <summary>Page that explains the problem.</summary>
    public required string Type { get; init; }

    /// <summary>The problem in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What happened, and what to do.</summary>
    public required string Detail { get; init; }

    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>Id of the request in the logs.</summary>
    public required string TraceId { get; init; }

    /// <summary>Everything wrong with the request, with its place.</summary>
    public required IReadOnlyList<ProblemError> Errors { get; init; }
}

/// <summary>One thing wrong with a request.</summary>
public sealed record ProblemError
{
    /// <summary>JSON Pointer to the member.</summary>
    public required string Pointer { get; init; }

    /// <summary>What is wrong, in one word.</summary>
    public required string Code { get; init; }

    /// <summary>What was found and what is allowed.</summary>
    public required string Detail { get; init; }

    public static ProblemError From(ReadError error) => new() { Pointer = error.Pointer, Code = error.Code, Detail = error.Detail };
}

/// <summary>A kind of problem.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Status">HTTP status.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Advice">What it means and what to do.</param>
public sealed record ProblemKind(string Code, int Status, string Title, string Advice)
{
    /// <summary>A problem of this kind in the request being handled.</summary>
    public Problem With(string? detail = null, IReadOnlyList<ProblemError>? errors = null) => new()
    {
        Type = "/docs/problems#" + Code,
        Title = Title,
        Status = Status,
        Detail = detail ?? Advice,
        Code = Code,
        TraceId = Activity.Current?.TraceId.ToHexString() ?? "",
        Errors = errors ?? [],
    };
}
