using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Tests.Curing;

public sealed class CuringFindingTests
{
    public static TheoryData<int, string> Cases =>
        [.. CureFindingCases.All.Select((one, index) => new TheoryDataRow<int, string>(index, $"{one.Code} {one.Severity} {one.Pointer}"))];

    [Fact]
    public void Cure_with_nothing_wrong_proceeds_without_a_finding()
    {
        var schedule = GoodCure.Schedule(GoodCure.Input);
        Assert.Empty(schedule.Findings);
        Assert.Empty(schedule.Assumptions);
        Assert.Equal(Decision.Proceed, schedule.Decision);
        Assert.NotEmpty(schedule.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Cure_with_one_thing_wrong_has_that_finding(int index, string what)
    {
        var one = CureFindingCases.All[index];
        var findings = one.Schedule().Findings;

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
        var plan = CureFindingCases.All[index].Schedule();
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
        Assert.All(CureFindingCases.All[index].Schedule().Findings, finding =>
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
            CuringFindings.All.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}"))
                .Order(StringComparer.Ordinal),
            CureFindingCases.All.Select(one => $"{one.Code} {one.Severity}").Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Catalogue_holds_every_definition_once_in_the_order_of_codes()
    {
        var defined = new[] { typeof(CuringFindings), typeof(CompoundFindings) }.SelectMany(type => type.GetProperties())
            .Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => ((FindingDefinition)property.GetValue(null)!).Code);
        Assert.Equal(defined.Order(StringComparer.Ordinal), CuringFindings.All.Select(definition => definition.Code));
        Assert.Distinct(CuringFindings.All.Select(definition => definition.Code));
    }

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        Assert.All(CuringFindings.All, definition =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", definition.Code);
            Assert.NotEmpty(definition.Severities);
            Assert.All([definition.Meaning, definition.Message, definition.Action, definition.Source.Document],
                text => Assert.False(string.IsNullOrWhiteSpace(text)));
        });

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops() =>
        Assert.All(CuringFindings.All.Where(definition => definition.Source.Basis
                is Engine.Provenance.Basis.FromMemory or Engine.Provenance.Basis.CommonPractice),
            definition => Assert.DoesNotContain(Severity.Stop, definition.Severities));
}
