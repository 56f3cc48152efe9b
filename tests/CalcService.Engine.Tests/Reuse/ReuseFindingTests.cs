using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Engine.Tests.Reuse;

public sealed class ReuseFindingTests
{
    public static TheoryData<int, string> Cases => Numbered(ReuseCases.All);

    public static TheoryData<int, string> Gaps => Numbered(ReuseGaps.All);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Socket_with_one_thing_wrong_has_that_finding_and_no_other(int index, string what)
    {
        var one = ReuseCases.All[index];
        var findings = one.Assess().Findings;
        Assert.True(
            findings.Any(finding => finding.Definition.Code == one.Code && finding.Severity == one.Severity && finding.Pointer == one.Pointer),
            $"{what} is not among: {string.Join(", ", findings.Select(f => $"{f.Definition.Code} {f.Severity} {f.Pointer}"))}");
        Assert.Equal([.. one.Besides.Order(StringComparer.Ordinal)],
            findings.Select(finding => finding.Definition.Code).Where(code => code != one.Code).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Check_shows_what_the_finding_says(int index, string what)
    {
        var one = ReuseCases.All[index];
        var check = one.Assess().Result.Checks.Single(check => check.Id == one.Check);
        var expected = one.Severity switch { Severity.Unknown => CheckOutcome.Undetermined, Severity.Note => CheckOutcome.Pass, _ => CheckOutcome.Fail };
        Assert.True(expected == check.Outcome, $"{what}: {check}");
        Assert.Equal(one.Severity == Severity.Unknown, check.Missing.Contains(one.Pointer));
    }

    /// <summary>What was missing is never made good by what was not.</summary>
    [Theory]
    [MemberData(nameof(Gaps))]
    public void Socket_of_which_one_fact_is_missing_is_held_and_never_reused(int index, string what)
    {
        var result = ReuseGaps.All[index].Assess().Result;
        Assert.True(Disposition.Hold == result.Disposition, what);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Finding_fills_every_word_of_its_message(int index, string what) =>
        Assert.All(ReuseCases.All[index].Assess().Findings, finding =>
        {
            var given = finding.Words.Select(word => word.Name).ToHashSet(StringComparer.Ordinal);
            given.UnionWith(finding.Measured is null ? [] : ["measured"]);
            given.UnionWith(finding.Limit is null ? [] : ["limit"]);
            var asked = (finding.Definition.Message + finding.Definition.Action).Split('{').Skip(1).Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]);
            Assert.True(asked.All(given.Contains), $"{what}: {finding.Definition.Message} has only {string.Join(", ", given)}");
            Assert.Contains(finding.Severity, finding.Definition.Severities);
        });

    [Fact]
    public void Cases_raise_every_finding_in_each_of_its_severities() =>
        Assert.Equal(
            ReuseFindings.All.SelectMany(definition => definition.Severities.Select(severity => $"{definition.Code} {severity}")).Order(StringComparer.Ordinal),
            ReuseCases.All.Select(one => $"{one.Code} {one.Severity}").Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Catalogue_holds_every_definition_of_the_room_once_in_the_order_of_codes()
    {
        var defined = typeof(ReuseFindings).GetProperties().Where(property => property.PropertyType == typeof(FindingDefinition))
            .Select(property => ((FindingDefinition)property.GetValue(null)!).Code).ToArray();
        Assert.NotEmpty(defined);
        Assert.All(defined, code => Assert.Contains(ReuseFindings.All, definition => definition.Code == code));
        Assert.Equal(ReuseFindings.All.Select(definition => definition.Code).Order(StringComparer.Ordinal), ReuseFindings.All.Select(definition => definition.Code));
        Assert.Distinct(ReuseFindings.All.Select(definition => definition.Code));
    }

    [Fact]
    public void Code_that_two_rooms_raise_is_one_definition() =>
        Assert.All(ReuseFindings.All.Join(PouringFindings.All.Union(MatchingFindings.All), one => one.Code, other => other.Code, (one, other) => (one, other)),
            pair => Assert.Same(pair.one, pair.other));

    [Fact]
    public void Definition_says_what_it_means_what_to_do_and_where_it_comes_from() =>
        Assert.All(ReuseFindings.All, definition =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", definition.Code);
            Assert.NotEmpty(definition.Severities);
            Assert.All([definition.Meaning, definition.Message, definition.Action, definition.Source.Document], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        });

    [Fact]
    public void Rule_from_memory_or_practice_alone_never_stops()
    {
        Assert.All(ReuseFindings.All.Where(definition => definition.Source.Basis is Basis.FromMemory or Basis.CommonPractice),
            definition => Assert.DoesNotContain(Severity.Stop, definition.Severities));
        Assert.All(ReuseCases.All.SelectMany(one => one.Assess().Findings).Where(finding => finding.Source?.Basis is Basis.FromMemory or Basis.CommonPractice),
            finding => Assert.NotEqual(Severity.Stop, finding.Severity));
    }

    private static TheoryData<int, string> Numbered(IReadOnlyList<ReuseCase> cases) =>
        [.. cases.Select((one, index) => new TheoryDataRow<int, string>(index, $"{index} {one.Code} {one.Severity} {one.Pointer}"))];
}
