namespace CalcService.Api.Reading;

/// <summary>One thing wrong with a request, with the member it stands at.</summary>
/// <param name="Pointer">JSON Pointer (RFC 6901) to the member.</param>
/// <param name="Code">What is wrong, in one word.</param>
/// <param name="Detail">What was found, what is allowed.</param>
/// <param name="IsUnreadable">True for 400, false for 422.</param>
public sealed record ReadError(string Pointer, string Code, string Detail, bool IsUnreadable);

/// <summary>A body as far as it could be read.</summary>
/// <param name="Value">The request; trustworthy only without errors.</param>
/// <param name="Errors">Everything that is wrong with it.</param>
public readonly record struct ReadResult(object? Value, IReadOnlyList<ReadError> Errors);
