using System.Reflection;
using System.Text;
using CalcService.Api.Contract;
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

    /// <summary>The version of the contract that first had it; null where the first version did.</summary>
    public Version? Since { get; } = property.GetCustomAttribute<SinceAttribute>() is { Contract: var contract } ? new(contract) : null;

    /// <summary>Whether a version of the contract has it.</summary>
    public bool IsIn(Version contract) => Since is null || Since <= contract;

    /// <summary>Whether no calculation reads it: it comes back with the record.</summary>
    public bool IsKept { get; } = property.IsDefined(typeof(KeptAttribute));

    /// <summary>Whether digests cover it.</summary>
    public bool IsDigested { get; } = !property.IsDefined(typeof(UndigestedAttribute)) && !property.IsDefined(typeof(WordsAttribute));

    /// <summary>Whether a verification takes no other than it computes.</summary>
    public bool Counts { get; } = property.GetCustomAttribute<UndigestedAttribute>()?.Counts ?? !property.IsDefined(typeof(WordsAttribute));

    /// <summary>Whether it is worded in the language of the answer.</summary>
    public bool IsWords { get; } = property.IsDefined(typeof(WordsAttribute));

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
    private readonly byte[] _writtenNull;

    public MemberShape(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
        : base(property, name, shape, required, nullable)
    {
        _get = property.GetMethod!.CreateDelegate<Func<TOwner, TValue>>();
        _set = property.SetMethod?.CreateDelegate<Action<TOwner, TValue>>();
        _writtenName = Encoding.UTF8.GetBytes($",\"{name}\":");
        _writtenNull = [.. _writtenName, .. "null"u8];
    }

    public override object? ValueIn(object owner) => _get((TOwner)owner);

    public override void Assign(object owner, object value) => _set!((TOwner)owner, (TValue)value);

    internal sealed override bool TryWrite(ShapeWriter writer, object owner, bool isFirst)
    {
        var value = _get((TOwner)owner);
        if (value is null && writer.Form == JsonForm.Canonical)
        {
            return false;
        }

        // With the comma before it where it isn't the first.
        writer.Raw((value is null ? _writtenNull : _writtenName).AsSpan(isFirst ? 1 : 0));
        if (value is not null)
        {
            Write(writer, value);
        }

        return true;
    }

    private protected virtual void Write(ShapeWriter writer, TValue value) => Shape.Write(writer, value!);
}

/// <summary>A member of a value type.</summary>
public sealed class ValueMemberShape<TOwner, TValue>(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
    : MemberShape<TOwner, TValue>(property, name, shape, required, nullable)
    where TOwner : class
    where TValue : struct
{
    private readonly IValueShape<TValue> _shape = (IValueShape<TValue>)shape;

    private protected override void Write(ShapeWriter writer, TValue value) => _shape.Write(writer, value);
}

/// <summary>A member of a value type that may be missing.</summary>
public sealed class OptionalMemberShape<TOwner, TValue>(PropertyInfo property, string name, Shape shape, bool required, bool nullable)
    : MemberShape<TOwner, TValue?>(property, name, shape, required, nullable)
    where TOwner : class
    where TValue : struct
{
    private readonly IValueShape<TValue> _shape = (IValueShape<TValue>)shape;

    private protected override void Write(ShapeWriter writer, TValue? value) => _shape.Write(writer, value!.Value);
}
