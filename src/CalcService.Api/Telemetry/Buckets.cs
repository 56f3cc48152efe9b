namespace CalcService.Api.Telemetry;

/// <summary>
/// Edges of the histograms, in seconds. The usual edges begin at 5 ms, where all but the longest calculations would share
/// the first bucket. A plan takes about 50 µs; a cone or a shop may take seconds; 30 s is where a calculation is given up.
/// </summary>
public static class Buckets
{
    public static IReadOnlyList<double> Calculation { get; } =
        [10e-6, 25e-6, 50e-6, 100e-6, 250e-6, 500e-6, 1e-3, 2.5e-3, 5e-3, 10e-3, 25e-3, 50e-3, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30];

    /// <summary>Of whole requests, among them batches that take minutes.</summary>
    public static IReadOnlyList<double> Request { get; } =
        [100e-6, 250e-6, 500e-6, 1e-3, 2.5e-3, 5e-3, 10e-3, 25e-3, 50e-3, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30, 60, 300];
}
