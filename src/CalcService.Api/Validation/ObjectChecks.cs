using System.Collections.Concurrent;
using CalcService.Api.Reading;
using FluentValidation;

namespace CalcService.Api.Validation;

/// <summary>The validators of the contract's types, each made when an object of its type is first read.</summary>
/// <param name="services">What validators need to know.</param>
public sealed class ObjectChecks(IServiceProvider services)
{
    private static readonly Dictionary<Type, Type> ByValidated =
        AssemblyScanner.FindValidatorsInAssembly(typeof(ObjectChecks).Assembly)
            .ToDictionary(found => found.InterfaceType.GetGenericArguments()[0], found => found.ValidatorType);

    private readonly ConcurrentDictionary<Type, IValidator?> _made = new();

    /// <summary>Adds what contradicts itself in an object that was read whole.</summary>
    public void Check(object value, ReadErrors errors)
    {
        if (_made.GetOrAdd(value.GetType(), Make) is not { } validator)
        {
            return;
        }

        foreach (var error in validator.Validate(new ValidationContext<object>(value)).Errors)
        {
            errors.Contradiction(Pointers.FromPropertyPath(error.PropertyName), error.ErrorCode, error.ErrorMessage);
        }
    }

    private IValidator? Make(Type type) => ByValidated.TryGetValue(type, out var validator)
        ? (IValidator)ActivatorUtilities.CreateInstance(services, validator)
        : null;
}
