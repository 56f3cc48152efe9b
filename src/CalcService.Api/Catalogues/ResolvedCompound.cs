using CalcService.Api.Contract;

namespace CalcService.Api.Catalogues;

/// <summary>A compound with everything that a calculation needs of it.</summary>
/// <param name="Profile">The id that requests name it by; null for a sheet that came with its request.</param>
/// <param name="Sheet">The sheet as the contract has it.</param>
/// <param name="EngineSheet">The sheet as the engine reads it.</param>
/// <param name="Digest">Digest of the canonical sheet.</param>
/// <param name="Canonical">The canonical compound of a request that means it: whatever it is named by, its sheet stands there.</param>
public sealed record ResolvedCompound(
    string? Profile, CompoundSheet Sheet, Engine.Compounds.CompoundSheet EngineSheet, string Digest, ReadOnlyMemory<byte> Canonical);
