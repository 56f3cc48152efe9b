namespace CalcService.Engine.Cones;

/// <summary>Where the seating of the cone is read.</summary>
public enum SeatingPlace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>At the mouth of the basket, its large end.</summary>
    Mouth,

    /// <summary>At the small end, where the rope leaves it.</summary>
    SmallEnd,
}
