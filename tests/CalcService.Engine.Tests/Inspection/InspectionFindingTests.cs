using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Inspection;

public sealed class InspectionFindingTests
{
    public static TheoryData<int, string> Cases =>
        [.. InspectionCases.All.Select((one, index) => new TheoryDataRow<int, string>(index, $"{one.Code} {one.Severity} {one.Pointer}"))];

    public static TheoryData<string> RuleSets => [.. InspectionRules.RuleSets];

    [Theory]
    [MemberData(nameof(RuleSets))]
    public void End_with_nothing_wrong_serves_under_every_rule_set(string ruleSet)
    {
        var inspection = GoodInspection.Inspect(GoodInspection.Under(ruleSet));
        Assert.Empty(inspection.Findings);
        Assert.Equal(Decision.Proceed, inspection.Decision);
        Assert.Equal(ServiceDisposition.Serve, inspection.Result.Disposition);
        Assert.Null(inspection.Result.CutFromM);
        Assert.NotEmpty(inspection.SafetyNotes);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void End_with_one_thing_wrong_has_that_finding(int index, string what)
    {
        var one = InspectionCases.All[index];
        var findings = one.Inspect().Findings;

        Assert.True(
            findings.Any(finding => finding.Definition.Code == one.Code && finding.Severity == one.Severity && finding.Pointer == one.Pointer),
            $"{what} is not among: {string.Join(", ", findings.Select(f => $"{f.Definition.Code} {f.Severity} {f.Pointer}"))}");
        Assert.Equal([.. one.Besides.Order(StringComparer.Ordinal)], Besides(findings, [one.Code]));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Decision_is_the_worst_severity(int index, string what)
    {
        var inspection = InspectionCases.All[index].Inspect();
        var severities = inspection.Findings.Select(finding => finding.Severity).ToArray();
        var expected = severities.Contains(Severity.Stop) ? Decision.DoNotProceed
            : severities.Contains(Severity.Unknown) ? Decision.Undetermined
            : severities.Contains(Severity.Caution) ? Decision.ProceedWithCare
            : Decision.Proceed;
        Assert.True(expected == inspection.Decision, what);
        Assert.Equal(
            expected switch
            {
                Decision.DoNotProceed => ServiceDisposition.Withdraw,
                Decision.Undetermined => ServiceDisposition.Hold,
                Decision.ProceedWithCare => ServiceDisposition.ServeWithCare,
                _ => ServiceDisposition.Serve,
            },
            inspection.Result.Disposition);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        Assert.All(InspectionCases.All[index].Inspect().Findings, finding =>
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
            InspectionFindings.All.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}"))
                .Order(StringComparer.Ordinal),
            InspectionCases.All.Select(one => $"{one.Code} {one.Severity}").Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes()
    {
        var defined = typeof(InspectionFindings).GetProperties()
            .Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => ((FindingDefinition)property.GetValue(null)!).Code).ToArray();
        Assert.NotEmpty(defined);
        Assert.All(defined, code => Assert.Contains(InspectionFindings.All, definition => definition.Code == code));
        Assert.Equal(InspectionFindings.All.Select(definition => definition.Code).Order(StringComparer.Ordinal), InspectionFindings.All.Select(definition => definition.Code));
        Assert.Distinct(InspectionFindings.All.Select(definition => definition.Code));
    }

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        Assert.All(InspectionFindings.All.Join(PouringFindings.All.Concat(MatchingFindings.All).Distinct(), one => one.Code, other => other.Code, (one, other) => (one, other)),
            pair => Assert.Same(pair.one, pair.other));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        Assert.All(InspectionFindings.All, definition =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", definition.Code);
            Assert.NotEmpty(definition.Severities);
            Assert.All([definition.Meaning, definition.Message, definition.Action, definition.Source.Document],
                text => Assert.False(string.IsNullOrWhiteSpace(text)));
        });

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops()
    {
        Assert.All(InspectionFindings.All.Where(definition => definition.Source.Basis is Basis.FromMemory or Basis.CommonPractice),
            definition => Assert.DoesNotContain(Severity.Stop, definition.Severities));
        Assert.All(InspectionCases.All.SelectMany(one => one.Inspect().Findings).Where(finding => finding.Source?.Basis is Basis.FromMemory or Basis.CommonPractice),
            finding => Assert.NotEqual(Severity.Stop, finding.Severity));
    }

    private static IEnumerable<string> Besides(IReadOnlyList<Finding> findings, string[] asked) => findings
        .Where(finding => !asked.Contains(finding.Definition.Code))
        .Select(finding => finding.Definition.Code).Distinct().Order(StringComparer.Ordinal);
}
