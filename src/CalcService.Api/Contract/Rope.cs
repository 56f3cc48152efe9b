using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Api.Contract;

/// <summary>A steel wire rope.</summary>
public sealed record Rope
{
    /// <summary>Nominal diameter.</summary>
    [Kind(QuantityKind.Length, 1, 200, "mm")]
    public required Quantity Diameter { get; init; }

    /// <summary>
    /// Class of the rope, such as 6x36. The classes that can be estimated stand at /v1/rope-classes; others need metallicArea, wireCount
    /// and outerWireDiameter.
    /// </summary>
    public string? Construction { get; init; }

    /// <summary>What the middle of the rope is made of.</summary>
    public RopeCore? Core { get; init; }

    /// <summary>Rope grade by its designation, such as 1770.</summary>
    [Within(500, 3000)]
    public int? Grade { get; init; }

    /// <summary>Surface or steel of the wires.</summary>
    public WireFinish? Finish { get; init; }

    /// <summary>The rope's certificate. What it states beats every estimate.</summary>
    public RopeCertificate? Certificate { get; init; }

    /// <summary>Metallic area, from the rope's certificate.</summary>
    [Kind(QuantityKind.Area, .1, 30000, "mm2")]
    public Quantity? MetallicArea { get; init; }

    /// <summary>Number of wires in the broom, from the rope's certificate.</summary>
    [Within(1, 10000)]
    public int? WireCount { get; init; }

    /// <summary>Diameter of the outer wires, from the rope's certificate.</summary>
    [Kind(QuantityKind.Length, .05, 20, "mm")]
    public Quantity? OuterWireDiameter { get; init; }

    /// <summary>Diameter as measured near the end. It is what has to go through the small end.</summary>
    [Kind(QuantityKind.Length, 1, 200, "mm")]
    public Quantity? MeasuredDiameter { get; init; }

    /// <summary>Temperature of the wires, where it was read by itself. Else they count as the steel.</summary>
    [Kind(QuantityKind.Temperature, -60, 150, "degC")]
    public Quantity? Temperature { get; init; }

    /// <summary>How the rope is lubricated; it decides how the broom is cleaned.</summary>
    public Lubricant? Lubricant { get; init; }

    /// <summary>Whether plastic fills the rope.</summary>
    public Fact? PlasticFilled { get; init; }

    /// <summary>Whether the rope has been in use.</summary>
    public Fact? Used { get; init; }

    /// <summary>What the rope does; it decides which limits of an inspection hold.</summary>
    public RopeFunction? Function { get; init; }

    /// <summary>Length along the rope in which a strand goes once around; inspections count broken wires over it.</summary>
    [Kind(QuantityKind.Length, 2, 2500, "mm")]
    public Quantity? LayLength { get; init; }
}

/// <summary>Certificate of a rope.</summary>
public sealed record RopeCertificate
{
    /// <summary>Number of the certificate, kept with the record.</summary>
    [Id]
    public string? Number { get; init; }

    /// <summary>Minimum breaking force as certified.</summary>
    [Kind(QuantityKind.Force, .1, 50000, "kN")]
    public Quantity? BreakingForce { get; init; }
}
