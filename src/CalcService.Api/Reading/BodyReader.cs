using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Unicode;
using CalcService.Api.Validation;

namespace CalcService.Api.Reading;

/// <summary>
/// Reads a body against its shape, strictly, and collects every error with its pointer. Unreadable (400): syntax, UTF-8, unknown or
/// duplicate members, wrong JSON type. Readable but not computable (422): a required member absent, text that is no such word, unit or
/// date, numbers that are not finite, not whole or out of range, what contradicts itself. null is absent.
/// </summary>
public ref partial struct BodyReader
{
    /// <summary>Deepest nesting of arrays and objects.</summary>
    public const int MaxDepth = 16;

    private readonly ReadOnlySpan<byte> _body;
    private readonly ObjectChecks _checks;
    private readonly ReadErrors _errors = new();
    private Utf8JsonReader _json;
    private object? _root;

    private BodyReader(ReadOnlySpan<byte> body, ObjectChecks checks)
    {
        _body = body;
        _checks = checks;
        _json = new(body);
    }

    /// <summary>Reads a whole body.</summary>
    public static ReadResult Read(ReadOnlySpan<byte> body, ObjectShape shape, ObjectChecks checks)
    {
        if (!Utf8.IsValid(body))
        {
            return new(null, [new("", "utf8", "The body is not UTF-8.", true)]);
        }

        var reader = new BodyReader(body, checks);
        try
        {
            reader.ReadRoot(shape);
        }
        catch (JsonException failure)
        {
            reader.RefuseSyntax(failure);
        }

        return new(reader._root, reader._errors.All);
    }

    private void ReadRoot(ObjectShape shape)
    {
        Next();
        if (_json.TokenType == JsonTokenType.StartObject)
        {
            ReadObject(shape);
        }
        else
        {
            WrongType(shape);
        }

        // Throws where something stands after the end.
        Next();
    }

    /// <exception cref="JsonException">No token can be read here, or it is nested too deep.</exception>
    private void Next()
    {
        if (_json.Read() && _json.CurrentDepth >= MaxDepth && _json.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
        {
            throw new JsonException();
        }
    }

    private readonly void RefuseSyntax(JsonException failure) =>
        _errors.NotJson(failure is { LineNumber: { } line, BytePositionInLine: { } at }
        ? FormattableString.Invariant($"Not JSON: what stands in line {line + 1} at byte {at + 1} of it does not belong there.")
        : $"Not JSON as it is read here: nested deeper than {MaxDepth}.");

    /// <summary>The value here, of the shape; null where it is absent or wrong, and wrong is reported.</summary>
    private object? ReadValue(Shape shape) => (shape, _json.TokenType) switch
    {
        (_, JsonTokenType.Null) => null,
        (AnyShape, JsonTokenType.StartObject) => ReadAny(),
        (ObjectShape expected, JsonTokenType.StartObject) => ReadObject(expected),
        (ListShape expected, JsonTokenType.StartArray) => ReadList(expected),
        (QuantityShape expected, JsonTokenType.StartObject) => ReadQuantity(expected),
        (TextShape or EnumShape or DateShape or InstantShape, JsonTokenType.String) => ReadText(shape),
        (IntegerShape or DecimalShape, JsonTokenType.Number) => ReadNumber(shape),
        _ => WrongType(shape),
    };

    private object ReadObject(ObjectShape shape)
    {
        var value = RuntimeHelpers.GetUninitializedObject(shape.Type);
        _root ??= value;
        var holes = _errors.Holes;
        ulong seen = 0, given = 0;
        for (Next(); _json.TokenType != JsonTokenType.EndObject; Next())
        {
            var index = IndexOf(shape, out var unknown);
            if (index < 0 || (seen & (1UL << index)) != 0)
            {
                ReportMember(unknown ?? shape.Members[index].Name, shape.Members.Select(member => member.Name), isDuplicate: index >= 0);
                SkipValue();
                continue;
            }

            seen |= 1UL << index;
            given |= ReadMember(shape.Members[index], value) ? 1UL << index : 0;
        }

        ReportMissing(shape, given);
        if (_errors.Holes == holes)
        {
            _checks.Check(value, _errors);
        }

        return value;
    }

    /// <summary>Reads a member into its owner; false where it is absent. One that is wrong and reported is not absent.</summary>
    private bool ReadMember(MemberShape member, object owner)
    {
        Next();
        var isNull = _json.TokenType == JsonTokenType.Null;
        _errors.Enter(member.Name);
        if (ReadValue(member.Shape) is { } read)
        {
            member.Assign(owner, read);
        }

        _errors.Leave();
        return !isNull;
    }

    private object ReadList(ListShape shape)
    {
        var items = new List<object>();
        var count = 0;
        for (Next(); _json.TokenType != JsonTokenType.EndArray; Next())
        {
            if (count++ < shape.MostItems)
            {
                ReadItem(shape, items, count - 1);
            }
            else
            {
                Skip();
            }
        }

        if (count > shape.MostItems)
        {
            _errors.NotComputable("too-many-items", $"{count} items; at most {shape.MostItems} are allowed.");
        }
        else if (count < shape.LeastItems)
        {
            _errors.OutOfRange($"{count} items; at least {shape.LeastItems} required.", "required");
        }

        return shape.Build(items);
    }

    private void ReadItem(ListShape shape, List<object> items, int index)
    {
        _errors.Enter(index);
        if (_json.TokenType == JsonTokenType.Null)
        {
            _errors.NotComputable("required", "An item of a list can't be null.");
        }
        else if (ReadValue(shape.Item) is { } item)
        {
            items.Add(item);
        }

        _errors.Leave();
    }

    /// <summary>Passes over the value of the name here.</summary>
    private void SkipValue()
    {
        Next();
        Skip();
    }

    /// <summary>Passes over the value here.</summary>
    private void Skip()
    {
        if (_json.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
        {
            var depth = _json.CurrentDepth;
            do
            {
                Next();
            }
            while (_json.CurrentDepth > depth);
        }
    }

    /// <summary>The text or name here; null, and said, where it holds half a surrogate pair: no text can be made of it.</summary>
    private readonly string? Text()
    {
        if (_json.ValueIsEscaped && JsonText.HasLoneSurrogate(_json.ValueSpan))
        {
            _errors.Unreadable("surrogate", "The text holds half a surrogate pair.");
            return null;
        }

        return _json.GetString();
    }

    /// <summary>Which member the name here is; −1 with the name where the shape has none of it.</summary>
    private readonly int IndexOf(ObjectShape shape, out string? unknown)
    {
        unknown = _json.ValueIsEscaped ? Text() ?? "\uFFFD" : null;
        for (var i = 0; i < shape.Members.Count; i++)
        {
            if (unknown is null ? _json.ValueSpan.SequenceEqual(shape.Members[i].Utf8Name) : unknown == shape.Members[i].Name)
            {
                return i;
            }
        }

        unknown ??= _json.GetString();
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
        Skip();
        _errors.Unreadable("type", $"Not of the right type; expected {expected}.");
        return null;
    }
}
