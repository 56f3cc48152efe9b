using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Search for cracks and look by eye.</summary>
public sealed record ReuseInspection
{
    /// <summary>Day of the inspection.</summary>
    public DateOnly? InspectedOn { get; init; }

    /// <summary>How the surface was searched for cracks.</summary>
    public SurfaceMethod? SurfaceMethod { get; init; }

    /// <summary>Parts that were searched: basket, ears, pinHoles, pin, and the bail of a closed socket.</summary>
    [Items(20)]
    public IReadOnlyList<SocketPlace>? Places { get; init; }

    /// <summary>What the search showed; an empty list for nothing.</summary>
    [Items(100)]
    public IReadOnlyList<FoundIndication>? Indications { get; init; }

    /// <summary>The look by eye.</summary>
    public VisualInspection? Visual { get; init; }
}

/// <summary>What a search for cracks showed at one place.</summary>
public sealed record FoundIndication
{
    /// <summary>The part.</summary>
    public SocketPlace? Place { get; init; }

    /// <summary>What it looks like.</summary>
    public IndicationKind? Kind { get; init; }

    /// <summary>Its length.</summary>
    [Kind(QuantityKind.Length, 0, 3000, "mm")]
    public Quantity? Length { get; init; }
}

/// <summary>The look by eye.</summary>
public sealed record VisualInspection
{
    /// <summary>Whether cracks are seen.</summary>
    public Fact? Cracks { get; init; }

    /// <summary>How far rust has gone.</summary>
    public CorrosionState? Corrosion { get; init; }

    /// <summary>What lies on the surface.</summary>
    public SurfaceState? Surface { get; init; }
}
