using System.Globalization;
using CalcService.Api.Units;
using FluentValidation;
using FluentValidation.Validators;

namespace CalcService.Api.Validation;

/// <summary>The range of a quantity, as the schema's description shows it.</summary>
public interface IQuantityRange
{
    /// <summary>The range in words.</summary>
    string Text { get; }
}

/// <summary>A quantity between two values, ends allowed; absent passes.</summary>
public sealed class QuantityRange<T>(double least, double most, Unit unit) : PropertyValidator<T, Quantity?>, IQuantityRange
{
    private readonly double _leastSi = Rounding.ToDigits(unit.ToSi(least), Rounding.InputDigits);
    private readonly double _mostSi = Rounding.ToDigits(unit.ToSi(most), Rounding.InputDigits);

    public override string Name => "range";

    public string Text { get; } = string.Create(CultureInfo.InvariantCulture, $"{least} to {most} {unit.Code}");

    public override bool IsValid(ValidationContext<T> context, Quantity? value)
    {
        if (value is null || (value.Si >= _leastSi && value.Si <= _mostSi))
        {
            return true;
        }

        context.MessageFormatter.AppendArgument("Found", string.Create(CultureInfo.InvariantCulture, $"{value.Value} {value.Unit}"));
        context.MessageFormatter.AppendArgument("Allowed", Text);
        return false;
    }

    protected override string GetDefaultMessageTemplate(string errorCode) => "{Found} is out of range; allowed: {Allowed}.";
}
