namespace CalcService.Engine.Numerics.Covering;

/// <summary>What a cover of one exact size is judged by, in the order of the objective.</summary>
internal readonly record struct CoverSum(long First, long Second, long Third) : IComparable<CoverSum>
{
    /// <summary>No items add up to this size.</summary>
    public static CoverSum Unreachable { get; } = new(long.MaxValue, 0, 0);

    public bool IsReachable => First != long.MaxValue;

    public static CoverSum Of(CoverItem item, CoverObjective objective) => objective == CoverObjective.Number
        ? new(1, item.Cost, item.Value)
        : new(item.Cost, item.Value, 1);

    public static CoverSum operator +(CoverSum a, CoverSum b) => new(a.First + b.First, a.Second + b.Second, a.Third + b.Third);

    public static CoverSum operator -(CoverSum a, CoverSum b) => new(a.First - b.First, a.Second - b.Second, a.Third - b.Third);

    public static CoverSum operator *(CoverSum one, int count) => new(one.First * count, one.Second * count, one.Third * count);

    public int CompareTo(CoverSum other)
    {
        var first = First.CompareTo(other.First);
        var second = first != 0 ? first : Second.CompareTo(other.Second);
        return second != 0 ? second : Third.CompareTo(other.Third);
    }

    /// <summary>Whether this cover beats one of a smaller size, which has the smaller excess.</summary>
    public bool IsBetterThan(CoverSum smaller, CoverObjective objective) => objective switch
    {
        CoverObjective.Cost => (First, Second).CompareTo((smaller.First, smaller.Second)) < 0,
        CoverObjective.Number => First < smaller.First,
        _ => false,
    };
}
