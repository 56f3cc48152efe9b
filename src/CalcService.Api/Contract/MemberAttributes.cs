using CalcService.Engine.Provenance;

namespace CalcService.Api.Contract;

/// <summary>The kind of quantity that a member takes, and in requests between what it lies, ends allowed.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KindAttribute(QuantityKind kind) : Attribute
{
    public KindAttribute(QuantityKind kind, double least, double most, string unit)
        : this(kind) => (Least, Most, Unit) = (least, most, unit);

    public QuantityKind Kind { get; } = kind;

    public double Least { get; }

    public double Most { get; }

    /// <summary>Unit of the least and the most; null where the member has no range.</summary>
    public string? Unit { get; }

    /// <summary>Whether only whole numbers of the SI unit are taken.</summary>
    public bool Whole { get; init; }
}

/// <summary>Between what a whole number of a request lies, ends allowed.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class WithinAttribute(int least, int most) : Attribute
{
    public int Least { get; } = least;

    public int Most { get; } = most;
}

/// <summary>How many items a list of a request takes, where it differs from the usual.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ItemsAttribute(int least, int most) : Attribute
{
    /// <summary>Most items where a member says nothing else.</summary>
    public const int Usual = 1000;

    public ItemsAttribute(int most)
        : this(0, most)
    {
    }

    public int Least { get; } = least;

    public int Most { get; } = most;
}

/// <summary>A text of a request that names something; others are free text.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class IdAttribute : Attribute;

/// <summary>A member of a request that comes back with the record and that no calculation reads.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KeptAttribute : Attribute;

/// <summary>The version of the contract that first had a member; without it the first version.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class SinceAttribute(string contract) : Attribute
{
    public string Contract { get; } = contract;
}

/// <summary>
/// A member that no digest covers: what stands beside the decision and its numbers, and what a request says of the form of its answer.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class UndigestedAttribute : Attribute
{
    /// <summary>Whether a verification holds it as strictly against what it computes as what the digest covers.</summary>
    public bool Counts { get; init; }
}

/// <summary>
/// Words in the language of the answer: they tell a person what other members tell a program, and may change. No digest covers them.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class WordsAttribute : Attribute;
