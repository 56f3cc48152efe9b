using System.Globalization;
using System.Text.Json;

namespace CalcService.Api.Reading;

/// <content>JSON of any shape: every name is known, and yet it is JSON, with each name once and numbers that are finite.</content>
public ref partial struct BodyReader
{
    private JsonElement? ReadAny()
    {
        var (start, errors) = (_cursor.Position, _errors.All.Count);
        return CheckAny() && _errors.All.Count == errors ? JsonElement.Parse(_cursor.Since(start)) : null;
    }

    private bool CheckAny()
    {
        switch (_cursor.Peek())
        {
            case (byte)'{':
                return CheckMembers();
            case (byte)'[':
                return CheckItems();
            case (byte)'"':
                return CheckText();
            case (byte)'-' or (>= (byte)'0' and <= (byte)'9'):
                return CheckNumber();
            default:
                return _cursor.Skip(_errors.Depth);
        }
    }

    private bool CheckMembers()
    {
        if (!TakeOpen((byte)'{', (byte)'}', out var isEmpty))
        {
            return false;
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var more = !isEmpty; more; more = _cursor.TakeSeparator((byte)'}'))
        {
            if (!TakeName(out var raw, out var name))
            {
                return false;
            }

            name ??= System.Text.Encoding.UTF8.GetString(raw);
            if (!names.Add(name))
            {
                ReportMember(name, [], isDuplicate: true);
            }

            _errors.Enter(ReadErrors.Show(name));
            var isGood = CheckAny();
            _errors.Leave();
            if (!isGood)
            {
                return false;
            }
        }

        return !_cursor.Failed;
    }

    private bool CheckItems()
    {
        if (!TakeOpen((byte)'[', (byte)']', out var isEmpty))
        {
            return false;
        }

        var count = 0;
        for (var more = !isEmpty; more; more = _cursor.TakeSeparator((byte)']'))
        {
            _errors.Enter(count++);
            var isGood = CheckAny();
            _errors.Leave();
            if (!isGood)
            {
                return false;
            }
        }

        return !_cursor.Failed;
    }

    /// <summary>An answer has texts that no request may have, empty ones among them.</summary>
    private bool CheckText()
    {
        if (!_cursor.TakeString(out var raw, out var escaped))
        {
            return false;
        }

        Decode(raw, escaped);
        return true;
    }

    private bool CheckNumber()
    {
        if (!_cursor.TakeNumber(out var raw))
        {
            return false;
        }

        if (!double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            Refuse("not-finite", "The number is too large.");
        }

        return true;
    }
}
