using System.Numerics;

namespace CalcService.Engine.Numerics.Covering;

/// <summary>
/// What a cover of one exact size is judged by, three sums in the order of the objective, in one number: each has so many bits that the
/// largest sum a table can hold never reaches the next one. So to add and to compare the number is to add and to compare all three.
/// </summary>
internal readonly struct CoverOrder
{
    private readonly CoverObjective _objective;
    private readonly int _secondBits;
    private readonly int _thirdBits;

    /// <param name="items">What there is to take.</param>
    /// <param name="most">As many of them as a cover can hold.</param>
    /// <param name="objective">What the best cover is.</param>
    public CoverOrder(IReadOnlyList<CoverItem> items, long most, CoverObjective objective)
    {
        _objective = objective;
        var (first, second, third) = (Int128.Zero, Int128.Zero, Int128.Zero);
        foreach (var item in items)
        {
            var (a, b, c) = Of(item, objective);
            (first, second, third) = (Int128.Max(first, a), Int128.Max(second, b), Int128.Max(third, c));
        }

        (_secondBits, _thirdBits) = (BitsOf(second * most), BitsOf(third * most));
        Bits = BitsOf(first * most) + _secondBits + _thirdBits;
    }

    /// <summary>How many bits a sum takes.</summary>
    public int Bits { get; }

    /// <summary>What one of an item adds.</summary>
    public T Of<T>(CoverItem item)
        where T : struct, IBinaryInteger<T>
    {
        var (first, second, third) = Of(item, _objective);
        return (((T.CreateChecked(first) << _secondBits) + T.CreateChecked(second)) << _thirdBits) + T.CreateChecked(third);
    }

    /// <summary>Whether a cover beats one of a smaller size, which has the smaller excess.</summary>
    public bool IsBetter<T>(T sum, T smaller)
        where T : struct, IBinaryInteger<T> => _objective switch
        {
            CoverObjective.Cost => sum >> _thirdBits < smaller >> _thirdBits,
            CoverObjective.Number => sum >> (_secondBits + _thirdBits) < smaller >> (_secondBits + _thirdBits),
            _ => false,
        };

    private static (long First, long Second, long Third) Of(CoverItem item, CoverObjective objective) =>
        objective == CoverObjective.Number ? (1, item.Cost, item.Value) : (item.Cost, item.Value, 1);

    private static int BitsOf(Int128 largest) => 128 - (int)Int128.LeadingZeroCount(largest);
}
