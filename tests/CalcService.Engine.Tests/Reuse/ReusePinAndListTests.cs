using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>A bad pin is work on a socket, not its end; and what is missing is one list of a kind.</summary>
public sealed class ReusePinAndListTests
{
    [Fact]
    public void Weak_pin_stops_the_job_and_is_replaced() =>
        IsWorkOnThePin(Socket(socket => socket with { PinYieldStrengthPa = 150e6 })(Input));

    /// <summary>A pin of 20 mm bears on 2·20·15.9 mm² of ear as well: that is the pin's fault too.</summary>
    [Theory]
    [InlineData(100e3)]
    [InlineData(300e3)]
    public void Worn_pin_stops_the_job_and_is_replaced(double proofN) =>
        IsWorkOnThePin(Socket(socket => socket with { ProofRatingN = proofN, PinYieldStrengthPa = 600e6 })(
            For(use => use with { ProofLoadN = Math.Min(proofN, 140e3) })(Found(found => found with { PinDiameterM = .020 })(Input))));

    [Fact]
    public void Missing_parts_of_a_request_are_one_finding_each()
    {
        Assert.Equal(["socket-history-missing"], Codes(Socket(socket => socket with { History = new() })(Input)));
        Assert.Equal(["crack-search-missing", "visual-inspection-missing"], Codes(Seen(_ => new())(Input)));
        Assert.Equal(["wear-measurement-missing"], Codes(Socket(socket => socket with { Measured = new() })(Input)));
    }

    [Fact]
    public void List_names_every_member_and_every_check_its_own()
    {
        var outcome = Assess(Socket(socket => socket with { History = new() })(Input));
        var finding = Assert.Single(outcome.Findings);
        const string At = "/socket/history/";
        Assert.Equal([At + "arcStruck", At + "lastMedium", At + "overloaded", At + "pours", At + "straightened", At + "welded"],
            finding.Related.Append(finding.Pointer).Order(StringComparer.Ordinal));
        Assert.Equal([At + "welded"], outcome.Result.Checks.Single(check => check.Id == "welding").Missing);
    }

    private static void IsWorkOnThePin(ReuseInput input)
    {
        var outcome = Assess(input);
        Assert.Equal((Disposition.ReuseAfterWork, Decision.DoNotProceed), (outcome.Result.Disposition, outcome.Decision));
        Assert.Contains(outcome.Result.Work, work => work.Finding == ReuseFindings.PinYields);
    }

    private static string[] Codes(ReuseInput input) =>
        [.. Assess(input).Findings.Select(finding => finding.Definition.Code).Order(StringComparer.Ordinal)];
}
