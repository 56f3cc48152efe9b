using System.Reflection;
using System.Text.RegularExpressions;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Findings;

/// <summary>A limit gives its number to the one comparison and to those who show it, to nobody else.</summary>
public sealed partial class LimitTests
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly string[] Comparisons = ["op_LessThan", "op_GreaterThan", "op_LessThanOrEqual", "op_GreaterThanOrEqual",
        "op_Implicit"];

    /// <summary>What takes a limit's number for another use than to compare it, each under the name of its use.</summary>
    private static readonly string[] Uses = ["InPlaceOf", "KeptAbove", "KeptBelow"];

    /// <summary>Files that show limits, and the one that compares them.</summary>
    private static readonly string[] Shown =
    [
        "Findings/Judged.cs", "Findings/Finding.cs", "Findings/CheckRow.cs", "Findings/CalculationScope.cs", "Rules/RuleBook.cs",
            "Pouring/Preparation/HoldPoints.cs",
        "Pouring/Preparation/EndSteps.cs", "Proof/ProofLoadEvaluation.cs", "Audits/ProofDayChecks.cs", "Matching/FactorChecks.cs",
    ];

    public static TheoryData<Type> Limits => [typeof(Limit), typeof(RuleLimit)];

    [Theory]
    [MemberData(nameof(Limits))]
    public void Limit_has_no_number_to_compare(Type limit)
    {
        Type[] numbers = [typeof(double), typeof(double?), typeof(Measure), typeof(Measure?)];
        Assert.Empty(limit.GetProperties(Everything).Where(property => numbers.Contains(property.PropertyType)
            && !property.GetMethod!.IsFamily).Select(property => property.Name));
        Assert.Empty(limit.GetFields(Everything).Where(field => numbers.Contains(field.FieldType)
            && !field.IsPrivate).Select(field => field.Name));
        var methods = limit.GetMethods(Everything).Where(method => !method.IsPrivate && !method.IsFamily).ToArray();
        Assert.Empty(methods.Select(method => method.Name).Intersect(Comparisons));
        Assert.Empty(methods.Where(method => numbers.Contains(method.ReturnType)
            && method.Name != "op_Explicit").Select(method => method.Name).Except(Uses));
        Assert.False(limit.IsAssignableTo(typeof(IComparable)));
    }

    [Fact]
    public void Limit_is_turned_into_a_number_only_where_it_is_shown()
    {
        var source = SourceOf("src/CalcService.Engine");
        var casts = Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(file => Cast().IsMatch(File.ReadAllText(file))).Select(file => Path.GetRelativePath(source, file).Replace('\\', '/'));

        Assert.Equal(Shown.Order(StringComparer.Ordinal), casts.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(10, 10, false, false)]
    [InlineData(10 + 9e-9, 10, false, false)]
    [InlineData(10 + 11e-9, 10, true, false)]
    [InlineData(10 - 9e-9, 10, false, false)]
    [InlineData(10 - 11e-9, 10, false, true)]
    [InlineData(-10 + 11e-9, -10, true, false)]
    [InlineData(1e-300, 0, true, false)]
    public void What_equals_its_limit_but_for_rounding_keeps_it(double found, double limit, bool isAbove, bool isBelow)
    {
        var judged = new Judged(Measure.Length(found), Limit.Of(Measure.Length(limit)));

        Assert.Equal((isAbove, isBelow), (judged.IsAbove, judged.IsBelow));
    }

    [Fact]
    public void What_is_missing_exceeds_nothing() => Assert.All(
        [default, new(Measure.Length(1), null), new Judged(null, Limit.Of(Measure.Length(0)))], judged =>
            Assert.False(judged.IsAbove || judged.IsBelow));

    [Fact]
    public void What_was_found_is_held_against_no_limit_of_another_kind() =>
        Assert.Throws<ArgumentException>(() => new Judged(Measure.Days(400), Limit.Of(Measure.Months(12))));

    private static string SourceOf(string folder)
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(directory!.FullName, "CalcService.sln")))
        {
            directory = directory.Parent;
        }

        return Path.Combine(directory.FullName, folder);
    }

    [GeneratedRegex(@"\(Measure\??\)\s*[\w(]")]
    private static partial Regex Cast();
}
