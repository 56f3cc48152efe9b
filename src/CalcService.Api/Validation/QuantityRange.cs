using CalcService.Api.Units;
using FluentValidation;
using FluentValidation.Validators;

namespace CalcService.Api.Validation;

/// <summary>A quantity between two values, ends allowed; absent passes.</summary>
public sealed class QuantityRange<T>(QuantityLimits limits) : PropertyValidator<T, Quantity?>, IQuantityRange
{
    public override string Name => "range";

    public string Text => limits.Text;

    public override bool IsValid(ValidationContext<T> context, Quantity? value)
    {
        if (!limits.Hold(value))
        {
            context.MessageFormatter.AppendArgument("Refusal", limits.Refuse(value!));
            return false;
        }

        return true;
    }

    protected override string GetDefaultMessageTemplate(string errorCode) => "{Refusal}";
}

/// <summary>The range of a quantity, as the schema's description shows it.</summary>
public interface IQuantityRange
{
    /// <summary>The range in words.</summary>
    string Text { get; }
}
