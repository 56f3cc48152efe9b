using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CalcService.Api.Reading;

namespace CalcService.Api.Canonical;

/// <summary>
/// The canonical form (RFC 8785) of a contract object: members by UTF-16 code units, shortest numbers, no white
/// space. A request is written in SI with absent members left out, so two requests that mean the same are the same
/// bytes; an answer is written as it stands, nulls too, without its wording.
/// </summary>
public sealed class CanonicalJson : IDisposable
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, 32).Select(c => (char)c), '"', '\\']);

    private readonly IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? _known;
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(16384);
    private int _length;

    private CanonicalJson(bool isRequest, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known) => (IsRequest, _known) = (isRequest, known);

    /// <summary>Whether it is written in SI, without what is left out.</summary>
    internal bool IsRequest { get; }

    /// <summary>A request, in SI, without what it leaves out.</summary>
    /// <param name="shape">Its shape.</param>
    /// <param name="value">The request.</param>
    /// <param name="known">Parts whose canonical form is there already, by reference.</param>
    public static ReadOnlyMemory<byte> Request(ObjectShape shape, object value, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known = null) =>
        Write(shape, value, isRequest: true, known);

    /// <summary>A part of an answer, with its own units.</summary>
    public static ReadOnlyMemory<byte> Answer(ObjectShape shape, object value) => Write(shape, value, isRequest: false, known: null);

    private static byte[] Write(ObjectShape shape, object value, bool isRequest, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known)
    {
        using var form = new CanonicalJson(isRequest, known);
        shape.Write(form, value);
        return form.Written.ToArray();
    }

    private ReadOnlySpan<byte> Written => _bytes.AsSpan(0, _length);

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }

    /// <summary>Writes a part whose canonical form is there already; false where it isn't.</summary>
    internal bool TryWriteKnown(object value)
    {
        if (_known is null || !_known.TryGetValue(value, out var known))
        {
            return false;
        }

        Raw(known.Span);
        return true;
    }

    /// <summary>JSON of somebody else, members in the same order and numbers in the same form.</summary>
    internal void Any(JsonElement any)
    {
        switch (any.ValueKind)
        {
            case JsonValueKind.Object:
                Raw("{"u8);
                var isFirst = true;
                foreach (var member in any.EnumerateObject().OrderBy(member => member.Name, StringComparer.Ordinal))
                {
                    Comma(ref isFirst);
                    Text(member.Name);
                    Raw(":"u8);
                    Any(member.Value);
                }

                Raw("}"u8);
                break;
            case JsonValueKind.Array:
                Raw("["u8);
                var isFirstItem = true;
                foreach (var item in any.EnumerateArray())
                {
                    Comma(ref isFirstItem);
                    Any(item);
                }

                Raw("]"u8);
                break;
            case JsonValueKind.String:
                Text(any.GetString()!);
                break;
            case JsonValueKind.Number:
                Number(any.GetDouble());
                break;
            default:
                Raw(any.GetRawText());
                break;
        }
    }

    private void Comma(ref bool isFirst)
    {
        if (!isFirst)
        {
            Raw(","u8);
        }

        isFirst = false;
    }

    internal void Text(string text)
    {
        var rest = text.AsSpan();
        if (!rest.ContainsAny(Escaped))
        {
            var room = Room(Encoding.UTF8.GetMaxByteCount(text.Length) + 2);
            var length = Encoding.UTF8.GetBytes(text, room[1..]);
            room[0] = room[length + 1] = (byte)'"';
            _length += length + 2;
            return;
        }

        Raw("\""u8);
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

    internal void Integer(long number)
    {
        _ = number.TryFormat(Room(CanonicalNumber.MostBytes), out var length, default, CultureInfo.InvariantCulture);
        _length += length;
    }

    internal void Number(double number) => _length += CanonicalNumber.Write(number, Room(CanonicalNumber.MostBytes));

    internal void Raw(ReadOnlySpan<byte> bytes)
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
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(2 * _bytes.Length, _length + bytes));
            Written.CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }

        return _bytes.AsSpan(_length);
    }
}
