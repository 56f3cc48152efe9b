namespace CalcService.Api.Calculations;

/// <summary>Gathers what the lines of one batch say together, in memory that doesn't grow with them.</summary>
public interface ISummaryCollector
{
    /// <summary>Takes what came of a line.</summary>
    void Add(long line, in Processed processed);

    /// <summary>What all lines say together, for the summary.</summary>
    object Result();
}
