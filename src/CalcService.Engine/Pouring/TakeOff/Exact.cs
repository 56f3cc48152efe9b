namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>
/// Sums and money in decimals, which add up the same in every order: a quantity split into equal ends changes nothing,
/// and the lines of a quote make up its totals.
/// </summary>
internal static class Exact
{
    private const int MoneyDecimals = 4;
    private const decimal SecondsPerHour = 3600;

    /// <summary>So many times an amount, over all ends.</summary>
    public static decimal Sum(PourPlanInput input, Func<int, double> each) =>
        input.Ends.Select((end, i) => end.Quantity * (decimal)each(i)).Sum();

    /// <summary>Money for a number of pieces; none for no pieces, whatever the price.</summary>
    public static decimal? Cost(long pieces, decimal? price) => pieces == 0 ? 0 : pieces * price;

    /// <summary>Money for an amount in SI; none for no amount, whatever the price.</summary>
    public static decimal? Cost(decimal amount, Price? price) =>
        amount == 0 ? 0 : price is null ? null : Round(amount * price.Amount / (decimal)price.PerSi);

    /// <summary>Money for a time; none for no time, whatever the rate.</summary>
    public static decimal? Labour(decimal? seconds, decimal? hourlyRate) =>
        seconds == 0 ? 0 : seconds * hourlyRate is { } product ? Round(product / SecondsPerHour) : null;

    /// <summary>The sum, or null where one of them is.</summary>
    public static decimal? Total(IEnumerable<decimal?> costs) =>
        costs.Aggregate((decimal?)0, (sum, cost) => sum + cost);

    private static decimal Round(decimal money) => decimal.Round(money, MoneyDecimals, MidpointRounding.ToEven);
}
