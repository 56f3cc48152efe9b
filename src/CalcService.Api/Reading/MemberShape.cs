using System.Reflection;
using System.Text;
using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>A member of an object.</summary>
public abstract class MemberShape(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
{
    private readonly byte[] _utf8Name = Encoding.UTF8.GetBytes(name);

    public PropertyInfo Property { get; } = property;

    public string Name { get; } = name;

    public ReadOnlySpan<byte> Utf8Name => _utf8Name;

    public Shape Shape { get; } = shape;

    /// <summary>Whether a request without it can't be computed.</summary>
    public bool Required { get; } = required;

    public bool Nullable { get; } = nullable;

    /// <summary>Whether it only words what other members say.</summary>
    public bool IsWording { get; } = property.IsDefined(typeof(WordingAttribute));

    public abstract object? ValueIn(object owner);

    public abstract void Assign(object owner, object value);

    /// <summary>Writes name and value; false where the form leaves the member out.</summary>
    internal abstract bool TryWrite(ShapeWriter writer, object owner, bool isFirst);
}

/// <summary>A member with delegates made once, so that reading and writing need no reflection.</summary>
public class MemberShape<TOwner, TValue> : MemberShape
    where TOwner : class
{
    private readonly Func<TOwner, TValue> _get;
    private readonly Action<TOwner, TValue>? _set;
    private readonly byte[] _writtenName;

    public MemberShape(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
        : base(property, name, shape, required, nullable)
    {
        _get = property.GetMethod!.CreateDelegate<Func<TOwner, TValue>>();
        _set = property.SetMethod?.CreateDelegate<Action<TOwner, TValue>>();
        _writtenName = Encoding.UTF8.GetBytes($",\"{name}\":");
    }

    public override object? ValueIn(object owner) => Get(owner);

    public override void Assign(object owner, object value) => _set!((TOwner)owner, (TValue)value);

    internal sealed override bool TryWrite(ShapeWriter writer, object owner, bool isFirst)
    {
        var value = Get(owner);
        if (value is null && writer.Form == JsonForm.CanonicalRequest)
        {
            return false;
        }

        // The comma before it stands where it isn't the first.
        writer.Raw(_writtenName.AsSpan(isFirst ? 1 : 0));
        if (value is null)
        {
            writer.Raw("null"u8);
        }
        else
        {
            Write(writer, value);
        }

        return true;
    }

    private protected virtual void Write(ShapeWriter writer, TValue value) => Shape.Write(writer, value!);

    private TValue Get(object owner) => _get((TOwner)owner);
}

/// <summary>A member of a value type.</summary>
public sealed class ValueMemberShape<TOwner, TValue>(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
    : MemberShape<TOwner, TValue>(property, name, shape, required, nullable)
    where TOwner : class
    where TValue : struct
{
    private readonly IValueShape<TValue> _value = (IValueShape<TValue>)shape;

    private protected override void Write(ShapeWriter writer, TValue value) => _value.Write(writer, value);
}

/// <summary>A member of a value type that may be missing.</summary>
public sealed class OptionalMemberShape<TOwner, TValue>(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
    : MemberShape<TOwner, TValue?>(property, name, shape, required, nullable)
    where TOwner : class
    where TValue : struct
{
    private readonly IValueShape<TValue> _value = (IValueShape<TValue>)shape;

    private protected override void Write(ShapeWriter writer, TValue? value) => _value.Write(writer, value!.Value);
}
