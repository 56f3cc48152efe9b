using FluentValidation;

namespace CalcService.Api.Validation;

/// <summary>What in an object contradicts something else in it. What each member may be by itself stands at the member.</summary>
public abstract class Contradictions<T> : AbstractValidator<T>
{
    protected Contradictions() => RuleFor(value => value).Custom(Check);

    /// <summary>Looks at an object that was read whole; its numbers may be out of range.</summary>
    protected abstract void Check(T value, ValidationContext<T> context);
}
