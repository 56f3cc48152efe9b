using System.Runtime.CompilerServices;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using FluentValidation;
using FluentValidation.Validators;

namespace CalcService.Api.Validation;

/// <summary>
/// The ranges of an object's members, in one rule: a request has some fifty of them, and a rule for each spent more
/// on the path of its member than on the comparison.
/// </summary>
public sealed class Ranges<T> : PropertyValidator<T, T>, IRanges
{
    private readonly List<(string Member, Func<T, Quantity?> Quantity, QuantityLimits Limits)> _quantities = [];
    private readonly List<(string Member, Func<T, int?> Number, int Least, int Most)> _numbers = [];

    public override string Name => "ranges";

    /// <summary>Adds a quantity that lies between two values, ends allowed; absent passes.</summary>
    /// <param name="quantity">The member, as "rope => rope.Diameter".</param>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    /// <param name="unit">Their unit.</param>
    /// <param name="kind">The kind of quantity.</param>
    /// <param name="member">The member as it is written; for the compiler to fill in.</param>
    public Ranges<T> Of(Func<T, Quantity?> quantity, double least, double most, string unit, QuantityKind kind,
        [CallerArgumentExpression(nameof(quantity))] string member = "")
    {
        _quantities.Add((NameOf(member), quantity, new(least, most, UnitTable.Of(kind).Find(unit)!)));
        return this;
    }

    /// <summary>Adds a whole number that lies between two values, ends allowed; absent passes.</summary>
    /// <param name="number">The member, as "rope => rope.Grade".</param>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    /// <param name="member">The member as it is written; for the compiler to fill in.</param>
    public Ranges<T> Of(Func<T, int?> number, int least, int most, [CallerArgumentExpression(nameof(number))] string member = "")
    {
        _numbers.Add((NameOf(member), number, least, most));
        return this;
    }

    public string? WordsOf(string member) => _quantities.Find(range => range.Member == member).Limits?.Text;

    public (int Least, int Most)? NumbersOf(string member) =>
        _numbers.Find(range => range.Member == member) is { Member: not null } range ? (range.Least, range.Most) : null;

    public override bool IsValid(ValidationContext<T> context, T value)
    {
        foreach (var (member, quantity, limits) in _quantities)
        {
            if (quantity(value) is { } found && !limits.Hold(found))
            {
                context.Fail(member, limits.Refuse(found), RuleWords.RangeCode);
            }
        }

        foreach (var (member, number, least, most) in _numbers)
        {
            if (number(value) is { } found && (found < least || found > most))
            {
                context.Fail(member, RuleWords.OutOfRange(found, least, most), RuleWords.RangeCode);
            }
        }

        // What fails is told of the members, not of the object.
        return true;
    }

    private static string NameOf(string member) => member[(member.LastIndexOf('.') + 1)..].TrimEnd('!');
}

/// <summary>The ranges of an object's members, as the schema shows them.</summary>
public interface IRanges
{
    /// <summary>The range of a quantity in words; null where the member has none.</summary>
    string? WordsOf(string member);

    /// <summary>The range of a whole number; null where the member has none.</summary>
    (int Least, int Most)? NumbersOf(string member);
}
