using CalcService.Engine.Provenance;

namespace CalcService.Engine.Findings;

/// <summary>
/// A number that something is held against. It gives its number to <see cref="Judged"/> and, by a conversion that has to be written, to
/// what is shown: no comparison goes past the one of the service.
/// </summary>
public readonly record struct Limit
{
    private readonly Measure _number;

    private Limit(Measure number, Source? source) => (_number, Source) = (number, source);

    /// <summary>What it measures.</summary>
    public QuantityKind Kind => _number.Kind;

    /// <summary>Where it comes from, if that isn't the request.</summary>
    public Source? Source { get; }

    /// <summary>A limit of a rule, of a data sheet, or of the request, which needs no source.</summary>
    public static Limit Of(Measure number, Source? source = null) => new(number, source);

    /// <summary>The number for those who read it.</summary>
    public static explicit operator Measure(Limit limit) => limit._number;
}
