using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;

namespace CalcService.Engine.Tests.Pouring;

public sealed class PouringFindingTests
{
    public static TheoryData<int, string> Cases =>
        [.. FindingCases.All.Select((one, index) => new TheoryDataRow<int, string>(index, $"{one.Code} {one.Severity} {one.Pointer}"))];

    [Fact]
    public void Pour_with_nothing_wrong_proceeds_without_a_finding()
    {
        var plan = GoodPour.Plan(GoodPour.Input);
        Assert.Empty(plan.Findings);
        Assert.All(plan.Assumptions, assumption => Assert.Matches("^(/ends/0/rope/.*|/conditions/(airSpeed|readAt|validFor)|/compound/sheet/vapour|/quote/.*)$", assumption.Pointer));
        Assert.Equal(Decision.Proceed, plan.Decision);
        Assert.NotEmpty(plan.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pour_with_one_thing_wrong_has_that_finding(int index, string what)
    {
        var one = FindingCases.All[index];
        var findings = one.Plan().Findings;

        Assert.True(
            findings.Any(finding => finding.Definition.Code == one.Code && finding.Severity == one.Severity && finding.Pointer == one.Pointer),
            $"{what} is not among: {string.Join(", ", findings.Select(f => $"{f.Definition.Code} {f.Severity} {f.Pointer}"))}");
        Assert.Equal([.. one.Besides.Append(one.Code).Order(StringComparer.Ordinal)],
            findings.Select(finding => finding.Definition.Code).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity(int index, string what)
    {
        var plan = FindingCases.All[index].Plan();
        var severities = plan.Findings.Select(finding => finding.Severity).ToArray();
        var expected = severities.Contains(Severity.Stop) ? Decision.DoNotProceed
            : severities.Contains(Severity.Unknown) ? Decision.Undetermined
            : severities.Contains(Severity.Caution) ? Decision.ProceedWithCare
            : Decision.Proceed;
        Assert.True(expected == plan.Decision, what);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        Assert.All(FindingCases.All[index].Plan().Findings, finding =>
        {
            var given = finding.Words.Select(word => word.Name).ToHashSet(StringComparer.Ordinal);
            if (finding.Measured is not null)
            {
                given.Add("measured");
            }

            if (finding.Limit is not null)
            {
                given.Add("limit");
            }

            var asked = finding.Definition.Message.Split('{').Skip(1).Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]);
            Assert.True(asked.All(given.Contains), $"{what}: {finding.Definition.Message} has only {string.Join(", ", given)}");
            Assert.Contains(finding.Severity, finding.Definition.Severities);
        });

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        Assert.Equal(
            PouringFindings.All.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}"))
                .Order(StringComparer.Ordinal),
            FindingCases.All.Select(one => $"{one.Code} {one.Severity}").Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Catalogue_holds_every_definition_once_in_the_order_of_codes()
    {
        var defined = typeof(PouringFindings).GetProperties()
            .Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => ((FindingDefinition)property.GetValue(null)!).Code);
        Assert.Equal(defined.Order(StringComparer.Ordinal), PouringFindings.All.Select(definition => definition.Code));
        Assert.Distinct(PouringFindings.All.Select(definition => definition.Code));
    }

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        Assert.All(PouringFindings.All, definition =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", definition.Code);
            Assert.NotEmpty(definition.Severities);
            Assert.All([definition.Meaning, definition.Message, definition.Action, definition.Source.Document],
                text => Assert.False(string.IsNullOrWhiteSpace(text)));
        });

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        Assert.All(PouringFindings.All.Where(definition => definition.Source.Basis
                is Engine.Provenance.Basis.FromMemory or Engine.Provenance.Basis.CommonPractice),
            definition => Assert.DoesNotContain(Severity.Stop, definition.Severities));
}
