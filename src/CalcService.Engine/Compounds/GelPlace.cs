namespace CalcService.Engine.Compounds;

/// <summary>Where somebody saw the compound gel.</summary>
public enum GelPlace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>In the vessel of the mix.</summary>
    Vessel,

    /// <summary>In the cup of the left-over mix or witness sample.</summary>
    Cup,

    /// <summary>At the mouth of the basket.</summary>
    Mouth,

    /// <summary>In the cone.</summary>
    Cone,
}
