namespace CalcService.Engine.Reuse;

/// <summary>How the socket takes hold of what it is joined to.</summary>
public enum SocketType
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Two ears and a pin.</summary>
    Open,

    /// <summary>A bail in one piece with the basket.</summary>
    Closed,
}

/// <summary>What the rope was last set in.</summary>
public enum SocketMedium
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Resin.</summary>
    Resin,

    /// <summary>Zinc.</summary>
    Zinc,

    /// <summary>White metal or another alloy.</summary>
    WhiteMetal,
}

/// <summary>How the old cone came out.</summary>
public enum RemovalMethod
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Pressed out without heat.</summary>
    PressedCold,

    /// <summary>Pressed out warm.</summary>
    PressedWarm,

    /// <summary>Drilled and broken out.</summary>
    Drilled,

    /// <summary>Melted out, as zinc is.</summary>
    Melted,

    /// <summary>Burnt out with a flame.</summary>
    BurntOut,
}

/// <summary>How the surface was searched for cracks.</summary>
public enum SurfaceMethod
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Not searched.</summary>
    None,

    /// <summary>By eye alone.</summary>
    VisualOnly,

    /// <summary>Magnetic particles.</summary>
    MagneticParticle,

    /// <summary>Dye or fluorescent penetrant.</summary>
    Penetrant,

    /// <summary>Eddy current.</summary>
    EddyCurrent,
}

/// <summary>A part of a socket.</summary>
public enum SocketPlace
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>The basket, inside and outside.</summary>
    Basket,

    /// <summary>The ears with their roots.</summary>
    Ears,

    /// <summary>The bores for the pin.</summary>
    PinHoles,

    /// <summary>The pin.</summary>
    Pin,

    /// <summary>The bail of a closed socket.</summary>
    Bail,
}

/// <summary>What a crack search shows.</summary>
public enum IndicationKind
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Round: as long as wide.</summary>
    Rounded,

    /// <summary>Linear: longer than three times its width.</summary>
    Linear,

    /// <summary>A crack.</summary>
    Crack,
}

/// <summary>How far rust has gone.</summary>
public enum CorrosionState
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>None.</summary>
    None,

    /// <summary>A film that comes off.</summary>
    Light,

    /// <summary>With pits.</summary>
    Pitted,

    /// <summary>Scaling, edges gone.</summary>
    Severe,
}

/// <summary>What lies on the surface that was inspected.</summary>
public enum SurfaceState
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Clean bare metal.</summary>
    Clean,

    /// <summary>Old resin.</summary>
    OldResin,

    /// <summary>Old zinc or white metal.</summary>
    OldMetal,

    /// <summary>Paint.</summary>
    Painted,
}
