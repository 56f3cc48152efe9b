namespace CalcService.Engine.Sockets;

/// <summary>What a socket is made of.</summary>
public enum SocketMetal
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Cast steel.</summary>
    CastSteel,

    /// <summary>Forged steel, or steel machined from the solid.</summary>
    ForgedSteel,

    /// <summary>Stainless steel.</summary>
    StainlessSteel,

    /// <summary>Grey cast iron.</summary>
    GreyIron,

    /// <summary>Ductile or malleable cast iron.</summary>
    DuctileIron,

    /// <summary>Another metal.</summary>
    Other,
}
