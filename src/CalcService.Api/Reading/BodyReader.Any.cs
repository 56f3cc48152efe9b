using System.Globalization;
using System.Text.Json;

namespace CalcService.Api.Reading;

/// <content>JSON of any shape: every name is known, and yet it is JSON, with each name once and numbers that are finite.</content>
public ref partial struct BodyReader
{
    private JsonElement? ReadAny()
    {
        var (start, holes) = ((int)_json.TokenStartIndex, _errors.Holes);
        CheckAny();
        return _errors.Holes == holes ? JsonElement.Parse(_body[start..(int)_json.BytesConsumed]) : null;
    }

    private void CheckAny()
    {
        switch (_json.TokenType)
        {
            case JsonTokenType.StartObject:
                CheckMembers();
                break;
            case JsonTokenType.StartArray:
                var count = 0;
                for (Next(); _json.TokenType != JsonTokenType.EndArray; Next())
                {
                    _errors.Enter(count++);
                    CheckAny();
                    _errors.Leave();
                }

                break;
            case JsonTokenType.String:
                // An answer has texts that no request may have, empty ones among them.
                Text();
                break;
            case JsonTokenType.Number
                when !double.IsFinite(double.Parse(_json.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture)):
                Refuse("not-finite", TooLarge);
                break;
        }
    }

    private void CheckMembers()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (Next(); _json.TokenType != JsonTokenType.EndObject; Next())
        {
            var name = Text() ?? "\uFFFD";
            if (!names.Add(name))
            {
                ReportMember(name, [], isDuplicate: true);
            }

            _errors.Enter(ReadErrors.Show(name));
            Next();
            CheckAny();
            _errors.Leave();
        }
    }
}
