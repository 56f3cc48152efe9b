using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Unicode;
using CalcService.Api.Units;

namespace CalcService.Api.Reading;

/// <summary>
/// Reads a body against its shape, strictly, without throwing, and collects every error with its pointer. Unreadable
/// (400): syntax, UTF-8, unknown or duplicate members, wrong JSON type. Readable but not computable (422): a required
/// member absent, text that is no such word, unit or date, numbers that are not finite or not whole. null is absent.
/// </summary>
public ref struct BodyReader
{
    /// <summary>Errors reported at the most; one more says that there were more.</summary>
    public const int MaxErrors = 100;

    private readonly List<ReadError> _errors = [];
    private readonly object[] _path = new object[JsonCursor.MaxDepth + 1];
    private JsonCursor _cursor;
    private int _depth;

    private BodyReader(ReadOnlySpan<byte> body) => _cursor = new JsonCursor(body);

    /// <summary>Reads a whole body.</summary>
    public static ReadResult Read(ReadOnlySpan<byte> body, ObjectShape shape)
    {
        if (!Utf8.IsValid(body))
        {
            return new(null, [new("", "utf8", "The body is not UTF-8.", true)]);
        }

        var reader = new BodyReader(body);
        var value = reader.ReadValue(shape);
        reader._cursor.TakeEnd();
        if (reader._cursor.Failed)
        {
            reader.AddAlways(new("", "syntax", $"Not JSON: {reader._cursor.Error} at byte {reader._cursor.Position}.", true));
        }

        return new(value, reader._errors);
    }

    private object? ReadValue(Shape shape)
    {
        var next = _cursor.Peek();
        if (next == (byte)'n')
        {
            if (_cursor.TakeWord("null"u8) && _depth == 0)
            {
                Unreadable("type", "The body is null; an object is expected.");
            }

            return null;
        }

        return (shape, next) switch
        {
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
        if (!_cursor.Enter(_depth) || !_cursor.Take((byte)'{'))
        {
            return null;
        }

        var value = RuntimeHelpers.GetUninitializedObject(shape.Type);
        ulong seen = 0, set = 0;
        if (_cursor.Peek() == (byte)'}')
        {
            _cursor.Take((byte)'}');
        }
        else
        {
            do
            {
                if (!TakeName(out var raw, out var escaped, out var name))
                {
                    return value;
                }

                var index = IndexOf(shape, raw, escaped ? name : null);
                if (index < 0 || (seen & (1UL << index)) != 0)
                {
                    SkipMember(shape, name ?? Encoding.UTF8.GetString(raw), isDuplicate: index >= 0);
                    continue;
                }

                seen |= 1UL << index;
                var member = shape.Members[index];
                Push(member.Name);
                if (ReadValue(member.Shape) is { } read)
                {
                    member.Assign(value, read);
                    set |= 1UL << index;
                }
                else if (_errors.Count > 0)
                {
                    // Either null, which is absent, or wrong and reported; a member that was reported is not missing as well.
                    set |= WasReported() ? 1UL << index : 0;
                }

                Pop();
            }
            while (_cursor.TakeSeparator((byte)'}'));
        }

        if (!_cursor.Failed)
        {
            ReportMissing(shape, set);
        }

        return value;
    }

    private readonly bool WasReported()
    {
        var pointer = Pointer();
        return _errors.Exists(error => error.Pointer == pointer || error.Pointer.StartsWith(pointer + "/", StringComparison.Ordinal));
    }

    private void ReportMissing(ObjectShape shape, ulong set)
    {
        for (var i = 0; i < shape.Members.Count; i++)
        {
            if (shape.Members[i].Required && (set & (1UL << i)) == 0)
            {
                Push(shape.Members[i].Name);
                NotComputable("required", $"\"{shape.Members[i].Name}\" is required.");
                Pop();
            }
        }
    }

    private object? ReadList(ListShape shape)
    {
        if (!_cursor.Enter(_depth) || !_cursor.Take((byte)'['))
        {
            return null;
        }

        var items = new List<object>();
        if (_cursor.Peek() == (byte)']')
        {
            _cursor.Take((byte)']');
            return shape.Build(items);
        }

        var index = 0;
        do
        {
            if (index >= shape.MaxItems)
            {
                _cursor.Skip(_depth + 1);
            }
            else
            {
                Push(index);
                var errors = _errors.Count;
                if (ReadValue(shape.Item) is { } item)
                {
                    items.Add(item);
                }
                else if (_errors.Count == errors && !_cursor.Failed)
                {
                    NotComputable("required", "An item of a list can't be null.");
                }

                Pop();
            }

            index++;
        }
        while (_cursor.TakeSeparator((byte)']'));
        if (index > shape.MaxItems)
        {
            NotComputable("too-many-items", $"{index} items; at most {shape.MaxItems} are allowed.");
        }

        return shape.Build(items);
    }

    private Quantity? ReadQuantity(UnitKind kind)
    {
        if (!_cursor.Enter(_depth) || !_cursor.Take((byte)'{'))
        {
            return null;
        }

        double? value = null;
        string? unit = null;
        bool valueSeen = false, unitSeen = false, good = true;
        var more = _cursor.Peek() != (byte)'}' || !_cursor.Take((byte)'}');
        while (more)
        {
            if (!TakeName(out var raw, out _, out var name))
            {
                return null;
            }

            name ??= Encoding.UTF8.GetString(raw);
            var isValue = name == "value";
            if ((!isValue && name != "unit") || (isValue ? valueSeen : unitSeen))
            {
                good = false;
                ReportMember(name, ["value", "unit"], isValue || name == "unit");
                _cursor.Skip(_depth + 1);
            }
            else
            {
                Push(name);
                if (isValue)
                {
                    valueSeen = true;
                    value = ReadQuantityValue(ref good);
                }
                else
                {
                    unitSeen = true;
                    unit = ReadQuantityUnit(ref good);
                }

                Pop();
            }

            more = _cursor.TakeSeparator((byte)'}');
        }

        if (_cursor.Failed || !good)
        {
            return null;
        }

        return value is { } number && unit is { } code ? Convert(kind, number, code) : Incomplete(kind, value, unit);
    }

    private double? ReadQuantityValue(ref bool good)
    {
        var next = _cursor.Peek();
        if (next == (byte)'n')
        {
            _cursor.TakeWord("null"u8);
            return null;
        }

        if (next is not ((byte)'-' or (>= (byte)'0' and <= (byte)'9')))
        {
            good = false;
            WrongType("a number");
            return null;
        }

        if (!_cursor.TakeNumber(out var raw))
        {
            return null;
        }

        double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value);
        if (!double.IsFinite(value))
        {
            good = false;
            NotComputable("not-finite", "The number is too large.");
        }

        return value;
    }

    private string? ReadQuantityUnit(ref bool good)
    {
        var next = _cursor.Peek();
        if (next == (byte)'n')
        {
            _cursor.TakeWord("null"u8);
            return null;
        }

        if (next != (byte)'"')
        {
            good = false;
            WrongType("a text");
            return null;
        }

        return _cursor.TakeString(out var raw, out var escaped) ? JsonCursor.Decode(raw, escaped) ?? "" : null;
    }

    private Quantity? Convert(UnitKind kind, double value, string code)
    {
        if (kind.Find(code) is not { } unit)
        {
            Push("unit");
            NotComputable("unit", $"\"{Show(code)}\" is no unit of {kind.Name}; allowed: {string.Join(", ", kind.Units.Select(known => known.Code))}.");
            Pop();
            return null;
        }

        var si = Rounding.ToDigits(unit.ToSi(value), Rounding.InputDigits);
        if (!double.IsFinite(si))
        {
            Push("value");
            NotComputable("not-finite", "The number is too large.");
            Pop();
            return null;
        }

        return new Quantity { Value = value, Unit = unit.Code, Si = si };
    }

    private Quantity? Incomplete(UnitKind kind, double? value, string? unit)
    {
        if (value is null)
        {
            Push("value");
            NotComputable("required", "\"value\" is required.");
            Pop();
        }

        if (unit is null)
        {
            Push("unit");
            NotComputable("required", $"\"unit\" is required; allowed: {string.Join(", ", kind.Units.Select(known => known.Code))}.");
            Pop();
        }

        return null;
    }

    private object? ReadText(Shape shape)
    {
        if (!_cursor.TakeString(out var raw, out var escaped))
        {
            return null;
        }

        if (JsonCursor.Decode(raw, escaped) is not { } text)
        {
            Unreadable("surrogate", "The text holds half a surrogate pair.");
            return null;
        }

        switch (shape)
        {
            case EnumShape words:
                foreach (var word in words.Words)
                {
                    if (word.Key == text)
                    {
                        return word.Value;
                    }
                }

                NotComputable("enum", $"\"{Show(text)}\" is not allowed; allowed: {string.Join(", ", words.Words.Select(word => word.Key))}.");
                return null;
            case DateShape when Texts.Date(text) is { } date:
                return date;
            case DateShape:
                NotComputable("date", $"\"{Show(text)}\" is no date yyyy-MM-dd from {Texts.FirstYear} to {Texts.LastYear}.");
                return null;
            case InstantShape when Texts.Instant(text) is { } instant:
                return instant;
            case InstantShape:
                NotComputable("date-time", $"\"{Show(text)}\" is no date-time yyyy-MM-ddThh:mm:ss with Z or an offset, from {Texts.FirstYear} to {Texts.LastYear}.");
                return null;
            case TextShape { MaxLength: var most } when text.Length > most:
                NotComputable("too-long", $"{text.Length} characters; at most {most} are allowed.");
                return null;
            case TextShape when text.Length == 0 || !Texts.IsPlain(text):
                NotComputable("text", "The text is empty or holds control or direction characters.");
                return null;
            default:
                return text;
        }
    }

    private object? ReadNumber(Shape shape)
    {
        if (!_cursor.TakeNumber(out var raw))
        {
            return null;
        }

        if (shape is DecimalShape)
        {
            if (decimal.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount))
            {
                return amount;
            }

            NotComputable("not-finite", "The number is too large.");
            return null;
        }

        double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number);
        if (number is >= int.MinValue and <= int.MaxValue && number == Math.Floor(number))
        {
            return (int)number;
        }

        NotComputable("not-integer", $"A whole number up to {int.MaxValue} is expected.");
        return null;
    }

    private bool TakeName(out ReadOnlySpan<byte> raw, out bool escaped, out string? name)
    {
        name = null;
        escaped = false;
        if (_cursor.Peek() != (byte)'"')
        {
            raw = default;
            return _cursor.Take((byte)'"');
        }

        if (!_cursor.TakeString(out raw, out escaped))
        {
            return false;
        }

        if (escaped)
        {
            name = JsonCursor.Decode(raw, escaped) ?? "\uFFFD";
        }

        return _cursor.Take((byte)':');
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

    private void SkipMember(ObjectShape shape, string name, bool isDuplicate)
    {
        ReportMember(name, shape.Members.Select(member => member.Name), isDuplicate);
        _cursor.Skip(_depth + 1);
    }

    private void ReportMember(string name, IEnumerable<string> known, bool isDuplicate)
    {
        if (_errors.Count >= MaxErrors)
        {
            return;
        }

        Push(Show(name));
        if (isDuplicate)
        {
            Unreadable("duplicate-member", $"\"{Show(name)}\" stands there twice.");
        }
        else
        {
            var meant = known.FirstOrDefault(member => string.Equals(member, name, StringComparison.OrdinalIgnoreCase));
            Unreadable("unknown-member", $"\"{Show(name)}\" is not known here" + (meant is null ? $"; known: {string.Join(", ", known)}." : $"; did you mean \"{meant}\"?"));
        }

        Pop();
    }

    private object? WrongType(Shape shape) => WrongType(shape switch
    {
        ObjectShape => "an object",
        ListShape => "a list",
        QuantityShape => "a quantity {\"value\", \"unit\"}",
        IntegerShape or DecimalShape => "a number",
        _ => "a text",
    });

    private object? WrongType(string expected)
    {
        if (_cursor.Skip(_depth))
        {
            Unreadable("type", $"Not of the right type; expected {expected}.");
        }

        return null;
    }

    private void Push(object segment) => _path[_depth++] = segment;

    private void Pop() => _depth--;

    private readonly string Pointer()
    {
        var pointer = new StringBuilder();
        for (var i = 0; i < _depth; i++)
        {
            pointer.Append('/');
            if (_path[i] is string name)
            {
                pointer.Append(name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
            }
            else
            {
                pointer.Append(CultureInfo.InvariantCulture, $"{_path[i]}");
            }
        }

        return pointer.ToString();
    }

    private void Unreadable(string code, string detail) => Add(code, detail, true);

    private void NotComputable(string code, string detail) => Add(code, detail, false);

    private void Add(string code, string detail, bool isUnreadable)
    {
        if (_errors.Count < MaxErrors)
        {
            _errors.Add(new(Pointer(), code, detail, isUnreadable));
        }
        else
        {
            // Nothing is lost without being said, and an unreadable body stays unreadable.
            AddAlways(new("", "too-many-errors", $"More than {MaxErrors} errors; only the first are listed.", isUnreadable));
        }
    }

    private void AddAlways(ReadError error)
    {
        var same = _errors.FindIndex(MaxErrorsOrEnd(), known => known.Code == error.Code);
        if (same < 0)
        {
            _errors.Add(error);
        }
        else if (error.IsUnreadable)
        {
            _errors[same] = error;
        }
    }

    private readonly int MaxErrorsOrEnd() => Math.Min(_errors.Count, MaxErrors);

    /// <summary>What a client sent, short and safe enough to show it back.</summary>
    private static string Show(string text)
    {
        var shown = text.Length > 40 ? string.Concat(text.AsSpan(0, 40), "…") : text;
        return Texts.IsPlain(shown) ? shown : new string([.. shown.Select(c => Texts.IsPlain(c.ToString()) ? c : '\uFFFD')]);
    }
}
