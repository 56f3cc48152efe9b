using System.Globalization;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using FluentValidation;
using FluentValidation.Results;

namespace CalcService.Api.Validation;

/// <summary>Words to write validators with.</summary>
public static class RuleWords
{
    public const string RangeCode = "range";
    public const string ContradictionCode = "contradiction";

    /// <summary>The ranges of an object's members; they are added to what this gives.</summary>
    public static Ranges<T> Ranges<T>(this AbstractValidator<T> validator)
    {
        var ranges = new Ranges<T>();
        validator.RuleFor(value => value).SetValidator(ranges);
        return ranges;
    }

    /// <summary>A quantity from one value to another, in a unit of its kind, where it has further rules or stands in a list.</summary>
    public static IRuleBuilderOptions<T, Quantity?> Between<T>(
        this IRuleBuilder<T, Quantity?> rule, double least, double most, string unit, QuantityKind kind) =>
        rule.SetValidator(new QuantityRange<T>(new(least, most, UnitTable.Of(kind).Find(unit)!))).WithErrorCode(RangeCode);

    /// <summary>Says what was found and what is allowed, the same in every culture.</summary>
    public static string OutOfRange(IFormattable? found, IFormattable least, IFormattable most) =>
        string.Create(CultureInfo.InvariantCulture, $"{found} is out of range; allowed: {least} to {most}.");

    /// <summary>Two members of the same object that can't both be: an error at each.</summary>
    public static void Contradict<T>(this ValidationContext<T> context, string first, string second, string message)
    {
        context.Fail(first, message);
        context.Fail(second, message);
    }

    /// <summary>An error at a member below this object.</summary>
    public static void Fail<T>(this ValidationContext<T> context, string member, string message, string code = ContradictionCode) =>
        context.AddFailure(new ValidationFailure(context.PropertyChain.BuildPropertyPath(member), message) { ErrorCode = code });
}
