using System.Runtime.CompilerServices;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using FluentValidation;
using FluentValidation.Results;
using FluentValidation.Validators;

namespace CalcService.Api.Validation;

/// <summary>
/// The ranges of an object's quantities, in one rule: a request has some fifty of them, and a rule for each spent more
/// on the path of its member than on the comparison.
/// </summary>
public sealed class QuantityRanges<T> : PropertyValidator<T, T>, IQuantityRanges
{
    private readonly List<(string Member, Func<T, Quantity?> Quantity, QuantityLimits Limits)> _ranges = [];

    public override string Name => "ranges";

    /// <summary>Adds a quantity that lies between two values, ends allowed; absent passes.</summary>
    /// <param name="quantity">The member, as "rope => rope.Diameter".</param>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    /// <param name="unit">Their unit.</param>
    /// <param name="kind">The kind of quantity.</param>
    /// <param name="member">The member as it is written; for the compiler to fill in.</param>
    public QuantityRanges<T> Of(Func<T, Quantity?> quantity, double least, double most, string unit, QuantityKind kind,
        [CallerArgumentExpression(nameof(quantity))] string member = "")
    {
        _ranges.Add((member[(member.LastIndexOf('.') + 1)..].TrimEnd('!'), quantity, new(least, most, UnitTable.Of(kind).Find(unit)!)));
        return this;
    }

    /// <summary>The range of a member in words, as the schema's description shows it; null where it has none.</summary>
    public string? TextOf(string member) => _ranges.Find(range => range.Member == member).Limits?.Text;

    public override bool IsValid(ValidationContext<T> context, T value)
    {
        foreach (var (member, quantity, limits) in _ranges)
        {
            if (quantity(value) is { } found && !limits.Hold(found))
            {
                context.AddFailure(new ValidationFailure(context.PropertyChain.BuildPropertyPath(member), limits.Refuse(found)) { ErrorCode = RuleWords.RangeCode });
            }
        }

        // What fails is told of the members, not of the object.
        return true;
    }
}

/// <summary>The ranges of an object's quantities, as the schema's descriptions show them.</summary>
public interface IQuantityRanges
{
    /// <summary>The range of a member in words; null where it has none.</summary>
    string? TextOf(string member);
}
