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
                rows.Add(crack, gap, rust, note, crack ? Disposition.Withdraw : gap ? Disposition.Hold : rust ? Disposition.ReuseAfterWork
                    : Disposition.Reuse);
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
        Assert.Equal(["crack-bail", "bail"],
            outcome.Result.Checks.Where(check => check.Outcome != CheckOutcome.Pass).Select(check => check.Id));
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

    /// <summary>
    /// Disposition by the findings on the socket, decision by all. What is worse than the socket itself is what it is meant for.
    /// </summary>
    [Theory]
    [InlineData(Disposition.Reuse, Decision.Proceed)]
    [InlineData(Disposition.ReuseAfterWork, Decision.ProceedWithCare)]
    [InlineData(Disposition.Hold, Decision.Undetermined)]
    [InlineData(Disposition.Withdraw, Decision.DoNotProceed)]
    public void Decision_is_that_of_the_disposition_unless_the_use_is_worse(Disposition disposition, Decision decision)
    {
        string[] ofTheUse = ["socket-weaker-than-rope", "rope-does-not-enter", "proof-above-socket-rating", "intended-load-above-rating",
            "intended-rope-strength-missing", "socket-breaking-force-missing", "remaining-strength-unsure", "facts-taken",
            "proof-at-breaking-force", "proof-above-half-breaking", "wire-fit-unknown", "basket-too-short", "rope-thick", "rope-loose",
            "fit-depends-on-tolerance", "wires-do-not-fit",
            "breaking-force-implausible", "rope-thin", "rope-identity-missing", "rope-fact-missing",
            // A new pin mends it.
            "pin-yields-at-proof-load"];
        var outcomes = ReuseCases.All.Select(one => one.Assess()).Append(Assess(Input))
            .Where(one => one.Result.Disposition == disposition).ToArray();
        Assert.Contains(outcomes, one => one.Decision == decision);
        Assert.All(outcomes, one => Assert.True(one.Decision >= decision));
        Assert.All(outcomes.Where(one => one.Decision > decision), one => Assert.Contains(one.Findings[0].Definition.Code, ofTheUse));
    }

    /// <summary>A sound socket too small for this rope is reused, for another rope.</summary>
    [Fact]
    public void Sound_socket_too_small_for_the_rope_is_sound()
    {
        var outcome =
            Assess(For(use => use with { Rope = use.Rope! with { DiameterM = .026, CertifiedBreakingForceN = 426e3 }, RatedLoadN = 60e3,
            ProofLoadN = 130e3 })(Input));
        Assert.Equal(["intended-load-above-rating", "socket-weaker-than-rope", "rope-does-not-enter", "proof-above-socket-rating",
            "basket-too-short"],
            outcome.Findings.Select(finding => finding.Definition.Code));
        Assert.Equal((Disposition.Reuse, Decision.DoNotProceed), (outcome.Result.Disposition, outcome.Decision));
        // Strength is judged at what the maker allows.
        Assert.Equal((50e3, 120e3), (outcome.Result.RatedLoadN, outcome.Result.ProofLoadN));
    }

    [Fact]
    public void Every_check_and_its_order_is_the_same_for_every_socket()
    {
        var ids = Assess(Input).Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal).ToArray();
        Assert.All(ReuseCases.All,
            one => Assert.Equal(ids, one.Assess().Result.Checks.Select(check => check.Id).Order(StringComparer.Ordinal)));
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
    [InlineData("socket-cracked", "/docs/reuse-assessments", Basis.Derived)]
    [InlineData("socket-welded", "/docs/reuse-assessments", Basis.Derived)]
    [InlineData("socket-steel-unknown", "a safety rule needs this fact", Basis.Derived)]
    [InlineData("bore-worn", "operator's rule 7", Basis.DataSheet)]
    public void Finding_names_the_source_that_stands_behind_it(string code, string document, Basis basis)
    {
        var finding = ReuseCases.All.First(one => one.Code == code).Assess().Findings.First(finding => finding.Definition.Code == code);
        var source = finding.Source ?? finding.Definition.SourceIn(Engine.Rules.Editions.Known.Current);
        Assert.Equal((document, basis), (source.Document, source.Basis));
    }

    /// <summary>Limits are allowed to be reached; what lies above is not. Twelve digits decide, not the last bit of a division.</summary>
    [Theory]
    [InlineData(.02346, CheckOutcome.Pass)]
    [InlineData(.0234601, CheckOutcome.Fail)]
    public void Bore_at_its_limit_passes_and_above_it_fails(double diameter, CheckOutcome expected) =>
        Assert.Equal(expected,
        Assess(Station(0, diameter, diameter)(Input)).Result.Checks.Single(check => check.Id == "bore-growth").Outcome);

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
        Assert.Throws<OperationCanceledException>(() => ReuseAssessment.Calculate(Input, Engine.Rules.Editions.Known.Current, new Budget(1),
            new CancellationToken(canceled: true)));

    private static string[] StrengthIds =>
        ["ear-bearing", "ear-net-section", "ear-shear-out", "ear-block", "pin-shear", "pin-bending", "cone-hoop-stress"];
}
