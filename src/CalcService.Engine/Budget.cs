namespace CalcService.Engine;

/// <summary>
/// What one calculation may spend. Steps are counted, never seconds, so that the answer doesn't depend on the
/// machine; the caller's clock can only end the request through the cancellation token.
/// </summary>
public sealed class Budget(long steps, bool trace = false)
{
    /// <summary>
    /// Enough for a mix of hundreds of litres in kits of odd millilitres, and little enough that its tables stay small in memory.
    /// </summary>
    public const long DefaultSteps = 2_000_000;

    /// <summary>Whether the calculation keeps its trail of formulas.</summary>
    public bool Trace { get; } = trace;

    /// <summary>Steps still to be spent.</summary>
    public long Left { get; private set; } = steps;

    /// <summary>Takes steps out of the budget; false, and nothing taken, where they are not there.</summary>
    public bool TrySpend(long steps)
    {
        if (steps > Left)
        {
            return false;
        }

        Left -= steps;
        return true;
    }
}
