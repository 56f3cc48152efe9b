using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Numerics;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

public sealed class ReuseAssessmentTests
{
    private static readonly Func<ReuseInput, ReuseInput> Crack = Seen(seen => seen with { VisibleCracks = true });
    private static readonly Func<ReuseInput, ReuseInput> Gap = Limits(limits => limits with { Source = null });
    private static readonly Func<ReuseInput, ReuseInput> Rust = Seen(seen => seen with { Corrosion = CorrosionState.Light });
    private static readonly Func<ReuseInput, ReuseInput> Zinc = Past(past => past with { LastMedium = SocketMedium.Zinc });

    /// <summary>Every combination of crack, gap, rust and note, with what becomes of the socket.</summary>
    public static TheoryData<bool, bool, bool, bool, Disposition> Precedence
    {
        get
        {
            var rows = new TheoryData<bool, bool, bool, bool, Disposition>();
            for (var i = 0; i < 16; i++)
            {
                var (crack, gap, rust, note) = ((i & 1) > 0, (i & 2) > 0, (i & 4) > 0, (i & 8) > 0);
                rows.Add(crack, gap, rust, note, crack ? Disposition.Withdraw : gap ? Disposition.Hold : rust ? Disposition.ReuseAfterWork : Disposition.Reuse);
            }

            return rows;
        }
    }

    [Fact]
    public void Sound_socket_of_which_everything_is_known_is_reused_with_every_check_in_evidence()
    {
        var outcome = Assess(Input);
        Assert.Empty(outcome.Findings);
        Assert.Equal((Decision.Proceed, Disposition.Reuse), (outcome.Decision, outcome.Result.Disposition));
        Assert.Empty(outcome.Result.Work);
        Assert.Distinct(outcome.Result.Checks.Select(check => check.Id));
        Assert.All(outcome.Result.Checks, check => Assert.Empty(check.Missing));
        // An open socket has no bail; the rest is there to be checked.
        Assert.Equal(["crack-bail", "bail"], outcome.Result.Checks.Where(check => check.Outcome != CheckOutcome.Pass).Select(check => check.Id));
    }

    [Theory]
    [MemberData(nameof(Precedence))]
    public void Disposition_follows_stop_before_missing_before_work(bool crack, bool gap, bool rust, bool note, Disposition expected)
    {
        var input = Input;
        foreach (var (isOn, change) in new[] { (crack, Crack), (gap, Gap), (rust, Rust), (note, Zinc) })
        {
            input = isOn ? change(input) : input;
        }

        var outcome = Assess(input);
        Assert.Equal(expected, outcome.Result.Disposition);
        Assert.Equal(rust && !crack, outcome.Result.Work.Count > 0);
    }

    [Theory]
    [InlineData(Disposition.Reuse, Decision.Proceed)]
    [InlineData(Disposition.ReuseAfterWork, Decision.ProceedWithCare)]
    [InlineData(Disposition.Hold, Decision.Undetermined)]
    [InlineData(Disposition.Withdraw, Decision.DoNotProceed)]
    public void Disposition_and_decision_are_one_to_one(Disposition disposition, Decision decision)
    {
        var outcomes = ReuseCases.All.Select(one => one.Assess()).Append(Assess(Input)).ToArray();
        Assert.Contains(outcomes, one => one.Result.Disposition == disposition);
        Assert.All(outcomes, one => Assert.Equal(one.Result.Disposition == disposition, one.Decision == decision));
    }

    [Fact]
    public void Every_check_and_its_order_is_the_same_for_every_socket()
    {
        var ids = Assess(Input).Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal).ToArray();
        Assert.All(ReuseCases.All, one => Assert.Equal(ids, one.Assess().Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal)));
    }

    /// <summary>Stop beats missing even within one check: half a measurement that is beyond the limit is beyond the limit.</summary>
    [Theory]
    [InlineData(.0240)]
    [InlineData(.0240, .0240)]
    public void Worn_bore_withdraws_even_where_other_sections_are_missing(params double[] diameters)
    {
        var input = Found(found => found with { Stations = [new(0, diameters)] })(Input);
        Assert.Equal(Disposition.Withdraw, Assess(input).Result.Disposition);
        Assert.Equal(CheckOutcome.Fail, Assess(input).Result.Checks.Single(check => check.Id == "bore-growth").Outcome);
    }

    [Theory]
    [InlineData("socket-cracked", "what has lost section or shape has lost strength that nobody knows", Basis.Derived)]
    [InlineData("socket-welded", "docs/reuse-assessments.md", Basis.Derived)]
    [InlineData("socket-steel-unknown", "a safety rule needs this fact and nobody gave it", Basis.Derived)]
    [InlineData("bore-worn", "operator's rule 7", Basis.DataSheet)]
    public void Finding_names_the_source_that_stands_behind_it(string code, string document, Basis basis)
    {
        var finding = ReuseCases.All.First(one => one.Code == code).Assess().Findings.First(finding => finding.Definition.Code == code);
        var source = finding.Source ?? finding.Definition.Source;
        Assert.Equal((document, basis), (source.Document, source.Basis));
    }

    /// <summary>Limits are allowed to be reached; what lies above is not. Twelve digits decide, not the last bit of a division.</summary>
    [Theory]
    [InlineData(.02346, CheckOutcome.Pass)]
    [InlineData(.0234601, CheckOutcome.Fail)]
    public void Bore_at_its_limit_passes_and_above_it_fails(double diameter, CheckOutcome expected) =>
        Assert.Equal(expected, Assess(Station(0, diameter, diameter)(Input)).Result.Checks.Single(check => check.Id == "bore-growth").Outcome);

    /// <summary>50 kN on ears 16 mm thick and a pin of 35 mm; arithmetic in docs/reuse-assessments.md.</summary>
    [Theory]
    [InlineData("ear-bearing", 50000.0 / 1120, 1.25)]
    [InlineData("ear-net-section", 50000.0 / 1392, 1)]
    [InlineData("ear-shear-out", 50000.0 / 1392, .57735026919)]
    public void Socket_as_made_has_the_stresses_worked_out_by_hand(string id, double stressMpa, double share)
    {
        var part = Assess(Input).Result.AsMade!.Parts.Single(part => part.Id == id);
        Printed.Matches(stressMpa * 1e6, part.StressPa, 1e-10);
        Printed.Matches(stressMpa * 3 / (share * 355), part.AtRated, 1e-10);
        Printed.Matches(stressMpa * 2 / (share * 355), part.AtProof, 1e-10);
    }

    /// <summary>By hand: 50 kN, tan α 0.11, μ 0.1, r 11.5 to 22.5 mm; the pressure goes as 1/r; Lamé with 70/23 at the small end and 70/45 at the mouth.</summary>
    [Fact]
    public void Wall_as_made_has_the_hoop_stress_worked_out_by_hand()
    {
        var mean = 50000 * .11 / (Math.PI * ((22.5 * 22.5) - (11.5 * 11.5)) * .21);
        double Hoop(double bore) => mean * 34 / bore * ((70 * 70) + (bore * bore)) / ((70 * 70) - (bore * bore));
        var expected = new[] { 23.0, 34, 45 }.Max(Hoop);
        Printed.Matches(expected * 1e6, Assess(Input).Result.AsMade!.Parts.Single(part => part.Id == "basket-hoop").StressPa, 1e-10);
    }

    [Fact]
    public void Trace_has_the_numbers_of_both_states()
    {
        var trace = Assess(Input, trace: true).Trace;
        Assert.Equal(["", "as made", "as measured"], trace.Select(step => step.Of).Distinct().Order(StringComparer.Ordinal));
        foreach (var id in StrengthIds)
        {
            Assert.Equal(2, trace.Count(step => step.Formula.Id == id));
        }
    }

    [Fact]
    public void Assessment_that_is_cancelled_ends() =>
        Assert.Throws<OperationCanceledException>(() => ReuseAssessment.Calculate(Input, Engine.Rules.RuleBook.Current, new Budget(1), new CancellationToken(canceled: true)));

    private static string[] StrengthIds => ["ear-bearing", "ear-net-section", "ear-shear-out", "ear-block", "pin-shear", "pin-bending", "cone-hoop-stress"];
}
