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
        var members = RequestTypes().SelectMany(shape => shape.Members, (shape, member) => (shape.Type, Member: member)).ToArray();

        Assert.All(members, one => Assert.True(HasRange(one.Member.Shape), $"{one.Type.Name}.{one.Member.Name}"));
        Assert.True(members.Length > 200);
    }

    /// <summary>A validator of a type that no request has checks nothing.</summary>
    [Fact]
    public void Validator_checks_a_type_that_stands_in_a_request()
    {
        var types = RequestTypes().Select(shape => shape.Type).ToHashSet();

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

    private HashSet<ObjectShape> RequestTypes()
    {
        var seen = new HashSet<ObjectShape>();
        var pending = new Queue<ObjectShape>(service.Capabilities.Select(capability => ShapeTable.Of(capability.RequestType)));
        while (pending.TryDequeue(out var shape))
        {
            if (seen.Add(shape))
            {
                foreach (var inner in shape.Members.Select(member => member.Shape is ListShape list ? list.Item : member.Shape).OfType<ObjectShape>())
                {
                    pending.Enqueue(inner);
                }
            }
        }

        return seen;
    }
}
