using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>What the times of tasks may be.</summary>
public sealed class TaskTimesValidator : AbstractValidator<TaskTimes>
{
    public TaskTimesValidator()
    {
        this.Ranges()
            .Of(times => times.SetUp, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.MeasureAndSeize, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.CutAndOpen, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.CleanAndDry, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.PositionAndSeal, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.MixAndPour, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.WaitForGel, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.Finish, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.ProofLoad, 0, 10080, "min", QuantityKind.Duration)
            .Of(times => times.Record, 0, 10080, "min", QuantityKind.Duration);
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
