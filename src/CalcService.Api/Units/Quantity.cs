using System.Text.Json.Serialization;
using CalcService.Api.Reading;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Units;

/// <summary>A number with its unit. The unit always stands there.</summary>
public sealed record Quantity
{
    /// <summary>The number in <see cref="Unit"/>.</summary>
    public required double Value { get; init; }

    /// <summary>Code of the unit, as listed at /v1/units.</summary>
    public required string Unit { get; init; }

    /// <summary>The number in the SI unit of its kind, to twelve digits: what is computed with.</summary>
    [JsonIgnore]
    public double Si { get; init; }

    /// <summary>A quantity of an answer.</summary>
    /// <exception cref="RefusedException">The number overflowed.</exception>
    public static Quantity From(Measure measure, UnitSystem system)
    {
        if (!double.IsFinite(measure.Si))
        {
            throw RefusedException.NotFinite();
        }

        var unit = UnitTable.Of(measure.Kind).In(system);
        return new() { Value = Rounding.ToDigits(unit.FromSi(measure.Si), Rounding.AnswerDigits), Unit = unit.Code, Si = measure.Si };
    }

    /// <summary>A quantity of an answer that may be missing.</summary>
    public static Quantity? From(Measure? measure, UnitSystem system) => measure is { } value ? From(value, system) : null;

    /// <summary>A quantity of an answer that may be missing.</summary>
    public static Quantity? From(double? si, QuantityKind kind, UnitSystem system) =>
        si is { } value ? From(new Measure(value, kind), system) : null;
}
