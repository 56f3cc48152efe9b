using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>Words to write generators with.</summary>
internal static class Choices
{
    /// <summary>One of each, in order.</summary>
    public static Gen<T[]> Each<T>(IEnumerable<Gen<T>> generators) =>
        generators.Aggregate(Gen.Const(Array.Empty<T>()), (done, next) => Gen.Select(done, next, (before, one) => (T[])[.. before, one]));

    /// <summary>What comes out where it is chosen, in one of two cases.</summary>
    public static Gen<T?> Perhaps<T>(Gen<T> generator)
        where T : class => Gen.Frequency((1, Gen.Const((T?)null)), (1, generator.Select(made => (T?)made)));

    /// <summary>One of a list that isn't empty.</summary>
    public static Gen<T> OneIn<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(index => items[index]);
}
