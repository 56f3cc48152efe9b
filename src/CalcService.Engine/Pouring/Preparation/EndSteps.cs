using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>The steps that make one end ready for the compound.</summary>
internal static class EndSteps
{
    public static IEnumerable<PlannedStep> Of(PourScope scope, PourEnd end, PlannedEnd planned)
    {
        var numbers = planned.Preparation;
        var broom = new StepValue("broomLength", Measure.Length(numbers.BroomLengthM));
        PlannedStep Step(StepDefinition definition, params IReadOnlyList<StepValue> values) =>
            new(definition, end.Id, null) { Values = values };

        yield return Step(StepCatalogue.Measure, new("ropeDiameter", Measure.Length(end.Rope.OverallDiameterM)),
            new("smallEnd", Measure.Length(end.Basket.SmallEndDiameterM)),
            new("mouth", Measure.Length(end.Basket.LargeEndDiameterM)), new("basketLength", Measure.Length(end.Basket.LengthM)));
        yield return Step(StepCatalogue.Seize, new("seizings", Measure.Count(numbers.Seizings)),
            new("widthLeast", Measure.Length(numbers.SeizingWidthLeastM)),
            new("widthMost", Measure.Length(numbers.SeizingWidthMostM)), new("spacing", Measure.Length(numbers.SeizingSpacingM)), broom);
        yield return Step(StepCatalogue.Cut, broom);
        yield return Step(StepCatalogue.Open, new StepValue("broomAngle", ((Measure?)scope.Rules.BroomAngle)!.Value));
        yield return Step(end.Rope.Core switch { RopeCore.Fibre => StepCatalogue.CoreFibre, RopeCore.Iwrc => StepCatalogue.CoreWire,
            _ => StepCatalogue.CoreUnknown });
        if (end.Rope.PlasticFilled == Fact.Yes)
        {
            yield return Step(StepCatalogue.Plastic);
        }

        if (end.Rope.Lubricant == Lubricant.Heavy)
        {
            yield return Step(StepCatalogue.Degrease);
        }

        yield return Step(end.Rope.Finish switch
        {
            WireFinish.Bright => StepCatalogue.CleanBright,
            WireFinish.Galvanized => StepCatalogue.CleanZinc,
            WireFinish.Stainless => StepCatalogue.CleanStainless,
            _ => StepCatalogue.CleanUnknown,
        });
        yield return Step(StepCatalogue.Dry);
        yield return end.WireEndsBelowMouthM is { } below ? Step(StepCatalogue.DrawIn, new StepValue("below", Measure.Length(below)))
            : Step(StepCatalogue.DrawInUnstated);
        yield return planned.Wires is [var small, var third, var mouth]
            ? Step(StepCatalogue.Space, new("gapSmallEnd", Measure.Length(small.ClearM)), new("gapThird", Measure.Length(third.ClearM)),
            new("gapMouth", Measure.Length(mouth.ClearM)))
            : Step(StepCatalogue.SpaceUnstated);
        yield return end.StraightBelowM is { } straight
            ? Step(StepCatalogue.Align, new StepValue("straightBelow", Measure.Length(straight))) : Step(StepCatalogue.AlignUnstated);
        yield return Step(StepCatalogue.Seal);
        if (!scope.VentOf(end).IsAbove)
        {
            yield return Step(StepCatalogue.Vent);
        }
    }
}
