using CalcService.Api.Contract;
using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>An array.</summary>
public abstract class ListShape(Shape item, ItemsAttribute? items) : Shape
{
    public Shape Item { get; } = item;

    public int LeastItems { get; } = items?.Least ?? 0;

    public int MostItems { get; } = items?.Most ?? ItemsAttribute.Usual;

    /// <summary>An array of the member's own type.</summary>
    public abstract object Build(IReadOnlyList<object> items);
}

/// <summary>An array with items of a type.</summary>
public sealed class ListShape<T>(Shape item, ItemsAttribute? items) : ListShape(item, items)
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
