using System.Text;
using System.Text.Json;
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
internal interface IValueShape<in T>
    where T : struct
{
    void Write(ShapeWriter writer, T value);
}

/// <summary>The shape of one value type.</summary>
public abstract class ValueShape<T> : Shape, IValueShape<T>
    where T : struct
{
    internal abstract void Write(ShapeWriter writer, T value);

    internal sealed override void Write(ShapeWriter writer, object value) => Write(writer, (T)value);

    void IValueShape<T>.Write(ShapeWriter writer, T value) => Write(writer, value);
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
    internal override void Write(ShapeWriter writer, decimal value) => writer.Number(value);
}

/// <summary>True or false; answers only.</summary>
public sealed class BooleanShape : ValueShape<bool>
{
    internal override void Write(ShapeWriter writer, bool value) => writer.Raw(value ? "true"u8 : "false"u8);
}

/// <summary>A plain number; answers only.</summary>
public sealed class NumberShape : ValueShape<double>
{
    internal override void Write(ShapeWriter writer, double value) => writer.Number(value);
}

/// <summary>A calendar date, yyyy-MM-dd.</summary>
public sealed class DateShape : ValueShape<DateOnly>
{
    internal override void Write(ShapeWriter writer, DateOnly value) => writer.Text(Texts.Write(value));
}

/// <summary>A date-time with its offset.</summary>
public sealed class InstantShape : ValueShape<DateTimeOffset>
{
    internal override void Write(ShapeWriter writer, DateTimeOffset value) => writer.Instant(value);
}

/// <summary>Any JSON value; in a request an object with members of any name.</summary>
public sealed class AnyShape : ValueShape<JsonElement>
{
    internal override void Write(ShapeWriter writer, JsonElement value) => writer.Any(value);
}

/// <summary>A quantity of one kind, or of any kind where <see cref="Kind"/> is null (answers only).</summary>
public sealed class QuantityShape(UnitKind? kind) : Shape
{
    public UnitKind? Kind { get; } = kind;

    internal override void Write(ShapeWriter writer, object value)
    {
        var quantity = (Quantity)value;
        if (writer.Form == JsonForm.Sent)
        {
            writer.Raw("{\"value\":"u8);
            writer.Number(quantity.Value);
            writer.Raw(",\"unit\":"u8);
            writer.Text(quantity.Unit);
            writer.Raw("}"u8);
            return;
        }

        var (unit, number) = writer.Form == JsonForm.CanonicalRequest && Kind is not null ? (Kind.Si.Code, quantity.Si) : (quantity.Unit, quantity.Value);
        writer.Raw("{\"unit\":"u8);
        writer.Text(unit);
        writer.Raw(",\"value\":"u8);
        writer.Number(number);
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
    private readonly Dictionary<T, byte[]> _quoted = words.ToDictionary(word => (T)word.Value, word => Encoding.UTF8.GetBytes($"\"{word.Key}\""));

    internal override void Write(ShapeWriter writer, object value) => Write(writer, (T)value);

    public void Write(ShapeWriter writer, T value) => writer.Raw(_quoted[value]);
}

/// <summary>An array.</summary>
public abstract class ListShape(Shape item, int maxItems) : Shape
{
    public Shape Item { get; } = item;

    public int MaxItems { get; } = maxItems;

    /// <summary>An array of the member's own type.</summary>
    public abstract object Build(IReadOnlyList<object> items);
}

/// <summary>An array with items of a type.</summary>
public sealed class ListShape<T>(Shape item, int maxItems) : ListShape(item, maxItems)
{
    public override object Build(IReadOnlyList<object> items)
    {
        var array = new T[items.Count];
        for (var i = 0; i < array.Length; i++)
        {
            array[i] = (T)items[i];
        }

        return array;
    }

    internal override void Write(ShapeWriter writer, object value)
    {
        var items = value as T[] ?? [.. (IReadOnlyList<T>)value];
        writer.Raw("["u8);
        for (var i = 0; i < items.Length; i++)
        {
            if (i > 0)
            {
                writer.Raw(","u8);
            }

            if (items[i] is { } item)
            {
                Item.Write(writer, item);
            }
            else
            {
                writer.Raw("null"u8);
            }
        }

        writer.Raw("]"u8);
    }
}

/// <summary>An object with a closed set of members.</summary>
public sealed class ObjectShape : Shape
{
    /// <summary>The reader marks the members that it has met in one word.</summary>
    public const int MostMembers = 64;

    private readonly MemberShape[] _members;
    private readonly MemberShape[] _canonical;

    /// <param name="type">The type.</param>
    /// <param name="members">Its members in the order of declaration.</param>
    public ObjectShape(Type type, IReadOnlyList<MemberShape> members)
    {
        if (members.Count > MostMembers)
        {
            throw new InvalidOperationException($"{type.Name} has {members.Count} members; an object of the contract has at most {MostMembers}.");
        }

        (Type, _members) = (type, [.. members]);
        Sorted = [.. members.OrderBy(member => member.Name, StringComparer.Ordinal)];
        _canonical = [.. Sorted.Where(member => !member.IsWording)];
    }

    public Type Type { get; }

    /// <summary>In the order of declaration.</summary>
    public IReadOnlyList<MemberShape> Members => _members;

    /// <summary>In the order of the canonical form: by UTF-16 code units of the name.</summary>
    public IReadOnlyList<MemberShape> Sorted { get; }

    internal override void Write(ShapeWriter writer, object value)
    {
        if (writer.TryWriteKnown(value))
        {
            return;
        }

        writer.Raw("{"u8);
        var isFirst = true;
        foreach (var member in writer.Form == JsonForm.Sent ? _members : _canonical)
        {
            isFirst &= !member.TryWrite(writer, value, isFirst);
        }

        writer.Raw("}"u8);
    }
}
