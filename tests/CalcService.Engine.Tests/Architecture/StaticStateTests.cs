using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Architecture;

/// <summary>Nothing in the engine outlives a calculation and changes.</summary>
public sealed class StaticStateTests
{
    private const BindingFlags Statics = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    // Caches that the compiler writes for lambdas hold no state of anybody.
    private static readonly Type[] Types =
        [.. typeof(Budget).Assembly.GetTypes()
        .Where(type => !type.IsDefined(typeof(CompilerGeneratedAttribute)) && !type.ContainsGenericParameters)];

    [Fact]
    public void Static_field_is_written_once() =>
        Assert.All(Types.SelectMany(type => type.GetFields(Statics)),
            field => Assert.True(field.IsInitOnly || field.IsLiteral, $"{field.DeclaringType}.{field.Name} can change"));

    [Fact]
    public void Static_that_others_see_can_not_be_changed_by_them()
    {
        var seen = Types.SelectMany(type => type.GetProperties(Statics)).Where(property => property.GetIndexParameters().Length == 0)
            .ToArray();
        Assert.NotEmpty(seen);
        Assert.All(seen, property =>
        {
            Assert.Null(property.SetMethod);
            Assert.False(property.GetValue(null) is IList { IsReadOnly: false } or IDictionary { IsReadOnly: false },
                $"{property.DeclaringType}.{property.Name} can be changed");
        });
    }

    [Fact]
    public void Trace_that_all_share_remembers_nothing()
    {
        Trace.None.Of = "somebody's end";
        Trace.None.Step("basket-volume", 1);
        Assert.Equal("", Trace.None.Of);
        Assert.Empty(Trace.None.Steps);
    }
}
