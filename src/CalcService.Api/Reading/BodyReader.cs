using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Unicode;

namespace CalcService.Api.Reading;

/// <summary>
/// Reads a body against its shape, strictly, without throwing, and collects every error with its pointer. Unreadable
/// (400): syntax, UTF-8, unknown or duplicate members, wrong JSON type. Readable but not computable (422): a required
/// member absent, text that is no such word, unit or date, numbers that are not finite or not whole. null is absent.
/// </summary>
public ref partial struct BodyReader
{
    private readonly ReadErrors _errors = new();
    private JsonCursor _cursor;

    private BodyReader(ReadOnlySpan<byte> body) => _cursor = new JsonCursor(body);

    /// <summary>Reads a whole body.</summary>
    public static ReadResult Read(ReadOnlySpan<byte> body, ObjectShape shape)
    {
        if (!Utf8.IsValid(body))
        {
            return new(null, [new("", "utf8", "The body is not UTF-8.", true)]);
        }

        var reader = new BodyReader(body);
        if (reader._cursor.Peek() == (byte)'n')
        {
            reader.WrongType("an object");
        }

        var value = reader._errors.All.Count == 0 ? reader.ReadValue(shape) : null;
        reader._cursor.TakeEnd();
        if (reader._cursor.Failed)
        {
            reader._errors.NotJson($"Not JSON: {reader._cursor.Error} at byte {reader._cursor.Position}.");
        }

        return new(value, reader._errors.All);
    }

    /// <summary>A value of the shape; null where it is absent or wrong, and wrong is reported.</summary>
    private object? ReadValue(Shape shape)
    {
        var next = _cursor.Peek();
        if (next == (byte)'n')
        {
            _cursor.TakeWord("null"u8);
            return null;
        }

        return (shape, next) switch
        {
            (AnyShape, (byte)'{') => ReadAny(),
            (ObjectShape expected, (byte)'{') => ReadObject(expected),
            (ListShape expected, (byte)'[') => ReadList(expected),
            (QuantityShape expected, (byte)'{') => ReadQuantity(expected.Kind!),
            (TextShape or EnumShape or DateShape or InstantShape, (byte)'"') => ReadText(shape),
            (IntegerShape or DecimalShape, (byte)'-' or (>= (byte)'0' and <= (byte)'9')) => ReadNumber(shape),
            _ => WrongType(shape),
        };
    }

    private object? ReadObject(ObjectShape shape)
    {
        if (!TakeOpen((byte)'{', (byte)'}', out var isEmpty))
        {
            return null;
        }

        var value = RuntimeHelpers.GetUninitializedObject(shape.Type);
        ulong seen = 0, given = 0;
        var more = !isEmpty;
        while (more && TakeName(out var raw, out var name))
        {
            var index = IndexOf(shape, raw, name);
            if (index < 0 || (seen & (1UL << index)) != 0)
            {
                ReportMember(name ?? Encoding.UTF8.GetString(raw), shape, isDuplicate: index >= 0);
                _cursor.Skip(_errors.Depth + 1);
            }
            else
            {
                seen |= 1UL << index;
                given |= ReadMember(shape.Members[index], value) ? 1UL << index : 0;
            }

            more = _cursor.TakeSeparator((byte)'}');
        }

        if (!_cursor.Failed)
        {
            ReportMissing(shape, given);
        }

        return value;
    }

    /// <summary>Reads a member into its owner; false where it is absent. One that is wrong and reported is not absent.</summary>
    private bool ReadMember(MemberShape member, object owner)
    {
        var isNull = _cursor.Peek() == (byte)'n';
        _errors.Enter(member.Name);
        if (ReadValue(member.Shape) is { } read)
        {
            member.Assign(owner, read);
        }

        _errors.Leave();
        return !isNull;
    }

    private object? ReadList(ListShape shape)
    {
        if (!TakeOpen((byte)'[', (byte)']', out var isEmpty))
        {
            return null;
        }

        var items = new List<object>();
        var count = 0;
        for (var more = !isEmpty; more; more = _cursor.TakeSeparator((byte)']'))
        {
            if (count++ < shape.MaxItems)
            {
                ReadItem(shape, items, count - 1);
            }
            else
            {
                _cursor.Skip(_errors.Depth + 1);
            }
        }

        if (count > shape.MaxItems)
        {
            _errors.NotComputable("too-many-items", $"{count} items; at most {shape.MaxItems} are allowed.");
        }

        return shape.Build(items);
    }

    private void ReadItem(ListShape shape, List<object> items, int index)
    {
        var isNull = _cursor.Peek() == (byte)'n';
        _errors.Enter(index);
        if (ReadValue(shape.Item) is { } item)
        {
            items.Add(item);
        }
        else if (isNull && !_cursor.Failed)
        {
            _errors.NotComputable("required", "An item of a list can't be null.");
        }

        _errors.Leave();
    }

    /// <summary>Takes the start of an object or list, and its end too where it is empty.</summary>
    private bool TakeOpen(byte open, byte close, out bool isEmpty)
    {
        isEmpty = false;
        if (!_cursor.Enter(_errors.Depth) || !_cursor.Take(open))
        {
            return false;
        }

        isEmpty = _cursor.Peek() == close && _cursor.Take(close);
        return true;
    }

    /// <summary>Takes a member's name and its colon; the name is decoded only where it has escapes.</summary>
    private bool TakeName(out ReadOnlySpan<byte> raw, out string? name)
    {
        name = null;
        if (!_cursor.TakeString(out raw, out var escaped))
        {
            return false;
        }

        if (escaped)
        {
            name = Decode(raw, escaped) ?? "\uFFFD";
        }

        return _cursor.Take((byte)':');
    }

    /// <summary>The text; null, and said, where it holds half a surrogate pair: no text, nor a name, can be made of it later on.</summary>
    private string? Decode(scoped ReadOnlySpan<byte> raw, bool escaped)
    {
        var text = JsonText.Decode(raw, escaped);
        if (text is null)
        {
            _errors.Unreadable("surrogate", "The text holds half a surrogate pair.");
        }

        return text;
    }

    private static int IndexOf(ObjectShape shape, ReadOnlySpan<byte> raw, string? decoded)
    {
        for (var i = 0; i < shape.Members.Count; i++)
        {
            if (decoded is null ? raw.SequenceEqual(shape.Members[i].Utf8Name) : decoded == shape.Members[i].Name)
            {
                return i;
            }
        }

        return -1;
    }

    private readonly void ReportMissing(ObjectShape shape, ulong given)
    {
        for (var i = 0; i < shape.Members.Count; i++)
        {
            if (shape.Members[i].Required && (given & (1UL << i)) == 0)
            {
                _errors.NotComputableAt(shape.Members[i].Name, "required", $"“{shape.Members[i].Name}” is required.");
            }
        }
    }

    private readonly void ReportMember(string name, ObjectShape shape, bool isDuplicate) =>
        ReportMember(name, shape.Members.Select(member => member.Name), isDuplicate);

    private readonly void ReportMember(string name, IEnumerable<string> known, bool isDuplicate)
    {
        var shown = ReadErrors.Show(name);
        if (isDuplicate)
        {
            _errors.UnreadableAt(shown, "duplicate-member", $"“{shown}” stands there twice.");
        }
        else if (_errors.IsFull)
        {
            _errors.UnreadableAt(shown, "unknown-member", "");
        }
        else
        {
            var meant = known.FirstOrDefault(member => string.Equals(member, name, StringComparison.OrdinalIgnoreCase));
            var hint = meant is null ? $"known: {string.Join(", ", known)}." : $"did you mean “{meant}”?";
            _errors.UnreadableAt(shown, "unknown-member", $"“{shown}” is not known here; {hint}");
        }
    }

    private object? WrongType(Shape shape) => WrongType(shape switch
    {
        ObjectShape or AnyShape => "an object",
        ListShape => "a list",
        QuantityShape => "a quantity {value, unit}",
        IntegerShape or DecimalShape => "a number",
        _ => "a text",
    });

    private object? WrongType(string expected)
    {
        if (_cursor.Skip(_errors.Depth))
        {
            _errors.Unreadable("type", $"Not of the right type; expected {expected}.");
        }

        return null;
    }
}
