using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>What the times of tasks may be.</summary>
public sealed class TaskTimesValidator : AbstractValidator<TaskTimes>
{
    public TaskTimesValidator()
    {
        RuleFor(times => times.SetUp).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.MeasureAndSeize).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.CutAndOpen).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.CleanAndDry).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.PositionAndSeal).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.MixAndPour).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.WaitForGel).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.Finish).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.ProofLoad).Between(0, 10080, "min", QuantityKind.Duration);
        RuleFor(times => times.Record).Between(0, 10080, "min", QuantityKind.Duration);
    }
}

/// <summary>What the rates of tasks may be.</summary>
public sealed class TaskRatesValidator : AbstractValidator<TaskRates>
{
    public TaskRatesValidator()
    {
        RuleFor(rates => rates.SetUp).Amount();
        RuleFor(rates => rates.MeasureAndSeize).Amount();
        RuleFor(rates => rates.CutAndOpen).Amount();
        RuleFor(rates => rates.CleanAndDry).Amount();
        RuleFor(rates => rates.PositionAndSeal).Amount();
        RuleFor(rates => rates.MixAndPour).Amount();
        RuleFor(rates => rates.WaitForGel).Amount();
        RuleFor(rates => rates.Finish).Amount();
        RuleFor(rates => rates.ProofLoad).Amount();
        RuleFor(rates => rates.Record).Amount();
    }
}
