using System.Globalization;
using System.Reflection;
using System.Reflection.Emit;
using System.Text;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Reading;

public sealed class ShapeTableTests
{
    /// <summary>Up to the last bit of the reader's word each member is met by itself.</summary>
    [Fact]
    public void Object_of_64_members_is_read_and_each_member_missed_or_met_twice_is_said()
    {
        var shape = Wide(64);
        string[] names = [.. shape.Members.Select(member => member.Name)];

        Assert.Empty(Read(shape, names).Errors);
        Assert.All(names, name =>
        {
            var missing = Assert.Single(Read(shape, names.Where(other => other != name)).Errors);
            Assert.Equal(("/" + name, "required"), (missing.Pointer, missing.Code));
            var twice = Assert.Single(Read(shape, names.Append(name)).Errors);
            Assert.Equal(("/" + name, "duplicate-member"), (twice.Pointer, twice.Code));
        });
    }

    [Fact]
    public void Object_of_65_members_is_refused() =>
        Assert.Equal("Short has 65 members; an object of the contract has at most 64.",
        Assert.Throws<InvalidOperationException>(() => Wide(65)).Message);

    /// <summary>The shapes of all requests are made when the service starts.</summary>
    [Fact]
    public void Request_with_an_object_of_more_members_refuses_the_start_with_its_name()
    {
        var refused = Assert.Throws<InvalidOperationException>(() => ShapeTable.Of(WithProperties("TooMany", 65)));

        Assert.Equal("TooMany has 65 members; an object of the contract has at most 64.", refused.Message);
    }

    private static ObjectShape Wide(int members)
    {
        var property = typeof(Short).GetProperty(nameof(Short.Text))!;
        return new(typeof(Short), [.. Enumerable.Range(0, members).Select(number => new MemberShape<Short, string>(
            property, string.Create(CultureInfo.InvariantCulture, $"m{number}"), new TextShape(1), required: true, nullable: false))]);
    }

    private static ReadResult Read(ObjectShape shape, IEnumerable<string> names) =>
        BodyReader.Read(Encoding.UTF8.GetBytes($"{{{string.Join(',', names.Select(name => $"\"{name}\":\"x\""))}}}"), shape,
        Unchecked.Objects);

    private sealed record Short
    {
        public required string Text { get; set; }
    }

    /// <summary>A type with so many properties that nobody has to write.</summary>
    private static TypeInfo WithProperties(string name, int count)
    {
        var type = AssemblyBuilder.DefineDynamicAssembly(new AssemblyName(name), AssemblyBuilderAccess.Run).DefineDynamicModule(name)
            .DefineType(name, TypeAttributes.Public);
        for (var number = 0; number < count; number++)
        {
            var get = type.DefineMethod($"get_P{number}", MethodAttributes.Public, typeof(int), []);
            var code = get.GetILGenerator();
            code.Emit(OpCodes.Ldc_I4_0);
            code.Emit(OpCodes.Ret);
            type.DefineProperty($"P{number}", PropertyAttributes.None, typeof(int), null).SetGetMethod(get);
        }

        return type.CreateTypeInfo();
    }
}
