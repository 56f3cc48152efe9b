using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CsCheck;

namespace CalcService.Engine.Tests.Findings;

public sealed class FindingListTests
{
    [Theory]
    [InlineData(null, Decision.Proceed)]
    [InlineData(Severity.Note, Decision.Proceed)]
    [InlineData(Severity.Caution, Decision.ProceedWithCare)]
    [InlineData(Severity.Unknown, Decision.Undetermined)]
    [InlineData(Severity.Stop, Decision.DoNotProceed)]
    public void Decision_is_one_to_one_with_the_worst_severity(Severity? worst, Decision decision)
    {
        Severity[] upTo = worst is { } severity ? [.. Enum.GetValues<Severity>().Where(other => other <= severity)] : [];
        Assert.Equal(decision, FindingList.DecisionOf([.. upTo.Select(other => Make(other, "/a", "a"))]));
    }

    [Fact]
    public void Stop_beats_missing_beats_caution_beats_note() =>
        Assert.Equal([Severity.Stop, Severity.Unknown, Severity.Caution, Severity.Note], Enum.GetValues<Severity>().OrderDescending());

    [Fact]
    public void Findings_are_sorted_worst_first_then_by_pointer_and_code_whatever_order_they_came_in()
    {
        Finding[] sorted =
        [
            Make(Severity.Stop, "/b", "a"), Make(Severity.Unknown, "/B", "z"), Make(Severity.Unknown, "/a", "a"),
            Make(Severity.Unknown, "/a", "b"), Make(Severity.Caution, "/a", "a"), Make(Severity.Note, "/A", "a"),
        ];
        Gen.Shuffle(sorted).Sample(
            shuffled =>
            {
                var list = new FindingList();
                foreach (var finding in shuffled)
                {
                    list.Add(finding);
                }

                Assert.Equal(sorted, list.Sorted());
            },
            iter: 100);
    }

    [Fact]
    public void What_is_found_alike_at_many_places_is_one_finding_with_the_other_places()
    {
        var list = new FindingList();
        foreach (var i in new[] { 10, 2, 0, 7, 3 })
        {
            list.Add(Make(Severity.Stop, $"/ends/{i}/tilt", "a") with { Words = [new("end", $"E{i}"), new("why", "so")],
                Related = ["/pourAt"] });
        }

        list.Add(Make(Severity.Stop, "/ends/4/tilt", "a") with { Words = [new("end", "E4"), new("why", "otherwise")] });
        list.Add(Make(Severity.Stop, "/ends/5/bore", "a") with { Words = [new("end", "E5"), new("why", "so")] });
        list.Add(Make(Severity.Caution, "/ends/6/tilt", "a") with { Words = [new("end", "E6"), new("why", "so")] });

        var sorted = list.Sorted();
        Assert.Equal(["/ends/0/tilt", "/ends/4/tilt", "/ends/5/bore", "/ends/6/tilt"], sorted.Select(finding => finding.Pointer));
        Assert.Equal(["/pourAt", "/ends/2/tilt", "/ends/3/tilt", "/ends/7/tilt", "/ends/10/tilt"], sorted[0].Related);
        Assert.Equal("E0, E2, E3 and 2 more", sorted[0].Words[0].Text);
    }

    private static Finding Make(Severity severity, string pointer, string code) =>
        new(new FindingDefinition(code, "2026-12", Actor.Lead, [severity], "", "", "", _ => Source.CommonPractice, _ => []), severity,
        pointer);
}
