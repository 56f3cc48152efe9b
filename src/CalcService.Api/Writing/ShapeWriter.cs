using System.Buffers;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Reading;

namespace CalcService.Api.Writing;

/// <summary>A part of an object whose form is there already.</summary>
/// <param name="Part">The part, recognised by reference.</param>
/// <param name="Written">Its form.</param>
public readonly record struct KnownPart(object? Part, ReadOnlyMemory<byte> Written);

/// <summary>
/// Writes objects of the contract by their shapes: numbers as RFC 8785 has them, texts as they are where nothing must
/// be escaped, no white space. What is sent and what digests cover are so written alike.
/// </summary>
/// <param name="form">Which form is written.</param>
/// <param name="known">A part whose form is there already.</param>
/// <param name="contract">The version of the contract whose members a digest covers; null for today's.</param>
public sealed class ShapeWriter(JsonForm form, KnownPart known = default, Version? contract = null) : IDisposable
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, 32).Select(c => (char)c), '"', '\\']);

    /// <summary>Larger buffers aren't lent: the pool would keep them of every thread.</summary>
    private const int MostLent = 1 << 20;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(32768);
    private int _length;

    public JsonForm Form { get; } = form;

    /// <summary>The version of the contract whose members are written.</summary>
    public Version Contract { get; } = contract ?? ContractVersion.Current;

    /// <summary>What has been written, until the writer is disposed.</summary>
    public ReadOnlyMemory<byte> Written => _bytes.AsMemory(0, _length);

    /// <summary>Writes an object; its bytes are lent until the writer is disposed.</summary>
    public static ShapeWriter Write(JsonForm form, ObjectShape shape, object value, KnownPart known = default, Version? contract = null)
    {
        var writer = new ShapeWriter(form, known, contract);
        shape.Write(writer, value);
        return writer;
    }

    /// <summary>Writes an answer as it is sent.</summary>
    public static ShapeWriter WriteAnswer(object answer) => Write(JsonForm.Sent, ShapeTable.Of(answer.GetType()), answer);

    public void Dispose()
    {
        Return(_bytes);
        _bytes = [];
    }

    /// <summary>Writes a part whose form is there already; false where it isn't.</summary>
    public bool TryWriteKnown(object value)
    {
        var isKnown = ReferenceEquals(value, known.Part);
        if (isKnown)
        {
            Raw(known.Written.Span);
        }

        return isKnown;
    }

    /// <summary>JSON of somebody else: sent as it came, else in the canonical form.</summary>
    public void Any(JsonElement any)
    {
        if (Form == JsonForm.Sent)
        {
            Raw(JsonMarshal.GetRawUtf8Value(any));
            return;
        }

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

    public void Text(string text)
    {
        var rest = text.AsSpan();
        if (!rest.ContainsAny(Escaped))
        {
            var free = Rest(Encoding.UTF8.GetMaxByteCount(text.Length) + 2);
            var length = Encoding.UTF8.GetBytes(text, free[1..]);
            free[0] = free[length + 1] = (byte)'"';
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

    /// <summary>A date-time with its offset, the fraction of its second as short as it can be.</summary>
    public void Instant(DateTimeOffset instant)
    {
        // The round-trip format is the framework's fastest; it always has seven digits of the second.
        const int BeforeOffset = 27;
        const int Offset = 6;
        var rest = Rest(BeforeOffset + Offset + 2);
        _ = instant.TryFormat(rest[1..], out _, "O", CultureInfo.InvariantCulture);
        var length = rest[..(BeforeOffset + 1)].TrimEnd((byte)'0').TrimEnd((byte)'.').Length;
        rest.Slice(BeforeOffset + 1, Offset).CopyTo(rest[length..]);
        rest[0] = rest[length + Offset] = (byte)'"';
        _length += length + Offset + 1;
    }

    public void Integer(long number)
    {
        _ = number.TryFormat(Rest(CanonicalNumber.MostBytes), out var length, default, CultureInfo.InvariantCulture);
        _length += length;
    }

    /// <summary>An amount, sent with the places that it came with.</summary>
    public void Number(decimal number)
    {
        if (Form != JsonForm.Sent)
        {
            Number((double)number);
            return;
        }

        _ = number.TryFormat(Rest(CanonicalNumber.MostBytes), out var length, default, CultureInfo.InvariantCulture);
        _length += length;
    }

    /// <exception cref="RefusedException">JSON has no such number.</exception>
    public void Number(double number)
    {
        if (!double.IsFinite(number))
        {
            throw RefusedException.NotFinite();
        }

        _length += CanonicalNumber.Write(number, Rest(CanonicalNumber.MostBytes));
    }

    public void Raw(ReadOnlySpan<byte> bytes)
    {
        bytes.CopyTo(Rest(bytes.Length));
        _length += bytes.Length;
    }

    private void Raw(ReadOnlySpan<char> text) => _length += Encoding.UTF8.GetBytes(text, Rest(Encoding.UTF8.GetMaxByteCount(text.Length)));

    /// <summary>The rest of the buffer, with room for so many bytes.</summary>
    private Span<byte> Rest(int bytes)
    {
        if (_bytes.Length - _length < bytes)
        {
            var size = Math.Max(2 * _bytes.Length, _length + bytes);
            var larger = size <= MostLent ? ArrayPool<byte>.Shared.Rent(size) : GC.AllocateUninitializedArray<byte>(size);
            _bytes.AsSpan(0, _length).CopyTo(larger);
            Return(_bytes);
            _bytes = larger;
        }

        return _bytes.AsSpan(_length);
    }

    private static void Return(byte[] bytes)
    {
        if (bytes.Length <= MostLent)
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }
}
