namespace CalcService.Engine.Sockets;

/// <summary>Where the sizes of a basket come from.</summary>
public enum SizesFrom
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Measured on this socket.</summary>
    Measured,

    /// <summary>The maker's drawing or table.</summary>
    Drawing,

    /// <summary>Somebody's memory.</summary>
    Memory,
}

/// <summary>What the bore of a basket looks like.</summary>
public enum BoreState
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Clean bare metal.</summary>
    Clean,

    /// <summary>Old resin in it.</summary>
    OldResin,

    /// <summary>Old metal, from a cone of zinc or white metal, in it.</summary>
    OldMetal,
}
