using CalcService.Engine.Audits;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Proof;
using CalcService.Engine.Reuse;

namespace CalcService.Engine.Tests.Findings;

/// <summary>A room's words stand in the order of decisions, the best first.</summary>
public sealed class VerdictTests
{
    [Theory]
    [InlineData(Decision.Proceed, ProofVerdict.Pass, ServiceDisposition.Serve, Disposition.Reuse, RecordStanding.Accepted)]
    [InlineData(Decision.ProceedWithCare, ProofVerdict.PassWithCare, ServiceDisposition.ServeWithCare, Disposition.ReuseAfterWork,
        RecordStanding.AcceptedWithRemarks)]
    [InlineData(Decision.Undetermined, ProofVerdict.Hold, ServiceDisposition.Hold, Disposition.Hold, RecordStanding.Incomplete)]
    [InlineData(Decision.DoNotProceed, ProofVerdict.Reject, ServiceDisposition.Withdraw, Disposition.Withdraw, RecordStanding.Refused)]
    public void Decision_has_one_word_in_each_room(Decision decision, ProofVerdict proof, ServiceDisposition service, Disposition socket,
        RecordStanding record)
    {
        Assert.Equal(proof, Verdict.Of<ProofVerdict>(decision));
        Assert.Equal(service, Verdict.Of<ServiceDisposition>(decision));
        Assert.Equal(socket, Verdict.Of<Disposition>(decision));
        Assert.Equal(record, Verdict.Of<RecordStanding>(decision));
    }
}
