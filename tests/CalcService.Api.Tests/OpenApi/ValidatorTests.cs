using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>Whatever is read from a request is held against what it may be.</summary>
public sealed class ValidatorTests(Service service)
{
    /// <summary>A number that may be anything makes answers of anything.</summary>
    [Fact]
    public void Number_of_a_request_has_a_range()
    {
        var members = RequestTypes.Of(service).SelectMany(shape => shape.Members, (shape, member) => (shape.Type, Member: member))
            .ToArray();

        Assert.All(members, one => Assert.True(HasRange(one.Member.Shape), $"{one.Type.Name}.{one.Member.Name}"));
        Assert.True(members.Length > 200);
    }

    /// <summary>A validator of a type that no request has checks nothing.</summary>
    [Fact]
    public void Validator_checks_a_type_that_stands_in_a_request()
    {
        var types = RequestTypes.Of(service).Select(shape => shape.Type).ToHashSet();

        var validators = AssemblyScanner.FindValidatorsInAssembly(typeof(ObjectChecks).Assembly).ToArray();

        Assert.All(validators, found => Assert.Contains(found.InterfaceType.GetGenericArguments()[0], types));
        Assert.True(validators.Length > 10);
    }

    private static bool HasRange(Shape shape) => shape switch
    {
        QuantityShape quantity => quantity.Range is not null,
        IntegerShape number => number.Range is not null,
        ListShape list => HasRange(list.Item),
        NumberShape or BooleanShape => false,
        _ => true,
    };
}
