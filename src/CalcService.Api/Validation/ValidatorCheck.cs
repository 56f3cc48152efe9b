using CalcService.Api.Reading;
using FluentValidation;

namespace CalcService.Api.Validation;

/// <summary>
/// Holds requests and validators together at start: a type without a validator would take any number, and the
/// document would show it as an answer.
/// </summary>
public static class ValidatorCheck
{
    /// <exception cref="InvalidOperationException">A type of the request has no validator.</exception>
    public static void Run(IServiceProvider services, Type request) => Run(services, ShapeTable.Of(request), []);

    private static void Run(IServiceProvider services, ObjectShape shape, HashSet<Type> seen)
    {
        if (!seen.Add(shape.Type))
        {
            return;
        }

        if (services.GetService(typeof(IValidator<>).MakeGenericType(shape.Type)) is null)
        {
            throw new InvalidOperationException($"{shape.Type.Name} is read from requests and has no validator.");
        }

        foreach (var member in shape.Members)
        {
            if ((member.Shape is ListShape list ? list.Item : member.Shape) is ObjectShape inner)
            {
                Run(services, inner, seen);
            }
        }
    }
}
