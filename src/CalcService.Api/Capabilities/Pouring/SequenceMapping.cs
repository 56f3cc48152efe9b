using CalcService.Api.Answers;
using CalcService.Api.Units;
using CalcService.Engine.Pouring.Preparation;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>The work of a plan from the engine to the contract.</summary>
internal static class SequenceMapping
{
    public static EndNumbers Numbers(EndPreparation numbers, UnitSystem units)
    {
        Quantity Length(double si) => Quantity.From(Measure.Length(si), units);
        return new()
        {
            Seizings = numbers.Seizings,
            SeizingWidthLeast = Length(numbers.SeizingWidthLeastM),
            SeizingWidthMost = Length(numbers.SeizingWidthMostM),
            SeizingSpacing = Length(numbers.SeizingSpacingM),
            GripLength = Length(numbers.GripLengthM),
            BroomLength = Length(numbers.BroomLengthM),
        };
    }

    public static IReadOnlyList<SequenceStep> Steps(IReadOnlyList<PlannedStep> steps, UnitSystem units)
    {
        var mapped = new SequenceStep[steps.Count];
        for (var i = 0; i < mapped.Length; i++)
        {
            mapped[i] = Step(steps[i], i + 1, units);
        }

        return mapped;
    }

    private static SequenceStep Step(PlannedStep step, int number, UnitSystem units) => new()
    {
        Number = number,
        Task = step.Definition.Task,
        End = step.End,
        Mix = step.Mix,
        Values = step.Values.Select(value => new NamedQuantity { Name = value.Name, Value = Quantity.From(value.Value, units) }).ToArray(),
        Text = AnswerText.Fill(step, units),
        Source = AnswerMaker.Source(step.Definition.Source),
    };

    public static WorkHoldPoint Point(HoldPoint point, UnitSystem units)
    {
        return new()
        {
            Task = point.Task,
            What = point.What,
            End = point.End,
            Mix = point.Mix,
            Reading = Quantity.From(point.Reading, units),
            Minimum = Quantity.From(point.Minimum, units),
            Maximum = Quantity.From(point.Maximum, units),
            At = point.At,
            Text = point.Text,
            By = point.By,
        };
    }
}
