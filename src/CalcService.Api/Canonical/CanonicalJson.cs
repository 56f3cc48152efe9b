using System.Buffers;
using System.Collections;
using System.Globalization;
using System.Text;
using CalcService.Api.Reading;
using CalcService.Api.Units;

namespace CalcService.Api.Canonical;

/// <summary>
/// The canonical form (RFC 8785) of a contract object: members by UTF-16 code units, shortest numbers, no white
/// space. A request is written in SI with absent members left out, so two requests that mean the same are the same
/// bytes; an answer is written as it stands, nulls too.
/// </summary>
public sealed class CanonicalJson
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, 32).Select(c => (char)c), '"', '\\']);

    private readonly ArrayBufferWriter<byte> _out = new(4096);
    private readonly bool _isRequest;

    private CanonicalJson(bool isRequest) => _isRequest = isRequest;

    /// <summary>A request, in SI, without what it leaves out.</summary>
    public static ReadOnlyMemory<byte> Request(ObjectShape shape, object value) => Write(shape, value, isRequest: true);

    /// <summary>A part of an answer, with its own units.</summary>
    public static ReadOnlyMemory<byte> Answer(ObjectShape shape, object value) => Write(shape, value, isRequest: false);

    private static ReadOnlyMemory<byte> Write(ObjectShape shape, object value, bool isRequest)
    {
        var writer = new CanonicalJson(isRequest);
        writer.WriteObject(shape, value);
        return writer._out.WrittenMemory;
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
                Raw(CanonicalNumber.Write(number));
                break;
            case decimal amount:
                Raw(CanonicalNumber.Write((double)amount));
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
        Raw("{"u8);
        var first = true;
        foreach (var member in shape.Sorted)
        {
            var value = member.ValueIn(owner);
            if (value is null && _isRequest)
            {
                continue;
            }

            Raw(first ? "\""u8 : ",\""u8);
            first = false;
            Raw(member.Utf8Name);
            Raw("\":"u8);
            WriteValue(member.Shape, value);
        }

        Raw("}"u8);
    }

    private void WriteList(Shape item, IEnumerable items)
    {
        Raw("["u8);
        var first = true;
        foreach (var value in items)
        {
            if (!first)
            {
                Raw(","u8);
            }

            first = false;
            WriteValue(item, value);
        }

        Raw("]"u8);
    }

    private void WriteQuantity(QuantityShape shape, Quantity quantity)
    {
        var inSi = _isRequest && shape.Kind is not null;
        Raw("{\"unit\":"u8);
        WriteText(inSi ? shape.Kind!.Si.Code : quantity.Unit);
        Raw(",\"value\":"u8);
        Raw(CanonicalNumber.Write(inSi ? quantity.Si : quantity.Value));
        Raw("}"u8);
    }

    private void WriteText(string text)
    {
        Raw("\""u8);
        var rest = text.AsSpan();
        while (rest.IndexOfAny(Escaped) is var stop and >= 0)
        {
            Encoding.UTF8.GetBytes(rest[..stop], _out);
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

        Encoding.UTF8.GetBytes(rest, _out);
        Raw("\""u8);
    }

    private void Raw(ReadOnlySpan<byte> bytes) => _out.Write(bytes);

    private void Raw(string ascii) => Encoding.UTF8.GetBytes(ascii, _out);
}
