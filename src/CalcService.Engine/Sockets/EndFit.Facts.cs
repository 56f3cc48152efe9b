using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Sockets;

/// <content>What about the rope asks for precautions or isn't known, and how tradition shapes a basket.</content>
public sealed partial record EndFit
{
    /// <summary>
    /// Asks what the rope is, and for its wires, without which nobody knows whether they fit: what follows from a missing identity isn't
    /// asked for again.
    /// </summary>
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
        Ask(FitFindings.RopeIdentityMissing, ("/construction", Rope.Construction is null, "construction"),
            ("/core", Rope.Core == RopeCore.Unknown, "core"));
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

        if (Rope.Grade is { } grade && Rules.HighestOrdinaryGrade.Judge(Measure.Count(grade)) is { IsAbove: true } high)
        {
            Add(FitFindings.HighGrade, RopeAt + "/grade", high);
        }

        if (Rope.Finish == WireFinish.Stainless)
        {
            Add(FitFindings.Stainless, RopeAt + "/finish");
        }
    }

    /// <summary>Whether the basket looks like those of tradition.</summary>
    public void CheckProportions()
    {
        // Shorter still is no matter of tradition, and has been found.
        if (Rules.BasketLengthInDiameters.Judge(InDiameters) is { IsBelow: true } few
            && (!Rules.Fit.ShortBasket.Judge(InDiameters).IsBelow || Basket.IsTypeTested == true))
        {
            Add(FitFindings.BasketShort, BasketAt + "/length", few, RopeAt + "/diameter");
        }

        var (slim, steep) = (Rules.ConeAngleLeast.Judge(IncludedAngle), Rules.ConeAngleMost.Judge(IncludedAngle));
        var isSlim = slim.IsBelow && !Rules.Fit.LeastCone.Judge(IncludedAngle).IsBelow;
        if (isSlim || steep.IsAbove)
        {
            Find(new(FitFindings.ConeAngleUnusual, Severity.Note, BasketAt)
            {
                Judged = isSlim ? slim : steep, Words = [new("minimum", Rules.ConeAngleLeast), new("maximum", Rules.ConeAngleMost)],
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
                Related = [.. missing.Skip(1).Select(fact => fact.Member)],
                    Words = [new("what", string.Join(" and ", missing.Select(fact => fact.What)))],
            });
        }
    }
}
