using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Sockets;

/// <content>What about the rope asks for precautions or isn't known, and how tradition shapes a basket.</content>
public sealed partial record EndFit
{
    /// <summary>Asks what the rope is, and for its wires, without which nobody knows whether they fit: what follows from a missing identity isn't asked for again.</summary>
    public void Ask(IReadOnlyList<WireSpacing> wires)
    {
        AskRope();
        if (Rope.IsIdentified)
        {
            AskWires(wires);
        }
    }

    /// <summary>Asks for the wires alone, where nobody asks what the rope is.</summary>
    public void AskWires(IReadOnlyList<WireSpacing> wires)
    {
        if (wires.Count == 0)
        {
            Add(FitFindings.WireFitUnknown, RopeAt + "/wireCount", related: RopeAt + "/outerWireDiameter");
        }
    }

    public void AskRope()
    {
        Ask(FitFindings.RopeIdentityMissing, ("/construction", Rope.Construction is null, "construction"), ("/core", Rope.Core == RopeCore.Unknown, "core"));
        Ask(FitFindings.RopeFactMissing, ("/grade", Rope.Grade is null, "grade"), ("/finish", Rope.Finish == WireFinish.Unknown, "finish"));
    }

    /// <summary>What about the rope, or about how its basket was measured, asks for care.</summary>
    public void CheckCare()
    {
        if (SizesFrom == SizesFrom.Memory)
        {
            Add(FitFindings.GeometryFromMemory, BasketAt + "/sizesFrom", related: BasketAt);
        }

        if (Rope.IsUsed)
        {
            Add(FitFindings.UsedRope, RopeAt + "/used");
        }

        if (Rope.Grade is { } grade && Judged.IsAbove(grade, Rules.HighestOrdinaryGrade.Si))
        {
            Add(FitFindings.HighGrade, RopeAt + "/grade", Measure.Count(grade), Rules.HighestOrdinaryGrade.Value);
        }

        if (Rope.Finish == WireFinish.Stainless)
        {
            Add(FitFindings.Stainless, RopeAt + "/finish");
        }
    }

    /// <summary>Whether the basket looks like those of tradition.</summary>
    public void CheckProportions()
    {
        var inDiameters = (GripLengthM ?? Basket.LengthM) / Rope.DiameterM;
        var least = Rules.BasketLengthInDiameters;
        // Shorter still is no matter of tradition, and has been found.
        if (Judged.IsBelow(inDiameters, least.Si) && (!Judged.IsBelow(inDiameters, Rules.Fit.ShortBasket.Si) || Basket.IsTypeTested == true))
        {
            Add(FitFindings.BasketShort, BasketAt + "/length", Measure.Count(inDiameters), least.Value, RopeAt + "/diameter");
        }

        var angle = Basket.IncludedAngleRad(Basket.SmallEndDiameterM, Basket.LargeEndDiameterM, Basket.LengthM, Trace.None);
        var (slimmest, steepest) = (Rules.ConeAngleLeast.Value!.Value, Rules.ConeAngleMost.Value!.Value);
        var isSlim = Judged.IsBelow(angle, slimmest.Si) && !Judged.IsBelow(angle, Rules.Fit.LeastCone.Si);
        if (isSlim || Judged.IsAbove(angle, steepest.Si))
        {
            Find(new(FitFindings.ConeAngleUnusual, Severity.Note, BasketAt)
            {
                Measured = Measure.Angle(angle),
                Limit = isSlim ? slimmest : steepest,
                Words = [new("minimum", slimmest), new("maximum", steepest)],
            });
        }
    }

    private void Ask(FindingDefinition definition, params ReadOnlySpan<(string Member, bool IsMissing, string What)> facts)
    {
        var missing = new List<(string Member, string What)>();
        foreach (var (member, isMissing, what) in facts)
        {
            if (isMissing)
            {
                missing.Add((RopeAt + member, what));
            }
        }

        if (missing.Count > 0)
        {
            Find(new(definition, definition.Severities[0], missing[0].Member)
            {
                Related = [.. missing.Skip(1).Select(fact => fact.Member)], Words = [new("what", string.Join(" and ", missing.Select(fact => fact.What)))],
            });
        }
    }
}
