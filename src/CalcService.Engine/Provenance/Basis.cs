namespace CalcService.Engine.Provenance;

/// <summary>What stands behind a number or a rule, strongest first.</summary>
public enum Basis
{
    /// <summary>A published standard, handbook or paper that was read.</summary>
    Published,

    /// <summary>A law or regulation.</summary>
    Law,

    /// <summary>The data sheet that came with the request.</summary>
    DataSheet,

    /// <summary>Done this way in the trade; no document was found.</summary>
    CommonPractice,

    /// <summary>A named document quoted from memory and not re-read.</summary>
    FromMemory,

    /// <summary>Follows from the physics or geometry by a derivation that the documentation shows.</summary>
    Derived,
}
