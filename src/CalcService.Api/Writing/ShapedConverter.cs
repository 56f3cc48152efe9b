using System.Text.Json;
using System.Text.Json.Serialization;

namespace CalcService.Api.Writing;

/// <summary>Writes an answer, or the statistics of a batch, inside of what the framework writes: the same bytes as by itself.</summary>
internal sealed class ShapedConverter : JsonConverter<object>
{
    public override object Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException();

    public override void Write(Utf8JsonWriter writer, object value, JsonSerializerOptions options)
    {
        using var answer = ShapeWriter.WriteAnswer(value);
        writer.WriteRawValue(answer.Written.Span, skipInputValidation: true);
    }
}
