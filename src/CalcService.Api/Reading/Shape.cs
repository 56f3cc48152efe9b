using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CalcService.Api.Units;
using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>What a JSON value of the contract looks like. One table of shapes drives reader, writer, schema and fuzzer.</summary>
public abstract class Shape
{
    /// <summary>Whether the canonical form of a value in an answer is the one that is sent.</summary>
    internal virtual bool IsPlain => true;

    /// <summary>Writes a value.</summary>
    internal abstract void Write(ShapeWriter writer, object value);

    /// <summary>Copies what was written as it is sent into the canonical form.</summary>
    /// <param name="canonical">Takes the copy.</param>
    /// <param name="sent">All that was written.</param>
    /// <param name="outline">What lies where in it.</param>
    /// <param name="value">Where the value lies.</param>
    internal void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        if (IsPlain || sent[value.Start] == (byte)'n')
        {
            canonical.Raw(sent[value.Start..value.End]);
        }
        else
        {
            Rearrange(canonical, sent, outline, value);
        }
    }

    /// <summary>Copies a value that isn't plain, nor null.</summary>
    private protected virtual void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) =>
        throw new NotSupportedException($"{GetType().Name} isn't plain and doesn't say how it is copied.");
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

/// <summary>A string of limited length without control and direction characters.</summary>
public sealed class TextShape(int maxLength) : Shape
{
    public int MaxLength { get; } = maxLength;

    internal override void Write(ShapeWriter writer, object value) => writer.Text((string)value);
}

/// <summary>A whole number; one that may exceed 32 bits in answers only.</summary>
public sealed class IntegerShape(bool isLong) : Shape, IValueShape<int>, IValueShape<long>
{
    public bool IsLong { get; } = isLong;

    internal override void Write(ShapeWriter writer, object value) => writer.Integer(IsLong ? (long)value : (int)value);

    void IValueShape<int>.Write(ShapeWriter writer, int value) => writer.Integer(value);

    void IValueShape<long>.Write(ShapeWriter writer, long value) => writer.Integer(value);
}

/// <summary>A plain decimal number, such as a cost.</summary>
public sealed class DecimalShape : ValueShape<decimal>
{
    internal override bool IsPlain => false;

    public override void Write(ShapeWriter writer, decimal value) => writer.Number(value);

    private protected override void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) =>
        canonical.Number(decimal.Parse(sent[value.Start..value.End], NumberStyles.Number, CultureInfo.InvariantCulture));
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
    internal override bool IsPlain => false;

    public override void Write(ShapeWriter writer, JsonElement value) => writer.Any(value);

    private protected override void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) =>
        canonical.Any(JsonElement.Parse(sent[value.Start..value.End]));
}

/// <summary>A quantity of one kind, or of any kind where <see cref="Kind"/> is null (answers only).</summary>
public sealed class QuantityShape(UnitKind? kind) : Shape
{
    /// <summary>What is written behind the number, by the code of its unit.</summary>
    private static readonly FrozenDictionary<string, byte[]> Ends = UnitTable.All
        .SelectMany(kind => kind.Units)
        .Select(unit => unit.Code)
        .Distinct()
        .ToFrozenDictionary(code => code, code => Encoding.UTF8.GetBytes($",\"unit\":\"{code}\"}}"), StringComparer.Ordinal);

    public UnitKind? Kind { get; } = kind;

    internal override bool IsPlain => false;

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

        writer.Raw("{\"unit\":"u8);
        writer.Text(Kind is null ? quantity.Unit : Kind.Si.Code);
        writer.Raw(",\"value\":"u8);
        writer.Number(Kind is null ? quantity.Value : quantity.Si);
        writer.Raw("}"u8);
    }

    private protected override void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        // Without the braces; a number has no comma.
        var members = sent[(value.Start + 1)..(value.End - 1)];
        var comma = members.IndexOf((byte)',');
        var number = members[..comma];
        var unit = members[(comma + 1)..];
        var room = canonical.Take(value.End - value.Start);
        room[0] = (byte)'{';
        unit.CopyTo(room[1..]);
        room[1 + unit.Length] = (byte)',';
        number.CopyTo(room[(2 + unit.Length)..]);
        room[^1] = (byte)'}';
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
    private readonly Dictionary<T, byte[]> _quoted = words.ToDictionary(word => (T)word.Value, word => Encoding.UTF8.GetBytes($"\"{word.Key}\""));

    internal override void Write(ShapeWriter writer, object value) => Write(writer, (T)value);

    public void Write(ShapeWriter writer, T value) => writer.Raw(_quoted[value]);
}
