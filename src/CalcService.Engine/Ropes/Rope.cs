using System.Globalization;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Ropes;

/// <summary>What the middle of the rope is made of.</summary>
public enum RopeCore
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Fibre core.</summary>
    Fibre,

    /// <summary>Independent wire rope core, or a wire strand core in the small classes.</summary>
    Iwrc,
}

/// <summary>Surface or steel of the wires.</summary>
public enum WireFinish
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Uncoated carbon steel.</summary>
    Bright,

    /// <summary>Zinc or zinc alloy coated carbon steel.</summary>
    Galvanized,

    /// <summary>Stainless steel.</summary>
    Stainless,
}

/// <summary>How the rope is lubricated.</summary>
public enum Lubricant
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Dry, no lubricant.</summary>
    None,

    /// <summary>Oil or light grease.</summary>
    Light,

    /// <summary>Heavy, asphaltic or waxy.</summary>
    Heavy,
}

/// <summary>What the rope does; it decides which limits of its inspection hold.</summary>
public enum RopeFunction
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Runs over sheaves or drums.</summary>
    Running,

    /// <summary>Stands still under load.</summary>
    Standing,

    /// <summary>Pendant.</summary>
    Pendant,

    /// <summary>Sling.</summary>
    Sling,

    /// <summary>Runs, and its strands are laid against rotation.</summary>
    RotationResistant,
}

/// <summary>A rope as the request describes it. What a certificate states beats every estimate.</summary>
public sealed record Rope
{
    /// <summary>
    /// From so many strands on a rope has several layers of them, which are laid against rotation; one layer has six or eight.
    /// </summary>
    private const int ManyStrands = 10;

    public required double DiameterM { get; init; }

    /// <summary>Class designation, such as 6x36.</summary>
    public string? Construction { get; init; }

    public RopeCore Core { get; init; }

    /// <summary>R_r, the rope grade in N/mm².</summary>
    public int? Grade { get; init; }

    public WireFinish Finish { get; init; }

    public double? CertifiedBreakingForceN { get; init; }

    public double? MetallicAreaM2 { get; init; }

    public int? WireCount { get; init; }

    public double? OuterWireDiameterM { get; init; }

    /// <summary>Diameter as measured near the end.</summary>
    public double? MeasuredDiameterM { get; init; }

    /// <summary>Temperature of the wires, where it was read by itself.</summary>
    public double? TemperatureK { get; init; }

    /// <summary>Null where nobody said.</summary>
    public Lubricant? Lubricant { get; init; }

    /// <summary>Whether plastic fills the rope; null where nobody said.</summary>
    public Fact? PlasticFilled { get; init; }

    public bool IsUsed { get; init; }

    public RopeFunction Function { get; init; }

    /// <summary>Length along the rope in which a strand goes once around.</summary>
    public double? LayLengthM { get; init; }

    /// <summary>Whether construction and core are known, from which most else follows.</summary>
    public bool IsIdentified => Construction is not null && Core != RopeCore.Unknown;

    /// <summary>The diameter that has to go through the small end.</summary>
    public double OverallDiameterM => MeasuredDiameterM ?? DiameterM;

    /// <summary>Whether its strands are laid against rotation, by what is said or by its class. Null where neither tells.</summary>
    public bool? IsRotationResistant =>
        Function == RopeFunction.RotationResistant || Strands(Construction) >= ManyStrands ? true : Function == RopeFunction.Unknown
        || Strands(Construction) == 0 ? null : false;

    /// <summary>Strands by the designation: 18 of an 18x7, 35 of a 35(W)x7.</summary>
    private static int Strands(string? construction) =>
        int.TryParse(string.Concat((construction ?? "").TakeWhile(char.IsAsciiDigit)), NumberStyles.None, CultureInfo.InvariantCulture,
        out var strands) ? strands : 0;
}
