using System.Buffers;

namespace CalcService.Api.Reading;

/// <summary>
/// Walks JSON text (RFC 8259) without ever throwing: a syntax error sets <see cref="Error"/> and every later call
/// returns false. The text has been checked to be UTF-8.
/// </summary>
public ref struct JsonCursor(ReadOnlySpan<byte> text)
{
    /// <summary>Deepest nesting of arrays and objects.</summary>
    public const int MaxDepth = 16;

    private static readonly SearchValues<byte> StringStops = SearchValues.Create([.. Enumerable.Range(0, 32).Select(c => (byte)c), (byte)'"', (byte)'\\']);

    private readonly ReadOnlySpan<byte> _text = text;
    private int _position;

    /// <summary>What is wrong, or null.</summary>
    public string? Error { get; private set; }

    public readonly bool Failed => Error is not null;

    /// <summary>Offset of the next byte.</summary>
    public readonly int Position => _position;

    /// <summary>What was taken since an offset.</summary>
    public readonly ReadOnlySpan<byte> Since(int start) => _text[start.._position];

    /// <summary>Moves over white space and shows the next byte; 0 at the end.</summary>
    public byte Peek()
    {
        while (_position < _text.Length)
        {
            var b = _text[_position];
            if (b is not ((byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
            {
                return b;
            }

            _position++;
        }

        return 0;
    }

    /// <summary>Takes one expected byte after white space.</summary>
    public bool Take(byte expected)
    {
        if (Failed)
        {
            return false;
        }

        if (Peek() != expected || _position == _text.Length)
        {
            return Fail($"expected '{(char)expected}'");
        }

        _position++;
        return true;
    }

    /// <summary>After an item: true to go on after a comma, false at the end or on an error.</summary>
    public bool TakeSeparator(byte end)
    {
        if (Failed)
        {
            return false;
        }

        var next = Peek();
        if (next == (byte)',')
        {
            _position++;
            return Peek() != end || Fail("a comma stands before the end");
        }

        return next == end ? !Take(end) : Fail($"expected ',' or '{(char)end}'");
    }

    /// <summary>Takes a string and gives the bytes between its quotes.</summary>
    public bool TakeString(out ReadOnlySpan<byte> raw, out bool escaped)
    {
        raw = default;
        escaped = false;
        if (!Take((byte)'"'))
        {
            return false;
        }

        var start = _position;
        while (true)
        {
            var stop = _text[_position..].IndexOfAny(StringStops);
            if (stop < 0)
            {
                _position = _text.Length;
                return Fail("a string has no end");
            }

            _position += stop;
            switch (_text[_position])
            {
                case (byte)'"':
                    raw = _text[start.._position];
                    _position++;
                    return true;
                case (byte)'\\':
                    escaped = true;
                    if (!TakeEscape())
                    {
                        return false;
                    }

                    break;
                default:
                    return Fail("a control character stands unescaped in a string");
            }
        }
    }

    /// <summary>Takes a number and gives its bytes.</summary>
    public bool TakeNumber(out ReadOnlySpan<byte> raw)
    {
        raw = default;
        Peek();
        var start = _position;
        TakeIf((byte)'-');
        if (!TakeIf((byte)'0') && !TakeDigits())
        {
            return Fail("expected a number");
        }

        if (TakeIf((byte)'.') && !TakeDigits())
        {
            return Fail("expected digits after the point");
        }

        if (TakeIf((byte)'e') || TakeIf((byte)'E'))
        {
            if (!TakeIf((byte)'+'))
            {
                TakeIf((byte)'-');
            }

            if (!TakeDigits())
            {
                return Fail("expected digits in the exponent");
            }
        }

        if (_position < _text.Length && (char.IsAsciiLetterOrDigit((char)_text[_position]) || _text[_position] is (byte)'.' or (byte)'+' or (byte)'-'))
        {
            return Fail("not a JSON number");
        }

        raw = _text[start.._position];
        return true;
    }

    /// <summary>Takes true, false or null.</summary>
    public bool TakeWord(ReadOnlySpan<byte> word)
    {
        if (Failed)
        {
            return false;
        }

        Peek();
        if (!_text[_position..].StartsWith(word))
        {
            return Fail("expected a JSON value");
        }

        _position += word.Length;
        return _position == _text.Length || !char.IsAsciiLetterOrDigit((char)_text[_position]) || Fail("expected a JSON value");
    }

    /// <summary>Takes a whole value without looking at it.</summary>
    public bool Skip(int depth)
    {
        switch (Peek())
        {
            case (byte)'{':
                return SkipItems(depth, (byte)'{', (byte)'}');
            case (byte)'[':
                return SkipItems(depth, (byte)'[', (byte)']');
            case (byte)'"':
                return TakeString(out _, out _);
            case (byte)'t':
                return TakeWord("true"u8);
            case (byte)'f':
                return TakeWord("false"u8);
            case (byte)'n':
                return TakeWord("null"u8);
            default:
                return !Failed && TakeNumber(out _);
        }
    }

    /// <summary>Whether one more level of nesting is allowed; an error if not.</summary>
    public bool Enter(int depth) => depth < MaxDepth || Fail($"nested deeper than {MaxDepth}");

    /// <summary>Nothing but white space may follow.</summary>
    public bool TakeEnd()
    {
        if (Failed)
        {
            return false;
        }

        Peek();
        return _position == _text.Length || Fail("something stands after the end");
    }

    private bool SkipItems(int depth, byte open, byte close)
    {
        if (!Enter(depth) || !Take(open))
        {
            return false;
        }

        if (Peek() == close)
        {
            return Take(close);
        }

        do
        {
            if (open == (byte)'{' && !(TakeString(out _, out _) && Take((byte)':')))
            {
                return false;
            }

            if (!Skip(depth + 1))
            {
                return false;
            }
        }
        while (TakeSeparator(close));
        return !Failed;
    }

    private bool TakeEscape()
    {
        _position++;
        var kind = _position < _text.Length ? _text[_position] : (byte)0;
        if (kind == (byte)'u')
        {
            if (_position + 5 > _text.Length || JsonText.Hex(_text.Slice(_position + 1, 4)) < 0)
            {
                return Fail("an escape is not four hexadecimal digits");
            }

            _position += 5;
            return true;
        }

        if (kind == 0 || !"\"\\/bfnrt"u8.Contains(kind))
        {
            return Fail("an unknown escape");
        }

        _position++;
        return true;
    }

    private bool TakeIf(byte b)
    {
        if (_position < _text.Length && _text[_position] == b)
        {
            _position++;
            return true;
        }

        return false;
    }

    private bool TakeDigits()
    {
        var start = _position;
        while (_position < _text.Length && char.IsAsciiDigit((char)_text[_position]))
        {
            _position++;
        }

        return _position > start;
    }

    private bool Fail(string error)
    {
        Error ??= error;
        return false;
    }
}
