using System.Text;
using CalcService.Api.Reading;

namespace CalcService.Api.Writing;

/// <summary>
/// An object written as it is sent, whose canonical form is copied from these bytes: the members of each object sorted,
/// those that no digest covers left out, nulls kept. To copy takes a fraction of writing once more.
/// </summary>
public sealed class OutlinedObject : IDisposable
{
    private readonly ObjectShape _shape;
    private readonly Outline _outline = new();
    private readonly ShapeWriter _sent;

    public OutlinedObject(ObjectShape shape, object value)
    {
        _shape = shape;
        _sent = new(JsonForm.Sent) { Outline = _outline };
        shape.Write(_sent, value);
    }

    /// <summary>The digest of its canonical form.</summary>
    public string Digest()
    {
        using var canonical = CopyCanonical();
        return Writing.Digest.Of(canonical.Written.Span);
    }

    /// <summary>The canonical form; its bytes are lent until the writer is disposed.</summary>
    public ShapeWriter CopyCanonical()
    {
        var canonical = new ShapeWriter(JsonForm.Canonical);
        var sent = _sent.Written.Span;
        _shape.Copy(canonical, sent, _outline, new(0, sent.Length, _outline.Last));
        return canonical;
    }

    /// <summary>The object as it is sent, with another text of the same length as the value of a member of one of its objects.</summary>
    public byte[] SentWith(string member, string inner, string text)
    {
        var sent = _sent.Written.ToArray();
        var owner = _shape.Find(member, _outline, _outline.Last);
        var value = ((ObjectShape)owner.Member.Shape).Find(inner, _outline, owner.Value.Parts).Value;
        if (Encoding.UTF8.GetBytes(text, sent.AsSpan(value.Start + 1)) != value.End - value.Start - 2)
        {
            throw new ArgumentException($"{text} hasn't the length of what stands in its place.", nameof(text));
        }

        return sent;
    }

    public void Dispose()
    {
        _sent.Dispose();
        _outline.Dispose();
    }
}
