using CalcService.Api.Writing;

namespace CalcService.Api.Reading;

/// <summary>An object with a closed set of members.</summary>
public sealed class ObjectShape : Shape
{
    /// <summary>The reader marks the members that it has met in one word.</summary>
    public const int MostMembers = 64;

    private readonly MemberShape[] _members;
    private readonly MemberShape[] _digested;

    /// <param name="type">The type.</param>
    /// <param name="members">Its members in the order of declaration.</param>
    public ObjectShape(Type type, IReadOnlyList<MemberShape> members)
    {
        if (members.Count > MostMembers)
        {
            throw new InvalidOperationException(
                $"{type.Name} has {members.Count} members; an object of the contract has at most {MostMembers}.");
        }

        (Type, _members) = (type, [.. members]);
        _digested = [.. members.Where(member => member.IsDigested).OrderBy(member => member.Name, StringComparer.Ordinal)];
    }

    public Type Type { get; }

    /// <summary>In the order of declaration.</summary>
    public IReadOnlyList<MemberShape> Members => _members;

    /// <summary>What digests cover, in the order of the canonical form: by UTF-16 code units of the name.</summary>
    public IReadOnlyList<MemberShape> Digested => _digested;

    internal override void Write(ShapeWriter writer, object value)
    {
        if (writer.TryWriteKnown(value))
        {
            return;
        }

        writer.Raw("{"u8);
        var isFirst = true;
        foreach (var member in writer.Form == JsonForm.Sent ? _members : _digested)
        {
            isFirst &= !(member.IsIn(writer.Contract) && member.TryWrite(writer, value, isFirst));
        }

        writer.Raw("}"u8);
    }
}
