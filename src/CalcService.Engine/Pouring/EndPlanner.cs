using CalcService.Engine.Findings;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Volumes and fit of one kind of end.</summary>
internal static class EndPlanner
{
    private static readonly (string Place, double Share)[] Sections = [("smallEnd", 0), ("oneThird", 1.0 / 3), ("mouth", 1)];

    public static PlannedEnd Plan(PourScope scope, PourEnd end, int index)
    {
        var pointer = $"{PourPointers.Ends}/{index}";
        scope.Trace.Of = end.Id;
        var rope = RopeFacts.Of(end.Rope, pointer + "/rope", scope.Assumptions, scope.Trace);
        var basket = end.Basket;
        if (!end.ToleranceStated)
        {
            scope.Assume(pointer + "/socket/basket/tolerance", "sizes of the basket taken as exact", Measure.Length(0), AssumptionOrigin.Default);
        }

        var angle = Basket.IncludedAngleRad(basket.SmallEndDiameterM, basket.LargeEndDiameterM, basket.LengthM, scope.Trace);
        var planned = new PlannedEnd(
            end.Id, end.Quantity, rope, BasketFill.Of(basket, rope, end.WireEndsBelowMouthM ?? 0, scope.Trace), angle, Spacing(basket, rope, scope.Trace))
        {
            Preparation = PreparationNumbers.Of(scope, end),
        };
        CheckRope(scope, end.Rope, rope, pointer + "/rope");
        FitChecks.Check(scope, end, planned, pointer);
        CheckProportions(scope, end, angle, pointer);
        BroomChecks.Check(scope, end, pointer);
        AlignmentChecks.Check(scope, end, planned, pointer);
        planned = planned with { EvenedTemperatureK = EvenedTemperature.For(scope, end, planned) };
        scope.Trace.Of = "";
        return planned;
    }

    private static List<WireSpacing> Spacing(Basket basket, RopeFacts rope, Trace trace)
    {
        if (rope.WireCount is not { } wires || rope.WireDiameterM is not { } wire)
        {
            return [];
        }

        return [.. Sections.Select(section =>
        {
            var diameter = basket.DiameterAtM(section.Share);
            var centres = Broom.WireSpacingM(diameter, wires, trace);
            return new WireSpacing(section.Place, diameter, centres, centres - wire);
        })];
    }

    private static void CheckRope(PourScope scope, Rope rope, RopeFacts facts, string pointer)
    {
        if (facts.MetallicAreaM2 is null)
        {
            scope.Find(PouringFindings.RopeAreaUnknown, pointer + "/construction", related: [pointer + "/core", pointer + "/metallicArea"]);
        }

        CheckIdentity(scope, rope, pointer);
        if (rope.Grade is not { } grade)
        {
            scope.Find(PouringFindings.RopeFactMissing, pointer + "/grade",
                words: [new("what", "grade"), new("why", "above the ordinary grades special precautions hold")]);
        }
        else if (grade > scope.Rules.HighestOrdinaryGrade.Value!.Value.Si)
        {
            scope.Find(PouringFindings.HighGrade, pointer + "/grade", Measure.Count(grade), scope.Rules.HighestOrdinaryGrade.Value);
        }

        if (rope.Finish == WireFinish.Stainless)
        {
            scope.Find(PouringFindings.Stainless, pointer + "/finish");
        }
        else if (rope.Finish == WireFinish.Unknown)
        {
            scope.Find(PouringFindings.RopeFactMissing, pointer + "/finish",
                words: [new("what", "finish"), new("why", "coating and steel of the wires decide how they are cleaned")]);
        }
    }

    private static void CheckIdentity(PourScope scope, Rope rope, string pointer)
    {
        if (rope.Construction is null)
        {
            scope.Find(PouringFindings.RopeIdentityMissing, pointer + "/construction", words: new FindingWord("what", "construction"));
        }

        if (rope.Core == RopeCore.Unknown)
        {
            scope.Find(PouringFindings.RopeIdentityMissing, pointer + "/core", words: new FindingWord("what", "core"));
        }
    }

    private static void CheckProportions(PourScope scope, PourEnd end, double angle, string pointer)
    {
        if (end.SizesFrom == SizesFrom.Memory)
        {
            scope.Find(PouringFindings.GeometryFromMemory, pointer + "/socket/basket/sizesFrom", related: [pointer + "/socket/basket"]);
        }

        if (end.Rope.DiameterM <= scope.Rules.VentUpTo.Value!.Value.Si * (1 + 1e-11))
        {
            scope.Find(PouringFindings.VentSmallBasket, pointer + "/rope/diameter", Measure.Length(end.Rope.DiameterM), scope.Rules.VentUpTo.Value);
        }

        var inDiameters = end.GripLengthM / end.Rope.DiameterM;
        var least = scope.Rules.BasketLengthInDiameters.Value!.Value;
        // Sizes carry twelve digits, so equality is judged with that much room.
        if (inDiameters < least.Si * (1 - 1e-11))
        {
            scope.Find(PouringFindings.BasketShort, pointer + "/socket/basket/length", Measure.Count(inDiameters), least, [pointer + "/rope/diameter"]);
        }

        var (slimmest, steepest) = (scope.Rules.ConeAngleLeast.Value!.Value, scope.Rules.ConeAngleMost.Value!.Value);
        if (angle < slimmest.Si || angle > steepest.Si)
        {
            scope.Find(PouringFindings.ConeAngleUnusual, pointer + "/socket/basket", Measure.Angle(angle),
                angle < slimmest.Si ? slimmest : steepest, words: [new("minimum", slimmest), new("maximum", steepest)]);
        }
    }
}
