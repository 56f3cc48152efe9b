namespace CalcService.Engine.Numerics.Conduction;

/// <summary>Something that goes on in a node, at a pace that depends on how far it has gone and on the temperature.</summary>
public interface IReaction
{
    /// <summary>The rate of progress of each node, 1/s.</summary>
    /// <param name="progress">How far it has gone in each node.</param>
    /// <param name="temperature">The temperature of each.</param>
    /// <param name="ratePerS">Where the rates go.</param>
    void Rates(ReadOnlySpan<double> progress, ReadOnlySpan<double> temperature, Span<double> ratePerS);
}
