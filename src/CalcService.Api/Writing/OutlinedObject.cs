using CalcService.Api.Reading;

namespace CalcService.Api.Writing;

/// <summary>
/// An object written as it is sent, whose canonical form is copied from these bytes: the members of each object sorted, its
/// wording left out, nulls kept. To copy takes a fraction of writing once more.
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

    /// <summary>The value of a member as it is sent, lent until the object is disposed.</summary>
    public ReadOnlyMemory<byte> SentMember(string name) => _sent.Written[_shape.ValueOf(name, _outline, _outline.Last)];

    public void Dispose()
    {
        _sent.Dispose();
        _outline.Dispose();
    }
}
