using System.Text.RegularExpressions;
using ArchUnitNET.Fluent.Syntax.Elements.Types;
using ArchUnitNET.Loader;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace CalcService.Engine.Tests.Architecture;

/// <summary>Who in the engine may know whom.</summary>
public sealed class ArchitectureTests
{
    private const string Root = "CalcService.Engine";

    /// <summary>What all rooms share. Every other namespace of the engine is a room.</summary>
    private static readonly string[] Shared =
        ["Ropes", "Sockets", "Compounds", "Cones", "Releases", "Numerics", "Findings", "Provenance", "Rules", "SelfTest"];

    private static readonly ArchUnitNET.Domain.Architecture Engine = new ArchLoader().LoadAssemblies(typeof(Budget).Assembly).Build();

    private static readonly string[] Namespaces =
    [
        .. typeof(Budget).Assembly.GetTypes().Select(type => type.Namespace ?? "")
            .Where(name => name.StartsWith(Root + ".", StringComparison.Ordinal))
            .Select(name => name.Split('.')[2]).Distinct().Order(StringComparer.Ordinal),
    ];

    private static readonly string[] Rooms = [.. Namespaces.Except(Shared)];

    public static TheoryData<string, string> Strangers
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            // Records alone may call the entries of the other rooms; nobody calls Records.
            pairs.AddRange(Rooms.Where(room => room != "Records")
                .SelectMany(room => Rooms.Where(other => other != room), (room, other) => (room, other)));
            pairs.AddRange(Shared.Where(shared => shared != "SelfTest").Intersect(Namespaces)
                .SelectMany(shared => Rooms, (shared, room) => (shared, room)));
            pairs.AddRange(Namespaces.Where(name => name != "Numerics").Select(name => ("Numerics", name)));
            pairs.AddRange(Namespaces.Where(name => name != "Provenance").Select(name => ("Provenance", name)));
            pairs.AddRange(Namespaces.Where(name => name != "SelfTest").Select(name => (name, "SelfTest")));
            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Strangers))]
    public void Part_of_the_engine_does_not_know_what_is_not_its_business(string part, string stranger) =>
        Assert.True(DoesNotDepend(part, stranger).HasNoViolations(Engine), $"{part} depends on {stranger}");

    [Theory]
    [InlineData("Pouring", "Numerics")]
    [InlineData("Pouring", "Ropes")]
    [InlineData("Sockets", "Ropes")]
    [InlineData("SelfTest", "Pouring")]
    public void Dependency_that_is_there_is_seen(string part, string known) =>
        // The rule itself can fail: these depend on each other and may.
        Assert.False(DoesNotDepend(part, known).HasNoViolations(Engine));

    [Fact]
    public void Rooms_are_those_of_the_house() => Assert.Contains("Pouring", Rooms);

    [Theory]
    [InlineData("^Microsoft\\.(AspNetCore|Extensions)")]
    [InlineData("^System\\.Text\\.Json")]
    [InlineData("^System\\.Net")]
    [InlineData("^(Serilog|UnitsNet|FluentValidation|Swashbuckle|CalcService\\.Api)")]
    public void Engine_knows_no_web_no_wire_no_log_and_no_units_library(string stranger)
    {
        var known = Engine.Types.SelectMany(type => type.Dependencies).Select(dependency => dependency.Target.FullName).Distinct()
            .ToArray();
        Assert.Contains("System.Math", known);
        Assert.DoesNotContain(known, name => Regex.IsMatch(name, stranger));
        Assert.DoesNotContain(typeof(Budget).Assembly.GetReferencedAssemblies(), assembly => Regex.IsMatch(assembly.Name!, stranger));
    }

    private static TypesShouldConjunction DoesNotDepend(string part, string stranger) =>
        Types().That().ResideInNamespaceMatching(Pattern(part)).Should()
        .NotDependOnAny(Types().That().ResideInNamespaceMatching(Pattern(stranger)));

    private static string Pattern(string part) => $"^{Regex.Escape(Root)}\\.{part}(\\.|$)";
}
