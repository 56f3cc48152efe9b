using CalcService.Api.Reading;

namespace CalcService.Api.Writing;

/// <summary>
/// The canonical form (RFC 8785) of a contract object: members by UTF-16 code units, shortest numbers, no white
/// space. A request is written in SI with absent members left out, so two requests that mean the same are the same
/// bytes; an answer is written as it stands, nulls too, without its wording.
/// </summary>
public static class CanonicalJson
{
    /// <summary>A request, in SI, without what it leaves out.</summary>
    /// <param name="shape">Its shape.</param>
    /// <param name="value">The request.</param>
    /// <param name="known">Parts whose canonical form is there already, by reference.</param>
    public static ReadOnlyMemory<byte> Request(ObjectShape shape, object value, IReadOnlyDictionary<object, ReadOnlyMemory<byte>>? known = null)
    {
        using var writer = new ShapeWriter(JsonForm.CanonicalRequest, known);
        shape.Write(writer, value);
        return writer.Written.ToArray();
    }

    /// <summary>A part of an answer, with its own units.</summary>
    public static ReadOnlyMemory<byte> Answer(ObjectShape shape, object value)
    {
        using var writer = new ShapeWriter(JsonForm.CanonicalAnswer);
        shape.Write(writer, value);
        return writer.Written.ToArray();
    }
}
