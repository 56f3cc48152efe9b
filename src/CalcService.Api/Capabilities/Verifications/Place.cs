using CalcService.Api.Reading;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>How a member is held against the computed one.</summary>
internal enum Standing
{
    /// <summary>Another is another answer.</summary>
    Counts,

    /// <summary>Beside what counts, such as a source.</summary>
    Beside,

    /// <summary>Worded in the language of the answer.</summary>
    Words,
}

/// <summary>A place in an archived answer.</summary>
internal readonly record struct Place(string Pointer, Standing Standing)
{
    /// <summary>A member of the object here. What stands in something beside is beside too.</summary>
    public Place Of(MemberShape member) =>
        To(member) with { Standing = member.IsWords ? Standing.Words : member.Counts ? Standing : Standing.Beside };

    /// <summary>A member that stands as the object here does.</summary>
    public Place To(MemberShape member) => this with { Pointer = $"{Pointer}/{member.Name}" };
}
