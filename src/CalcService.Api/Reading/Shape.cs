using System.Collections.Frozen;
using System.Text;
using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>What a JSON value of the contract looks like. One table of shapes drives reader, writer, schema and fuzzer.</summary>
public abstract class Shape
{
    /// <summary>Writes a value.</summary>
    internal abstract void Write(ShapeWriter writer, object value);
}

/// <summary>The shape of a value type, which is written without boxing.</summary>
public interface IValueShape<in T>
    where T : struct
{
    void Write(ShapeWriter writer, T value);
}

/// <summary>The shape of one value type.</summary>
public abstract class ValueShape<T> : Shape, IValueShape<T>
    where T : struct
{
    public abstract void Write(ShapeWriter writer, T value);

    internal sealed override void Write(ShapeWriter writer, object value) => Write(writer, (T)value);
}

/// <summary>A string of limited length: an id, or free text.</summary>
public sealed class TextShape(int maxLength, bool isId = false) : Shape
{
    public int MaxLength { get; } = maxLength;

    /// <summary>Whether it names something, so that it has to be told from others.</summary>
    public bool IsId { get; } = isId;

    internal override void Write(ShapeWriter writer, object value) => writer.Text((string)value);
}

/// <summary>A whole number; one that may exceed 32 bits in answers only.</summary>
public sealed class IntegerShape(bool isLong, WithinAttribute? range) : Shape, IValueShape<int>, IValueShape<long>
{
    public bool IsLong { get; } = isLong;

    /// <summary>What it may be in a request.</summary>
    public WithinAttribute? Range { get; } = range;

    /// <summary>What is wrong with a number's size; null where nothing is.</summary>
    public string? Fault(int number) => Range is { } range && (number < range.Least || number > range.Most)
        ? FormattableString.Invariant($"{number} is out of range; allowed: {range.Least} to {range.Most}.")
        : null;

    internal override void Write(ShapeWriter writer, object value) => writer.Integer(IsLong ? (long)value : (int)value);

    void IValueShape<int>.Write(ShapeWriter writer, int value) => writer.Integer(value);

    void IValueShape<long>.Write(ShapeWriter writer, long value) => writer.Integer(value);
}

/// <summary>An amount of money, from nothing to a million, a plain decimal number.</summary>
public sealed class DecimalShape : ValueShape<decimal>
{
    public const decimal Most = 1_000_000;
    private const int Decimals = 4;

    /// <summary>What is wrong with an amount's size; null where nothing is.</summary>
    public static string? Fault(decimal amount) =>
        amount is < 0 or > Most ? FormattableString.Invariant($"{amount} is out of range; allowed: 0 to {Most}.")
        : decimal.Round(amount, Decimals) != amount ? "A cost has at most four decimals."
        : null;

    public override void Write(ShapeWriter writer, decimal value) => writer.Number(value);
}

/// <summary>True or false; answers only.</summary>
public sealed class BooleanShape : ValueShape<bool>
{
    public override void Write(ShapeWriter writer, bool value) => writer.Raw(value ? "true"u8 : "false"u8);
}

/// <summary>A plain number; answers only.</summary>
public sealed class NumberShape : ValueShape<double>
{
    public override void Write(ShapeWriter writer, double value) => writer.Number(value);
}

/// <summary>A calendar date, yyyy-MM-dd.</summary>
public sealed class DateShape : ValueShape<DateOnly>
{
    public override void Write(ShapeWriter writer, DateOnly value) => writer.Text(Texts.Write(value));
}

/// <summary>A date-time with its offset.</summary>
public sealed class InstantShape : ValueShape<DateTimeOffset>
{
    public override void Write(ShapeWriter writer, DateTimeOffset value) => writer.Instant(value);
}

/// <summary>Any JSON value; in a request an object with members of any name.</summary>
public sealed class AnyShape : ValueShape<JsonElement>
{
    public override void Write(ShapeWriter writer, JsonElement value) => writer.Any(value);
}

/// <summary>A quantity of one kind, or of any kind where <see cref="Kind"/> is null (answers only).</summary>
public sealed class QuantityShape(KindAttribute? kind) : Shape
{
    public const string Value = "value";
    public const string Unit = "unit";

    /// <summary>What is written behind the number, by the code of its unit.</summary>
    private static readonly FrozenDictionary<string, byte[]> Ends = UnitTable.All
        .SelectMany(kind => kind.Units)
        .Select(unit => unit.Code)
        .Distinct()
        .ToFrozenDictionary(code => code, code => Encoding.UTF8.GetBytes($",\"unit\":\"{code}\"}}"), StringComparer.Ordinal);

    public UnitKind? Kind { get; } = kind is null ? null : UnitTable.Of(kind.Kind);

    /// <summary>What it may be in a request.</summary>
    public QuantityRange? Range { get; } =
        kind?.Unit is { } unit ? new(kind.Least, kind.Most, UnitTable.Of(kind.Kind).Find(unit)!) : null;

    /// <summary>Whether only whole numbers of the SI unit are taken.</summary>
    public bool IsWhole { get; } = kind?.Whole == true;

    internal override void Write(ShapeWriter writer, object value)
    {
        var quantity = (Quantity)value;
        if (writer.Form == JsonForm.Sent)
        {
            writer.Raw("{\"value\":"u8);
            writer.Number(quantity.Value);
            writer.Raw(Ends[quantity.Unit]);
            return;
        }

        var inSi = writer.Form == JsonForm.Canonical && Kind is not null;
        writer.Raw("{\"unit\":"u8);
        writer.Text(inSi ? Kind!.Si.Code : quantity.Unit);
        writer.Raw(",\"value\":"u8);
        writer.Number(inSi ? quantity.Si : quantity.Value);
        writer.Raw("}"u8);
    }
}

/// <summary>One of some words.</summary>
public abstract class EnumShape(Type type, IReadOnlyList<KeyValuePair<string, object>> words) : Shape
{
    public Type Type { get; } = type;

    public IReadOnlyList<KeyValuePair<string, object>> Words { get; } = words;
}

/// <summary>One of the words of a type.</summary>
public sealed class EnumShape<T>(IReadOnlyList<KeyValuePair<string, object>> words) : EnumShape(typeof(T), words), IValueShape<T>
    where T : struct, Enum
{
    private readonly Dictionary<T, byte[]> _quoted = words.ToDictionary(word => (T)word.Value,
        word => Encoding.UTF8.GetBytes($"\"{word.Key}\""));

    internal override void Write(ShapeWriter writer, object value) => Write(writer, (T)value);

    public void Write(ShapeWriter writer, T value) => writer.Raw(_quoted[value]);
}
