using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>An object with a closed set of members.</summary>
public sealed class ObjectShape : Shape
{
    /// <summary>The reader marks the members that it has met in one word.</summary>
    public const int MostMembers = 64;

    private readonly MemberShape[] _members;
    private readonly MemberShape[] _sorted;
    private readonly (int Place, MemberShape Member)[] _canonical;

    /// <param name="type">The type.</param>
    /// <param name="members">Its members in the order of declaration.</param>
    public ObjectShape(Type type, IReadOnlyList<MemberShape> members)
    {
        if (members.Count > MostMembers)
        {
            throw new InvalidOperationException($"{type.Name} has {members.Count} members; an object of the contract has at most {MostMembers}.");
        }

        (Type, _members) = (type, [.. members]);
        _sorted = [.. members.OrderBy(member => member.Name, StringComparer.Ordinal)];
        _canonical = [.. _sorted.Where(member => member.IsDigested).Select(member => (Array.IndexOf(_members, member), member))];
    }

    public Type Type { get; }

    /// <summary>In the order of declaration.</summary>
    public IReadOnlyList<MemberShape> Members => _members;

    /// <summary>In the order of the canonical form: by UTF-16 code units of the name.</summary>
    public IReadOnlyList<MemberShape> Sorted => _sorted;

    internal override bool IsPlain => false;

    internal override void Write(ShapeWriter writer, object value)
    {
        if (writer.TryWriteKnown(value))
        {
            return;
        }

        var members = writer.Form == JsonForm.Sent ? _members : _sorted;
        var outline = writer.Outline;
        var first = outline?.Reserve(_members.Length) ?? Outline.NoParts;
        writer.Raw("{"u8);
        var isFirst = true;
        for (var i = 0; i < members.Length; i++)
        {
            // A comma stands before every member but the first.
            var start = writer.Length + (isFirst ? 0 : 1);
            isFirst &= !members[i].TryWrite(writer, value, isFirst);
            outline?.Note(first + i, start, writer.Length);
        }

        writer.Raw("}"u8);
        outline?.End(first);
    }

    private protected override void Rearrange(ShapeWriter canonical, ReadOnlySpan<byte> sent, Outline outline, Piece value)
    {
        // Every member comes with the brace or comma before it, which then becomes the one that belongs there.
        var before = (byte)'{';
        foreach (var (place, member) in _canonical)
        {
            var written = outline[value.Parts + place];
            var start = member.IsPlain ? written.End : written.Start + member.NameLength;
            var copied = canonical.Take(start - written.Start + 1);
            sent[(written.Start - 1)..start].CopyTo(copied);
            copied[0] = before;
            before = (byte)',';
            if (!member.IsPlain)
            {
                member.Shape.Copy(canonical, sent, outline, written with { Start = start });
            }
        }

        canonical.Raw(before == '{' ? "{}"u8 : "}"u8);
    }

    /// <summary>A member, and where its value lies in what was outlined.</summary>
    internal (MemberShape Member, Piece Value) Find(string name, Outline outline, int parts)
    {
        var place = Array.FindIndex(_members, one => one.Name == name);
        var written = outline[parts + place];
        return (_members[place], written with { Start = written.Start + _members[place].NameLength });
    }
}
