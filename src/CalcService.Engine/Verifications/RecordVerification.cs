using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Verifications;

/// <summary>Says what a comparison means for whoever holds the archived answer.</summary>
public static class RecordVerification
{
    public static Outcome<Comparison> Of(Comparison compared, Budget budget)
    {
        var findings = new FindingList();
        switch (compared.Outcome)
        {
            case VerificationOutcome.Differs:
                findings.Add(About(VerificationFindings.Differs, compared));
                break;
            case VerificationOutcome.CannotVerify:
                findings.Add(About(VerificationFindings.CannotVerify, compared));
                break;
            default:
                // Of an answer that differs nothing is to be read, so that these would only be noise beside it.
                AddIfAny(findings, VerificationFindings.OtherWords, compared.OtherWords);
                AddIfAny(findings, VerificationFindings.UnknownMembers, compared.UnknownMembers);
                break;
        }

        return new(compared, findings.Sorted(), VerificationNotes.All, [], new Trace(budget.Trace).Steps);
    }

    private static Finding About(FindingDefinition definition, Comparison compared) =>
        new(definition, definition.Severities[0],
        compared.Pointer!) { Words = [new("reason", compared.Reason!), new("pointer", compared.Pointer!)] };

    private static void AddIfAny(FindingList findings, FindingDefinition definition, IReadOnlyList<string> places)
    {
        if (places.Count > 0)
        {
            findings.Add(new(definition, definition.Severities[0], places[0])
            {
                Related = [.. places.Skip(1)],
                Words = [new("count", Measure.Count(places.Count)), new("pointer", places[0])],
            });
        }
    }
}
