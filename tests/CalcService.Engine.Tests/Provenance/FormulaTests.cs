using System.Reflection;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Tests.Provenance;

/// <summary>Every formula says where it comes from and where it holds, and is held against something outside the engine.</summary>
public sealed class FormulaTests
{
    private static readonly (MethodInfo Method, FormulaAttribute Formula)[] Marked =
    [
        .. typeof(FormulaCatalogue).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods(Every | BindingFlags.DeclaredOnly))
            .Select(method => (method, method.GetCustomAttribute<FormulaAttribute>()!))
            .Where(pair => pair.Item2 is not null),
    ];

    private static readonly (MethodInfo Method, VerifiesAttribute Verifies)[] Verifications =
    [
        .. typeof(FormulaTests).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods(Every | BindingFlags.DeclaredOnly))
            .SelectMany(method => method.GetCustomAttributes<VerifiesAttribute>().Select(verifies => (method, verifies))),
    ];

    private const BindingFlags Every = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance;

    public static TheoryData<string> Ids => [.. Marked.Select(pair => pair.Formula.Id)];

    [Fact]
    public void Catalogue_holds_every_marked_method() =>
        Assert.Equal(Marked.Select(pair => pair.Formula.Id).Order(StringComparer.Ordinal),
        FormulaCatalogue.All.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Formula_says_its_document_its_range_and_its_words(string id)
    {
        var formula = FormulaCatalogue.All[id];
        Assert.All(
            [formula.Document, formula.Range, formula.Symbol, formula.Name, formula.Expression],
            text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Matches("^[a-z]+(-[a-z]+)*$", id);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Formula_that_quotes_a_document_says_the_place_in_it(string id)
    {
        var formula = FormulaCatalogue.All[id];
        Assert.False(formula.Basis is Basis.Published or Basis.Law && string.IsNullOrWhiteSpace(formula.Clause));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Formula_has_a_check_from_outside(string id) =>
        Assert.Contains(Verifications, pair => pair.Verifies.Formula == id);

    [Fact]
    public void Check_names_a_formula_and_a_source_and_is_run() =>
        Assert.All(Verifications, pair =>
        {
            Assert.True(FormulaCatalogue.All.ContainsKey(pair.Verifies.Formula), $"{pair.Method.Name} verifies an unknown formula");
            Assert.False(string.IsNullOrWhiteSpace(pair.Verifies.Source));
            Assert.True(Enum.IsDefined(pair.Verifies.Check));
            // A theory is a fact too.
            Assert.NotNull(pair.Method.GetCustomAttribute<FactAttribute>());
            Assert.Null(pair.Method.GetCustomAttribute<FactAttribute>()!.Skip);
        });

    [Fact]
    public void Formula_writes_itself_to_the_trace_with_the_value_it_returns()
    {
        var trace = new Trace(on: true);
        var value = CalcService.Engine.Sockets.Basket.VolumeM3(.023, .045, .1, trace);

        var step = Assert.Single(trace.Steps);
        Assert.Equal("basket-volume", step.Formula.Id);
        Assert.Equal(new Measure(value, QuantityKind.Volume), step.Value);
        Assert.Equal(["L", "D", "d"], step.Substitutions.Select(substitution => substitution.Symbol));
    }

    [Fact]
    public void Trace_switched_off_records_nothing()
    {
        var trace = new Trace(on: false);
        Assert.Equal(3.5, trace.Step("basket-volume", 3.5));
        Assert.Empty(trace.Steps);
    }
}
