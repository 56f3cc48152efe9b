using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Sockets;

/// <summary>Thinnest and thickest rope that the socket's maker allows.</summary>
public sealed record RopeRange(double MinimumM, double MaximumM);

/// <summary>
/// A rope end in a socket, judged the same way in every calculation: one function, so that what one answer allows no other refuses.
/// </summary>
/// <param name="Rope">The rope.</param>
/// <param name="Facts">Its numbers.</param>
/// <param name="Basket">The basket.</param>
/// <param name="Pointer">Where the end stands in the request: rope and socket are members of it.</param>
/// <param name="Rules">The limits.</param>
/// <param name="Find">Takes the findings.</param>
public sealed partial record EndFit(Rope Rope, RopeFacts Facts, Basket Basket, string Pointer, PouringRules Rules, Action<Finding> Find)
{
    /// <summary>Strength of the socket, where it is known.</summary>
    public double? SocketBreakingForceN { get; init; }

    /// <summary>What the socket is made of, where somebody said.</summary>
    public SocketMetal? Metal { get; init; }

    /// <summary>The ropes that the socket's maker allows, where somebody said.</summary>
    public RopeRange? RopeRange { get; init; }

    /// <summary>Length over which the compound grips wire; the basket's where nobody says otherwise.</summary>
    public double? GripLengthM { get; init; }

    /// <summary>Where the sizes of the basket come from.</summary>
    public SizesFrom SizesFrom { get; init; }

    /// <summary>Lean of rope and basket, where it was measured.</summary>
    public double? TiltRad { get; init; }

    /// <summary>Rope that hangs straight below the socket, where it was measured.</summary>
    public double? StraightBelowM { get; init; }

    private string RopeAt => Pointer + "/rope";

    private string DiameterAt => RopeAt + (Rope.MeasuredDiameterM is null ? "/diameter" : "/measuredDiameter");

    private string SocketAt => Pointer + "/socket";

    private string BasketAt => SocketAt + "/basket";

    /// <summary>Length over which the compound grips, in rope diameters.</summary>
    private Measure InDiameters => Measure.Count((GripLengthM ?? Basket.LengthM) / Rope.DiameterM);

    private Measure IncludedAngle =>
        Measure.Angle(Basket.IncludedAngleRad(Basket.SmallEndDiameterM, Basket.LargeEndDiameterM, Basket.LengthM, Trace.None));

    /// <summary>Everything that what was stated shows to be wrong. What nobody stated is asked for elsewhere.</summary>
    public void Check()
    {
        CheckEntry();
        CheckWires();
        CheckStrength();
        CheckCone();
        CheckRopeItself();
        CheckPosition();
        CheckSocketItself();
    }

    /// <summary>Whether rope and basket make a cone that can seat: what stops by them alone leaves nothing to expect of it.</summary>
    public static bool Seats(Rope rope, RopeFacts facts, Basket basket, PouringRules rules)
    {
        var seats = true;
        new EndFit(rope, facts, basket, "", rules, finding => seats &= finding.Severity != Severity.Stop).Check();
        return seats;
    }

    private void CheckEntry()
    {
        var (rope, smallEnd, at) = (Rope.OverallDiameterM, Basket.SmallEndDiameterM, BasketAt + "/smallEndDiameter");
        var width = Measure.Count(smallEnd / rope);
        if (Judged.Length(rope, smallEnd) is { IsBelow: false } thick)
        {
            Add(FitFindings.RopeDoesNotEnter, at, thick, DiameterAt);
        }
        else if (!Judged.Length(rope, smallEnd - Basket.ToleranceM).IsBelow)
        {
            ReportTolerance("rope");
        }
        else if (!Rules.Fit.WidestSmallEnd.Judge(width).IsBelow)
        {
            Add(FitFindings.RopeLoose, at, Judged.Length(smallEnd, rope), DiameterAt, Severity.Stop);
        }
        else if (Rules.Fit.LooseSmallEnd.Judge(width).IsAbove)
        {
            Add(FitFindings.RopeLoose, at, Judged.Length(smallEnd, rope), DiameterAt);
        }
    }

    /// <summary>Judged by area: outer wires that are thicker than the rest would make n of them too many.</summary>
    private void CheckWires()
    {
        if (Facts.MetallicAreaM2 is not { } area)
        {
            return;
        }

        if (FillOf(area, Basket) is { IsAbove: true } overfull)
        {
            Add(FitFindings.WiresDoNotFit, BasketAt, overfull, RopeAt);
        }
        else if (IsOverfull(area, Basket.GrownBy(-Basket.ToleranceM)))
        {
            ReportTolerance("wires");
        }
    }

    /// <summary>Whether the wires take more of the small end than can be filled.</summary>
    public static bool IsOverfull(double areaM2, Basket basket) => FillOf(areaM2, basket).IsAbove;

    /// <summary>The socket has to be stronger than the rope: as strong isn't enough.</summary>
    private void CheckStrength()
    {
        if (SocketBreakingForceN is { } socket && Facts.BreakingForceN is { } breaking
            && Judged.Force(socket, breaking) is { IsAbove: false } weak)
        {
            Add(FitFindings.SocketWeaker, SocketAt + "/breakingForce", weak, RopeAt + "/certificate/breakingForce");
        }
    }

    /// <summary>Something fits the basket as given, but not at the small end of its tolerance.</summary>
    public void ReportTolerance(string what) => Find(new(FitFindings.FitDependsOnTolerance, Severity.Caution, BasketAt + "/tolerance")
    {
        Related = [RopeAt + "/diameter"],
        Words = [new("what", what)],
    });

    private void Add(FindingDefinition definition, string pointer, Judged judged = default, string? related = null,
        Severity? severity = null) =>
        Find(new(definition, severity ?? definition.Severities[0], pointer) { Judged = judged, Related = related is null ? []
            : [related] });

    private static Judged FillOf(double areaM2, Basket basket) =>
        Judged.Fraction(areaM2 / (Math.PI / 4 * basket.SmallEndDiameterM * basket.SmallEndDiameterM), Broom.DensestFill);
}
