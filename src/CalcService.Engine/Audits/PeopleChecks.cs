using System.Globalization;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>Who worked on the end, and whether each was qualified on the day.</summary>
internal static class PeopleChecks
{
    private static readonly (WorkRole Role, string Name)[] Needed =
    [
        (WorkRole.Preparer, "who prepared rope and socket"), (WorkRole.Mixer, "who mixed the compound"), (WorkRole.Pourer, "who poured it"),
        (WorkRole.Inspector, "who looked at the work and released it"), (WorkRole.ProofTester, "who loaded the end to its proof load"),
    ];

    public static void Check(AuditScope scope)
    {
        var people = scope.Input.People;
        var asked = scope.Ask();
        foreach (var (role, name) in Needed.Where(needed => needed.Role != WorkRole.ProofTester || scope.Input.IsTested))
        {
            asked.Trail(people.Any(person => person.Role == role), AuditPointers.People, name);
        }

        for (var i = 0; i < people.Count; i++)
        {
            asked.Trail(people[i].Name, $"{AuditPointers.People}/{i}/name", "the name of somebody who worked on the end");
            asked.Trail(people[i].Role != WorkRole.Unknown, $"{AuditPointers.People}/{i}/role", "what somebody did");
        }

        scope.MustHold("people", AuditFindings.TrailMissing, asked);
        CheckQualifications(scope, people);
    }

    private static void CheckQualifications(AuditScope scope, IReadOnlyList<RecordedPerson> people)
    {
        var asked = scope.Ask().Trail(people.Count > 0, AuditPointers.People, "who worked on the end");
        var isExpired = false;
        for (var i = 0; i < people.Count; i++)
        {
            var pointer = $"{AuditPointers.People}/{i}/qualifiedUntil";
            asked.Trail(people[i].QualifiedUntil is not null, pointer, "until when somebody was qualified");
            if (people[i].QualifiedUntil is { } until && DayOf(people[i].Role, scope.Input.Times) is { } day && day > until)
            {
                isExpired = true;
                var days = day.DayNumber - until.DayNumber;
                scope.Find(AuditFindings.QualificationExpired, pointer, new(Measure.Days(-days), Limit.Of(Measure.Days(0))), words:
                [
                    new("who", people[i].Name ?? "somebody"), new("until", until), new("days", days.ToString(CultureInfo.InvariantCulture)),
                ]);
            }
        }

        scope.Judge("qualifications", isExpired ? Severity.Caution : null, AuditFindings.QualificationExpired, asked.Gaps);
    }

    /// <summary>The day of somebody's work, at its own offset.</summary>
    private static DateOnly? DayOf(WorkRole role, RecordedTimes times) => (role switch
    {
        WorkRole.Preparer => times.PreparedAt ?? times.MixedAt,
        WorkRole.Inspector => times.ReleasedAt ?? times.PouredAt,
        WorkRole.ProofTester or WorkRole.Witness => times.ProofAt ?? times.ReleasedAt ?? times.PouredAt,
        WorkRole.Pourer => times.PouredAt ?? times.MixedAt,
        _ => times.MixedAt ?? times.PouredAt,
    }) is { } at ? DateOnly.FromDateTime(at.DateTime) : null;
}
