using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Sockets;

/// <summary>A rope end in a basket, checked the same way in every room.</summary>
/// <param name="Rope">The rope.</param>
/// <param name="Facts">Its numbers.</param>
/// <param name="Basket">The basket.</param>
/// <param name="Pointer">Where the end stands in the request: rope and socket are members of it.</param>
/// <param name="Rules">The limits.</param>
/// <param name="Find">Takes the findings.</param>
public sealed record EndFit(Rope Rope, RopeFacts Facts, Basket Basket, string Pointer, PouringRules Rules, Action<Finding> Find)
{
    private string RopeAt => Pointer + "/rope";

    private string BasketAt => Pointer + "/socket/basket";

    /// <summary>Whether rope and wires go into the basket.</summary>
    public void CheckRoom(IReadOnlyList<WireSpacing> wires)
    {
        CheckEntry();
        if (wires.Count == 0)
        {
            Add(FitFindings.WireFitUnknown, RopeAt + "/wireCount", related: RopeAt + "/outerWireDiameter");
        }

        if (Facts.MetallicAreaM2 is not { } area)
        {
            return;
        }

        // Judged by area: outer wires that are thicker than the rest would make n of them too many.
        if (Overfull(area, Basket, Pointer) is { } overfull)
        {
            Find(overfull);
        }
        else if (FillOf(area, Basket.GrownBy(-Basket.ToleranceM)) > Broom.DensestFill)
        {
            ReportTolerance("wires");
        }
    }

    /// <summary>What is found where the wires take more of the small end than can be filled; null where they fit.</summary>
    /// <param name="areaM2">Of the wires.</param>
    /// <param name="basket">The basket.</param>
    /// <param name="pointer">Where the end stands in the request.</param>
    public static Finding? Overfull(double areaM2, Basket basket, string pointer) => FillOf(areaM2, basket) is var fill && fill > Broom.DensestFill
        ? new(FitFindings.WiresDoNotFit, Severity.Stop, pointer + "/socket/basket")
        {
            Measured = Measure.Fraction(fill), Limit = Measure.Fraction(Broom.DensestFill), Related = [pointer + "/rope"],
        }
        : null;

    /// <summary>What about the rope asks for precautions.</summary>
    public void CheckRope()
    {
        if (Rope.Construction is null)
        {
            AddWords(FitFindings.RopeIdentityMissing, RopeAt + "/construction", new FindingWord("what", "construction"));
        }

        if (Rope.Core == RopeCore.Unknown)
        {
            AddWords(FitFindings.RopeIdentityMissing, RopeAt + "/core", new FindingWord("what", "core"));
        }

        if (Rope.Grade is not { } grade)
        {
            AddWords(FitFindings.RopeFactMissing, RopeAt + "/grade",
                new("what", "grade"), new("why", "above the ordinary grades special precautions hold"));
        }
        else if (grade > Rules.HighestOrdinaryGrade.Si)
        {
            Add(FitFindings.HighGrade, RopeAt + "/grade", Measure.Count(grade), Rules.HighestOrdinaryGrade.Value);
        }

        if (Rope.Finish == WireFinish.Stainless)
        {
            Add(FitFindings.Stainless, RopeAt + "/finish");
        }
        else if (Rope.Finish == WireFinish.Unknown)
        {
            AddWords(FitFindings.RopeFactMissing, RopeAt + "/finish",
                new("what", "finish"), new("why", "coating and steel of the wires decide how they are cleaned"));
        }
    }

    /// <summary>Whether the basket looks like those of tradition.</summary>
    /// <param name="includedAngleRad">Included angle of the cone.</param>
    /// <param name="gripLengthM">Length over which the compound grips wire.</param>
    public void CheckProportions(double includedAngleRad, double gripLengthM)
    {
        var inDiameters = gripLengthM / Rope.DiameterM;
        var least = Rules.BasketLengthInDiameters.Value!.Value;
        // Sizes carry twelve digits, so equality is judged with that much room.
        if (Judged.IsBelow(inDiameters, least.Si))
        {
            Add(FitFindings.BasketShort, BasketAt + "/length", Measure.Count(inDiameters), least, RopeAt + "/diameter");
        }

        var (slimmest, steepest) = (Rules.ConeAngleLeast.Value!.Value, Rules.ConeAngleMost.Value!.Value);
        if (includedAngleRad < slimmest.Si || includedAngleRad > steepest.Si)
        {
            Find(new(FitFindings.ConeAngleUnusual, Severity.Note, BasketAt)
            {
                Measured = Measure.Angle(includedAngleRad),
                Limit = includedAngleRad < slimmest.Si ? slimmest : steepest,
                Words = [new("minimum", slimmest), new("maximum", steepest)],
            });
        }
    }

    /// <summary>Whether the socket is stronger than the rope, where both are known.</summary>
    public void CheckStrength(double socketN)
    {
        if (Facts.BreakingForceN is { } breaking && socketN <= breaking)
        {
            Add(FitFindings.SocketWeaker, Pointer + "/socket/breakingForce", Measure.Force(socketN), Measure.Force(breaking), RopeAt + "/certificate/breakingForce");
        }
    }

    private void CheckEntry()
    {
        var (rope, smallEnd) = (Rope.OverallDiameterM, Basket.SmallEndDiameterM);
        var (at, ropeAt) = (BasketAt + "/smallEndDiameter", RopeAt + (Rope.MeasuredDiameterM is null ? "/diameter" : "/measuredDiameter"));
        if (rope >= smallEnd)
        {
            Add(FitFindings.RopeDoesNotEnter, at, Measure.Length(rope), Measure.Length(smallEnd), ropeAt);
        }
        else if (rope >= smallEnd - Basket.ToleranceM)
        {
            ReportTolerance("rope");
        }
        else if (smallEnd > 2 * rope)
        {
            Add(FitFindings.RopeLoose, at, Measure.Length(smallEnd), Measure.Length(rope), ropeAt);
        }
    }

    /// <summary>Something fits the basket as given, but not at the small end of its tolerance.</summary>
    public void ReportTolerance(string what) => Find(new(FitFindings.FitDependsOnTolerance, Severity.Caution, BasketAt + "/tolerance")
    {
        Related = [RopeAt + "/diameter"],
        Words = [new("what", what)],
    });

    private void Add(FindingDefinition definition, string pointer, Measure? measured = null, Measure? limit = null, string? related = null) =>
        Find(new(definition, definition.Severities[0], pointer) { Measured = measured, Limit = limit, Related = related is null ? [] : [related] });

    private void AddWords(FindingDefinition definition, string pointer, params FindingWord[] words) =>
        Find(new(definition, definition.Severities[0], pointer) { Words = words });

    private static double FillOf(double areaM2, Basket basket) =>
        areaM2 / (Math.PI / 4 * basket.SmallEndDiameterM * basket.SmallEndDiameterM);
}
