using System.Reflection;
using System.Text;
using CalcService.Api.Units;

namespace CalcService.Api.Reading;

/// <summary>What a JSON value of the contract looks like. One table of shapes drives reader, canonical form, schema and fuzzer.</summary>
public abstract class Shape;

/// <summary>A string of limited length without control and direction characters.</summary>
public sealed class TextShape(int maxLength) : Shape
{
    public int MaxLength { get; } = maxLength;
}

/// <summary>A whole number; one that may exceed 32 bits in answers only.</summary>
public sealed class IntegerShape(bool isLong) : Shape
{
    public bool IsLong { get; } = isLong;
}

/// <summary>A plain decimal number, such as a cost.</summary>
public sealed class DecimalShape : Shape;

/// <summary>True or false; answers only.</summary>
public sealed class BooleanShape : Shape;

/// <summary>A plain number; answers only.</summary>
public sealed class NumberShape : Shape;

/// <summary>A calendar date, yyyy-MM-dd.</summary>
public sealed class DateShape : Shape;

/// <summary>A date-time with its offset.</summary>
public sealed class InstantShape : Shape;

/// <summary>Any JSON value; in a request an object with members of any name.</summary>
public sealed class AnyShape : Shape;

/// <summary>A quantity of one kind, or of any kind where <see cref="Kind"/> is null (answers only).</summary>
public sealed class QuantityShape(UnitKind? kind) : Shape
{
    public UnitKind? Kind { get; } = kind;
}

/// <summary>One of some words.</summary>
public sealed class EnumShape(Type type, IReadOnlyList<KeyValuePair<string, object>> words) : Shape
{
    private readonly Dictionary<object, string> _names = words.ToDictionary(word => word.Value, word => word.Key);

    public Type Type { get; } = type;

    public IReadOnlyList<KeyValuePair<string, object>> Words { get; } = words;

    public string NameOf(object value) => _names[value];
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
}

/// <summary>An object with a closed set of members.</summary>
public sealed class ObjectShape(Type type, IReadOnlyList<MemberShape> members) : Shape
{
    /// <summary>The reader marks the members that it has met in one word.</summary>
    public const int MostMembers = 64;

    public Type Type { get; } = type;

    /// <summary>In the order of declaration.</summary>
    public IReadOnlyList<MemberShape> Members { get; } = members.Count <= MostMembers
        ? members
        : throw new InvalidOperationException($"{type.Name} has {members.Count} members; an object of the contract has at most {MostMembers}.");

    /// <summary>In the order of the canonical form: by UTF-16 code units of the name.</summary>
    public IReadOnlyList<MemberShape> Sorted { get; } = [.. members.OrderBy(member => member.Name, StringComparer.Ordinal)];
}

/// <summary>A member of an object.</summary>
public abstract class MemberShape(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
{
    private readonly byte[] _utf8Name = Encoding.UTF8.GetBytes(name);
    private readonly byte[] _canonicalName = Encoding.UTF8.GetBytes($"\"{name}\":");

    public PropertyInfo Property { get; } = property;

    public string Name { get; } = name;

    public ReadOnlySpan<byte> Utf8Name => _utf8Name;

    /// <summary>Quoted, with its colon.</summary>
    public ReadOnlySpan<byte> CanonicalName => _canonicalName;

    public Shape Shape { get; } = shape;

    /// <summary>Whether a request without it can't be computed.</summary>
    public bool Required { get; } = required;

    public bool Nullable { get; } = nullable;

    /// <summary>Whether it only words what other members say.</summary>
    public bool IsWording { get; } = property.IsDefined(typeof(WordingAttribute));

    public abstract object? ValueIn(object owner);

    public abstract void Assign(object owner, object value);
}

/// <summary>A member with delegates made once, so that reading needs no reflection.</summary>
public sealed class MemberShape<TOwner, TValue> : MemberShape
    where TOwner : class
{
    private readonly Func<TOwner, TValue> _get;
    private readonly Action<TOwner, TValue>? _set;

    public MemberShape(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
        : base(property, name, shape, required, nullable)
    {
        _get = property.GetMethod!.CreateDelegate<Func<TOwner, TValue>>();
        _set = property.SetMethod?.CreateDelegate<Action<TOwner, TValue>>();
    }

    public override object? ValueIn(object owner) => _get((TOwner)owner);

    public override void Assign(object owner, object value) => _set!((TOwner)owner, (TValue)value);
}
