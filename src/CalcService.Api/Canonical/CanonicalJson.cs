using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CalcService.Api.Reading;
using CalcService.Api.Units;

namespace CalcService.Api.Canonical;

/// <summary>
/// The canonical form (RFC 8785) of a contract object: members by UTF-16 code units, shortest numbers, no white
/// space. A request is written in SI with absent members left out, so two requests that mean the same are the same
/// bytes; an answer is written as it stands, nulls too, without its wording.
/// </summary>
public sealed class CanonicalJson
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, 32).Select(c => (char)c), '"', '\\']);

    private readonly bool _isRequest;
    private readonly IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? _known;
    private byte[] _bytes = new byte[4096];
    private int _length;

    private CanonicalJson(bool isRequest, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known) => (_isRequest, _known) = (isRequest, known);

    /// <summary>A request, in SI, without what it leaves out.</summary>
    /// <param name="shape">Its shape.</param>
    /// <param name="value">The request.</param>
    /// <param name="known">Parts whose canonical form is there already, by reference.</param>
    public static ReadOnlyMemory<byte> Request(ObjectShape shape, object value, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known = null) =>
        Write(shape, value, isRequest: true, known);

    /// <summary>A part of an answer, with its own units.</summary>
    public static ReadOnlyMemory<byte> Answer(ObjectShape shape, object value) => Write(shape, value, isRequest: false, known: null);

    private static ReadOnlyMemory<byte> Write(ObjectShape shape, object value, bool isRequest, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known)
    {
        var writer = new CanonicalJson(isRequest, known);
        writer.WriteObject(shape, value);
        return writer._bytes.AsMemory(0, writer._length);
    }

    private void WriteValue(Shape shape, object? value)
    {
        switch (value)
        {
            case null:
                Raw("null"u8);
                break;
            case Quantity quantity:
                WriteQuantity((QuantityShape)shape, quantity);
                break;
            case string text:
                WriteText(text);
                break;
            case int number:
                Raw(number.ToString(CultureInfo.InvariantCulture));
                break;
            case long number:
                Raw(number.ToString(CultureInfo.InvariantCulture));
                break;
            case double number:
                WriteNumber(number);
                break;
            case decimal amount:
                WriteNumber((double)amount);
                break;
            case bool flag:
                Raw(flag ? "true"u8 : "false"u8);
                break;
            case DateOnly date:
                WriteText(Texts.Write(date));
                break;
            case DateTimeOffset instant:
                WriteText(Texts.Write(instant));
                break;
            case JsonElement any:
                WriteAny(any);
                break;
            case Enum word:
                WriteText(((EnumShape)shape).NameOf(word));
                break;
            case IEnumerable items:
                WriteList(((ListShape)shape).Item, items);
                break;
            default:
                WriteObject((ObjectShape)shape, value);
                break;
        }
    }

    private void WriteObject(ObjectShape shape, object owner)
    {
        if (_known is not null && _known.TryGetValue(owner, out var known))
        {
            Raw(known.Span);
            return;
        }

        Raw("{"u8);
        var first = true;
        foreach (var member in shape.Sorted)
        {
            if (member.IsWording)
            {
                continue;
            }

            var value = member.ValueIn(owner);
            if (value is null && _isRequest)
            {
                continue;
            }

            if (!first)
            {
                Raw(","u8);
            }

            first = false;
            Raw(member.CanonicalName);
            WriteValue(member.Shape, value);
        }

        Raw("}"u8);
    }

    /// <summary>JSON of somebody else, members in the same order and numbers in the same form.</summary>
    private void WriteAny(JsonElement any)
    {
        switch (any.ValueKind)
        {
            case JsonValueKind.Object:
                Joined("{"u8, any.EnumerateObject().OrderBy(member => member.Name, StringComparer.Ordinal), member =>
                {
                    WriteText(member.Name);
                    Raw(":"u8);
                    WriteAny(member.Value);
                }, "}"u8);
                break;
            case JsonValueKind.Array:
                Joined("["u8, any.EnumerateArray(), WriteAny, "]"u8);
                break;
            case JsonValueKind.String:
                WriteText(any.GetString()!);
                break;
            case JsonValueKind.Number:
                WriteNumber(any.GetDouble());
                break;
            default:
                Raw(any.GetRawText());
                break;
        }
    }

    private void Joined<T>(ReadOnlySpan<byte> open, IEnumerable<T> items, Action<T> write, ReadOnlySpan<byte> close)
    {
        Raw(open);
        var first = true;
        foreach (var item in items)
        {
            if (!first)
            {
                Raw(","u8);
            }

            first = false;
            write(item);
        }

        Raw(close);
    }

    private void WriteList(Shape item, IEnumerable items)
    {
        Joined("["u8, items.Cast<object>(), value => WriteValue(item, value), "]"u8);
    }

    private void WriteQuantity(QuantityShape shape, Quantity quantity)
    {
        var inSi = _isRequest && shape.Kind is not null;
        Raw("{\"unit\":"u8);
        WriteText(inSi ? shape.Kind!.Si.Code : quantity.Unit);
        Raw(",\"value\":"u8);
        WriteNumber(inSi ? quantity.Si : quantity.Value);
        Raw("}"u8);
    }

    private void WriteText(string text)
    {
        Raw("\""u8);
        var rest = text.AsSpan();
        while (rest.IndexOfAny(Escaped) is var stop and >= 0)
        {
            Raw(rest[..stop]);
            Raw(rest[stop] switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\b' => "\\b",
                '\t' => "\\t",
                '\n' => "\\n",
                '\f' => "\\f",
                '\r' => "\\r",
                var control => "\\u" + ((int)control).ToString("x4", CultureInfo.InvariantCulture),
            });
            rest = rest[(stop + 1)..];
        }

        Raw(rest);
        Raw("\""u8);
    }

    private void WriteNumber(double number) => _length += CanonicalNumber.Write(number, Room(CanonicalNumber.MostBytes));

    private void Raw(ReadOnlySpan<byte> bytes)
    {
        bytes.CopyTo(Room(bytes.Length));
        _length += bytes.Length;
    }

    private void Raw(ReadOnlySpan<char> text) => _length += Encoding.UTF8.GetBytes(text, Room(Encoding.UTF8.GetMaxByteCount(text.Length)));

    /// <summary>The rest of the buffer, with room for so many bytes.</summary>
    private Span<byte> Room(int bytes)
    {
        if (_bytes.Length - _length < bytes)
        {
            Array.Resize(ref _bytes, Math.Max(2 * _bytes.Length, _length + bytes));
        }

        return _bytes.AsSpan(_length);
    }
}
