using CalcService.Api.Hosting;
using CalcService.Engine.Findings;

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
    int BodyBytes => Limits.BodyBytes;

    /// <summary>Reads, validates and computes one body.</summary>
    /// <param name="body">The bytes.</param>
    /// <param name="full">Whether the answer tells its trace and its input.</param>
    /// <param name="asOf">What an archived answer was computed by; null for what the request names and the contract of today.</param>
    /// <param name="cancellationToken">Ends the work.</param>
    Processed Process(ReadOnlySpan<byte> body, bool full, AsOf? asOf, CancellationToken cancellationToken);

    /// <summary>The same, by the rules that the request names.</summary>
    Processed Process(ReadOnlySpan<byte> body, bool full, CancellationToken cancellationToken) =>
        Process(body, full, asOf: null, cancellationToken);

    /// <summary>Gathers what the lines of a batch say together; null where each line stands alone.</summary>
    ISummaryCollector? NewCollector() => null;
}
