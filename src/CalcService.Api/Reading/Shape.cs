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
    internal virtual void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) => canonical.Raw(sent[value.Start..value.End]);

    /// <summary>Copies a value that may be null.</summary>
    private protected static void CopyNullable(Shape shape, ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        if (sent[value.Start] == (byte)'n')
        {
            canonical.Raw("null"u8);
        }
        else
        {
            shape.Copy(canonical, sent, outline, value);
        }
    }
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

    internal override void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) =>
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

    internal override void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value) =>
        canonical.Any(JsonElement.Parse(sent[value.Start..value.End]));
}

/// <summary>A quantity of one kind, or of any kind where <see cref="Kind"/> is null (answers only).</summary>
public sealed class QuantityShape(UnitKind? kind) : Shape
{
    public UnitKind? Kind { get; } = kind;

    internal override bool IsPlain => false;

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

        writer.Raw("{\"unit\":"u8);
        writer.Text(Kind is null ? quantity.Unit : Kind.Si.Code);
        writer.Raw(",\"value\":"u8);
        writer.Number(Kind is null ? quantity.Value : quantity.Si);
        writer.Raw("}"u8);
    }

    internal override void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
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

/// <summary>An array.</summary>
public abstract class ListShape(Shape item, int maxItems) : Shape
{
    public Shape Item { get; } = item;

    public int MaxItems { get; } = maxItems;

    internal override bool IsPlain { get; } = item.IsPlain;

    /// <summary>An array of the member's own type.</summary>
    public abstract object Build(IReadOnlyList<object> items);

    internal override void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        if (IsPlain)
        {
            canonical.Raw(sent[value.Start..value.End]);
            return;
        }

        canonical.Raw("["u8);
        var bracket = value.End - 1;
        for (int place = value.Parts, start = value.Start + 1; start < bracket; start = outline[place++].End + 1)
        {
            if (place > value.Parts)
            {
                canonical.Raw(","u8);
            }

            CopyNullable(Item, canonical, sent, outline, outline[place]);
        }

        canonical.Raw("]"u8);
    }
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
        var outline = IsPlain ? null : writer.Outline;
        var first = outline?.Reserve(items.Length) ?? Outline.NoParts;
        writer.Raw("["u8);
        for (var i = 0; i < items.Length; i++)
        {
            if (i > 0)
            {
                writer.Raw(","u8);
            }

            var start = writer.Length;
            if (items[i] is { } item)
            {
                Item.Write(writer, item);
            }
            else
            {
                writer.Raw("null"u8);
            }

            outline?.Note(first + i, start, writer.Length);
        }

        writer.Raw("]"u8);
        outline?.End(first);
    }
}

/// <summary>An object with a closed set of members.</summary>
public sealed class ObjectShape : Shape
{
    /// <summary>The reader marks the members that it has met in one word.</summary>
    public const int MostMembers = 64;

    private readonly MemberShape[] _members;
    private readonly MemberShape[] _sorted;
    private readonly (int Place, MemberShape Member)[] _canonical;

    /// <param name="type">The type.</param>
    /// <param name="members">Its members in the order of declaration.</param>
    public ObjectShape(Type type, IReadOnlyList<MemberShape> members)
    {
        if (members.Count > MostMembers)
        {
            throw new InvalidOperationException($"{type.Name} has {members.Count} members; an object of the contract has at most {MostMembers}.");
        }

        (Type, _members) = (type, [.. members]);
        _sorted = [.. members.OrderBy(member => member.Name, StringComparer.Ordinal)];
        _canonical = [.. _sorted.Where(member => !member.IsWording).Select(member => (Array.IndexOf(_members, member), member))];
    }

    public Type Type { get; }

    /// <summary>In the order of declaration.</summary>
    public IReadOnlyList<MemberShape> Members => _members;

    /// <summary>In the order of the canonical form: by UTF-16 code units of the name.</summary>
    public IReadOnlyList<MemberShape> Sorted => _sorted;

    internal override bool IsPlain => false;

    internal override void Write(ShapeWriter writer, object value)
    {
        if (writer.TryWriteKnown(value))
        {
            return;
        }

        var members = writer.Form == JsonForm.Sent ? _members : _sorted;
        var outline = writer.Outline;
        var first = outline?.Reserve(_members.Length) ?? Outline.NoParts;
        writer.Raw("{"u8);
        var isFirst = true;
        for (var i = 0; i < members.Length; i++)
        {
            // A comma stands before every member but the first.
            var start = writer.Length + (isFirst ? 0 : 1);
            isFirst &= !members[i].TryWrite(writer, value, isFirst);
            outline?.Note(first + i, start, writer.Length);
        }

        writer.Raw("}"u8);
        outline?.End(first);
    }

    internal override void Copy(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        // Every member comes with the brace or comma before it, which then becomes the one that belongs there.
        var before = (byte)'{';
        foreach (var (place, member) in _canonical)
        {
            var written = outline[value.Parts + place];
            var start = member.IsPlain ? written.End : written.Start + member.NameLength;
            var copied = canonical.Take(start - written.Start + 1);
            sent[(written.Start - 1)..start].CopyTo(copied);
            copied[0] = before;
            before = (byte)',';
            if (!member.IsPlain)
            {
                CopyNullable(member.Shape, canonical, sent, outline, written with { Start = start });
            }
        }

        canonical.Raw(before == '{' ? "{}"u8 : "}"u8);
    }

    /// <summary>Where the value of a member lies in what was outlined.</summary>
    internal Range ValueOf(string member, Outline outline, int parts)
    {
        var place = Array.FindIndex(_members, one => one.Name == member);
        var written = outline[parts + place];
        return (written.Start + _members[place].NameLength)..written.End;
    }
}
