using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Findings;

/// <summary>A question with one thing wrong, and the finding that has to say so.</summary>
public interface IFindingCase
{
    /// <summary>The finding.</summary>
    string Code { get; }

    /// <summary>How much it weighs.</summary>
    Severity Severity { get; }

    /// <summary>The member it points to.</summary>
    string Pointer { get; }

    /// <summary>Codes that follow from the same fault.</summary>
    IReadOnlyList<string> Besides { get; }
}

/// <summary>What holds for the findings of every room.</summary>
public static class CatalogueCases
{
    public static TheoryData<int, string> Numbered(IReadOnlyList<IFindingCase> cases) =>
        [.. cases.Select((one, index) => new TheoryDataRow<int, string>(index, $"{index} {one.Code} {one.Severity} {one.Pointer}"))];

    /// <summary>The finding is there, and no other than those that follow from the same fault.</summary>
    public static void Raises(IFindingCase one, string what, IReadOnlyList<Finding> findings)
    {
        Assert.True(
            findings.Any(finding => finding.Definition.Code == one.Code && finding.Severity == one.Severity
            && finding.Pointer == one.Pointer),
            $"{what} is not among: {string.Join(", ", findings.Select(f => $"{f.Definition.Code} {f.Severity} {f.Pointer}"))}");
        Assert.Equal([.. one.Besides.Append(one.Code).Order(StringComparer.Ordinal)],
            findings.Select(finding => finding.Definition.Code).Distinct().Order(StringComparer.Ordinal));
    }

    public static void DecidesByTheWorst(Decision decision, string what, IReadOnlyList<Finding> findings)
    {
        var severities = findings.Select(finding => finding.Severity).ToArray();
        var expected = severities.Contains(Severity.Stop) ? Decision.DoNotProceed
            : severities.Contains(Severity.Unknown) ? Decision.Undetermined
            : severities.Contains(Severity.Caution) ? Decision.ProceedWithCare
            : Decision.Proceed;
        Assert.True(expected == decision, what);
    }

    /// <summary>Message and action find a word for each of their places, and the severity is one of the definition's.</summary>
    public static void FillTheirWords(string what, IReadOnlyList<Finding> findings) => Assert.All(findings, finding =>
    {
        var given = finding.Words.Select(word => word.Name).ToHashSet(StringComparer.Ordinal);
        given.UnionWith(finding.Measured is null ? [] : ["measured"]);
        given.UnionWith(finding.Limit is null ? [] : ["limit"]);
        var asked = (finding.Definition.Message + finding.Definition.Action).Split('{').Skip(1)
            .Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)])
            // What is rounded up says so after its name.
            .Select(name => name.Split(' ')[0]);
        Assert.True(asked.All(given.Contains), $"{what}: {finding.Definition.Message} has only {string.Join(", ", given)}");
        Assert.Contains(finding.Severity, finding.Definition.Severities);
    });

    /// <summary>Each definition has a case in each of its severities.</summary>
    public static void AreAllRaised(IReadOnlyList<FindingDefinition> all, IReadOnlyList<IFindingCase> cases) => Assert.Equal(
        all.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}"))
        .Order(StringComparer.Ordinal),
        cases.Select(one => $"{one.Code} {one.Severity}").Distinct().Order(StringComparer.Ordinal));

    /// <summary>The catalogue holds every definition of these types, in the order of codes, none twice.</summary>
    public static void AreCatalogued(IReadOnlyList<FindingDefinition> all, params Type[] types)
    {
        var defined = Defined(types);
        Assert.NotEmpty(defined);
        Assert.All(defined, code => Assert.Contains(all, definition => definition.Code == code));
        Assert.Equal(all.Select(definition => definition.Code).Order(StringComparer.Ordinal), all.Select(definition => definition.Code));
        Assert.Distinct(all.Select(definition => definition.Code));
    }

    /// <summary>The same, and it holds no other.</summary>
    public static void AreExactlyCatalogued(IReadOnlyList<FindingDefinition> all, params Type[] types)
    {
        AreCatalogued(all, types);
        Assert.Equal(Defined(types).Order(StringComparer.Ordinal), all.Select(definition => definition.Code));
    }

    /// <summary>A code that two rooms raise means the same in both.</summary>
    public static void AreOneDefinition(IReadOnlyList<FindingDefinition> all, IEnumerable<FindingDefinition> others) => Assert.All(
        all.Join(others, one => one.Code, other => other.Code, (one, other) => (one, other)), pair => Assert.Same(pair.one, pair.other));

    /// <summary>A definition says what it means, what to do and where it comes from.</summary>
    public static void SayWhatTheyMean(IReadOnlyList<FindingDefinition> all) => Assert.All(all, definition =>
    {
        Assert.Matches("^[a-z]+(-[a-z]+)*$", definition.Code);
        Assert.NotEmpty(definition.Severities);
        Assert.All([definition.Meaning, definition.Message, definition.Action, definition.SourceIn(Editions.Known.Current).Document],
            text =>
        {
            Assert.False(string.IsNullOrWhiteSpace(text));
            // The scaffold's texts are to be filled in.
            Assert.DoesNotContain("TODO", text, StringComparison.Ordinal);
        });
    });

    /// <summary>A rule from memory or practice alone never stops, by its definition or by the source of a finding.</summary>
    public static void NeverStopOnMemory(IReadOnlyList<FindingDefinition> all, IEnumerable<Finding> raised)
    {
        Assert.All(all.Where(definition => definition.SourceIn(Editions.Known.Current).Basis is Basis.FromMemory or Basis.CommonPractice),
            definition => Assert.DoesNotContain(Severity.Stop, definition.Severities));
        Assert.All(raised.Where(finding => finding.Source?.Basis is Basis.FromMemory or Basis.CommonPractice),
            finding => Assert.NotEqual(Severity.Stop, finding.Severity));
    }

    private static string[] Defined(Type[] types) =>
        [.. types.SelectMany(type => type.GetProperties()).Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => ((FindingDefinition)property.GetValue(null)!).Code)];
}
