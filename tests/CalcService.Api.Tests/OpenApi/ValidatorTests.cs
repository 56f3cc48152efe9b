using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Validation;
using FluentValidation;
using FluentValidation.Validators;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>Whatever is read from a request is validated.</summary>
public sealed class ValidatorTests(Service service)
{
    /// <summary>A validator that is not called from the one above it checks nothing.</summary>
    [Fact]
    public void Request_type_has_a_validator_and_the_type_above_it_calls_it()
    {
        var seen = new HashSet<Type>();
        var pending = new Queue<Type>(RequestTypes());
        while (pending.TryDequeue(out var type))
        {
            if (!seen.Add(type))
            {
                continue;
            }

            var validator = Assert.IsType<IValidator>(service.Services.GetService(typeof(IValidator<>).MakeGenericType(type)), exactMatch: false);
            foreach (var member in ShapeTable.Of(type).Members)
            {
                if ((member.Shape is ListShape list ? list.Item : member.Shape) is ObjectShape inner)
                {
                    pending.Enqueue(inner.Type);
                    Assert.True(validator.CreateDescriptor().GetValidatorsForMember(member.Property.Name).Any(rule => rule.Validator is IChildValidatorAdaptor), $"{type.Name}.{member.Name}");
                }
            }
        }

        Assert.True(seen.Count > 10);
    }

    [Fact]
    public void Check_of_a_request_type_that_nobody_validates_fails()
    {
        using var nobody = new ServiceCollection().BuildServiceProvider();
        Assert.All(RequestTypes(), type =>
        {
            ValidatorCheck.Run(service.Services, type);
            Assert.Contains(type.Name, Assert.Throws<InvalidOperationException>(() => ValidatorCheck.Run(nobody, type)).Message, StringComparison.Ordinal);
        });
    }

    /// <summary>Types that the mapped calculations say they take.</summary>
    private Type[] RequestTypes()
    {
        var types = service.Services.GetRequiredService<EndpointDataSource>().Endpoints
            .SelectMany(endpoint => endpoint.Metadata.OfType<Microsoft.AspNetCore.Http.Metadata.IAcceptsMetadata>())
            .Select(accepts => accepts.RequestType).OfType<Type>().Distinct().ToArray();
        Assert.NotEmpty(types);
        Assert.All(types, type => Assert.True(type.IsAssignableTo(typeof(Api.Contract.ICalculationRequest)), type.Name));
        return types;
    }
}
