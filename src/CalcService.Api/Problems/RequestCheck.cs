using CalcService.Api.Reading;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Problems;

/// <summary>Runs a validator on a request that was read clean.</summary>
public static class RequestCheck
{
    public static IReadOnlyList<ProblemError> Errors<T>(IValidator<T> validator, T request)
    {
        var validation = validator.Validate(request);
        if (validation.IsValid)
        {
            return [];
        }

        var errors = validation.Errors.Take(ReadErrors.Most).Select(error => new ProblemError
        {
            Pointer = Pointers.FromPropertyPath(error.PropertyName),
            Code = error.ErrorCode,
            Detail = error.ErrorMessage,
        });
        return validation.Errors.Count <= ReadErrors.Most ? [.. errors] : [.. errors, ProblemError.From(ReadErrors.TooMany(isUnreadable: false))];
    }
}
