using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Volumes and fit of one kind of end.</summary>
internal static class EndPlanner
{
    public static PlannedEnd Plan(PourScope scope, PourEnd end, int index)
    {
        var pointer = $"{PourPointers.Ends}/{index}";
        scope.Trace.Of = end.Id;
        var rope = RopeFacts.Of(end.Rope, pointer + "/rope", scope.Assumptions, scope.Trace);
        var basket = end.Basket;
        if (!end.ToleranceStated)
        {
            scope.Assume(pointer + "/socket/basket/tolerance", "sizes of the basket taken as exact", Measure.Length(0),
                AssumptionOrigin.Default);
        }

        var angle = Basket.IncludedAngleRad(basket.SmallEndDiameterM, basket.LargeEndDiameterM, basket.LengthM, scope.Trace);
        var planned = new PlannedEnd(
            end.Id, end.Quantity, rope, BasketFill.Of(basket, rope, end.WireEndsBelowMouthM ?? 0, scope.Trace), angle,
            WireSpacing.Of(basket, rope, scope.Trace))
        {
            Preparation = PreparationNumbers.Of(scope, end),
        };
        // Where nobody says what the rope is, that is the one fact to ask for.
        if (rope.MetallicAreaM2 is null && (scope.IsQuote || !end.Rope.IsIdentified))
        {
            scope.Assume(pointer + "/rope/metallicArea", "no metal is counted on in the basket", Measure.Area(0), AssumptionOrigin.Default);
        }
        else if (rope.MetallicAreaM2 is null)
        {
            scope.Find(PouringFindings.RopeAreaUnknown, pointer + "/rope/construction",
                related: [pointer + "/rope/core", pointer + "/rope/metallicArea"]);
        }

        FitChecks.Check(scope, end, planned, pointer);
        CheckBasket(scope, end, pointer);
        BroomChecks.Check(scope, end, pointer);
        AlignmentChecks.Check(scope, end, planned, pointer);
        planned = planned with { EvenedTemperatureK = EvenedTemperature.For(scope, end, planned) };
        scope.Trace.Of = "";
        return planned;
    }

    private static void CheckBasket(PourScope scope, PourEnd end, string pointer)
    {
        if (scope.VentOf(end) is { IsAbove: false } small)
        {
            scope.Find(PouringFindings.VentSmallBasket, pointer + "/rope/diameter", small);
        }
    }
}
