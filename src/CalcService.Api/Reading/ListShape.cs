using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>An array.</summary>
public abstract class ListShape(Shape item, int maxItems) : Shape
{
    public Shape Item { get; } = item;

    public int MaxItems { get; } = maxItems;

    internal override bool IsPlain { get; } = item.IsPlain;

    /// <summary>An array of the member's own type.</summary>
    public abstract object Build(IReadOnlyList<object> items);

    private protected override void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        canonical.Raw("["u8);
        var bracket = value.End - 1;
        for (int place = value.Parts, start = value.Start + 1; start < bracket; start = outline[place++].End + 1)
        {
            if (place > value.Parts)
            {
                canonical.Raw(","u8);
            }

            Item.Copy(canonical, sent, outline, outline[place]);
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
