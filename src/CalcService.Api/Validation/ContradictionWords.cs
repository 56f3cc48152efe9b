using FluentValidation;
using FluentValidation.Results;

namespace CalcService.Api.Validation;

/// <summary>Words to write contradictions with.</summary>
public static class ContradictionWords
{
    public const string RangeCode = "range";

    /// <summary>Two members of the same object that can't both be: an error at each.</summary>
    public static void Contradict<T>(this ValidationContext<T> context, string first, string second, string message)
    {
        context.Fail(first, message);
        context.Fail(second, message);
    }

    /// <summary>A name of something that is known here; absent passes.</summary>
    public static void MustKnow<T>(this ValidationContext<T> context, string member, string? name, IReadOnlyList<string> known, string what)
    {
        if (name is not null && !known.Contains(name))
        {
            context.Fail(member, $"No such {what.Replace('-', ' ')}; known: {string.Join(", ", known)}.", "unknown-" + what);
        }
    }

    /// <summary>An error at a member below this object.</summary>
    public static void Fail<T>(this ValidationContext<T> context, string member, string message, string code = "contradiction") =>
        context.AddFailure(new ValidationFailure(member, message) { ErrorCode = code });
}
