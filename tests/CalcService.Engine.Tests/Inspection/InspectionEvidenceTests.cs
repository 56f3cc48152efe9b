using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Inspection;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Numerics;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>
/// What the checks of an inspection hold as evidence: numbers worked by hand, limits by the clauses that RuleRowTests names.
/// </summary>
public sealed class InspectionEvidenceTests
{
    private const string Crane = InspectionRules.ConstructionCrane;
    private const string Mine = MatchingRules.MineHoist;
    private const string Naval = InspectionRules.Naval;
    private const string Platform = InspectionRules.Platform;
    private const string OurOwn = "what has lost section or shape has lost strength that nobody knows";

    /// <summary>19.8 of 20 mm are 1 % less, a fifth of 5 % and a sixth of 6 %; 3 of 5 turns; 12 of 24 months; 80 of 90 %.</summary>
    [Theory]
    [InlineData(Crane, "diameter-nominal", .01, .05, .2)]
    [InlineData(Mine, "diameter-baseline", .01, .06, 1 / 6.0)]
    [InlineData(Mine, "drum-turns", 5, 3, .6)]
    [InlineData(Mine, "attachment", .9, .8, 8 / 9.0)]
    [InlineData(Mine, "strength", .025, .1, .25)]
    [InlineData(Platform, "resocketing", 12, 24, .5)]
    [InlineData(Crane, "broken-wires-running-lay", 3, 6, .5)]
    [InlineData(Crane, "broken-wires-running-strand", 2, 3, 2 / 3.0)]
    public void Check_shows_what_was_found_what_is_allowed_and_the_share_between(string ruleSet, string id, double measured, double limit,
        double use)
    {
        var input = GoodInspection.Under(ruleSet) with { StrengthLoss = .025, BrokenWires = [new(3, WirePlace.Lay, 4, 2)] };
        var check = GoodInspection.Inspect(input).Result.Checks.Single(check => check.Id == id);
        Assert.Equal(CheckOutcome.Pass, check.Outcome);
        Printed.Matches(measured, check.Measured!.Value.Si, 1e-11);
        Printed.Matches(limit, ((Measure?)check.Limit)!.Value.Si, 1e-11);
        Printed.Matches(use, check.Use!.Value, 1e-11);
    }

    /// <summary>9 of 6 wires are half as many again.</summary>
    [Fact]
    public void Row_that_rejects_shows_how_far_it_is_exceeded() =>
        Printed.Matches(1.5,
        GoodInspection.Inspect(GoodInspection.With(RopeFunction.Running, new BrokenWires(9, WirePlace.Lay, 4, 1)))
        .Result.Strictest!.Use!.Value);

    /// <summary>Where no turn is left there is no share of three turns.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(.5, true)]
    public void Drum_without_a_turn_left_fails_without_a_share(double turns, bool isCut)
    {
        var check = GoodInspection.Inspect(GoodInspection.Under(Mine) with { DrumTurnsLeft = turns, Cracks = isCut })
            .Result.Checks.Single(check => check.Id == "drum-turns");
        Assert.Equal((CheckOutcome.Fail, null), (check.Outcome, check.Use));
    }

    [Fact]
    public void Heat_is_shown_against_the_warmest_service_of_the_sheet()
    {
        var check = GoodInspection.Inspect(GoodInspection.Input).Result.Checks.Single(check => check.Id == "heat");
        Assert.Equal((45 + GoodInspection.Zero, 60 + GoodInspection.Zero), (check.Measured!.Value.Si, ((Measure?)check.Limit)!.Value.Si));
    }

    /// <summary>
    /// docs/service-inspections.md: a set's own limits are asked, those of others where it has none; what it doesn't know is not
    /// applicable.
    /// </summary>
    [Theory]
    [InlineData(Crane, "diameter-nominal diameter-baseline attachment")]
    [InlineData(Mine, "diameter-baseline attachment")]
    [InlineData(Platform, "diameter-nominal diameter-baseline resocketing attachment")]
    public void Limits_of_other_sets_are_held_where_the_facts_are_there(string ruleSet, string asked)
    {
        string[] some = ["diameter-nominal", "diameter-baseline", "resocketing", "attachment"];
        var checks = GoodInspection.Inspect(GoodInspection.Under(ruleSet)).Result.Checks.Where(check => some.Contains(check.Id)).ToArray();
        Assert.Equal(asked.Split(' '), checks.Where(check => check.Outcome == CheckOutcome.Pass).Select(check => check.Id));
        Assert.All(checks, check => Assert.True(check.Outcome is CheckOutcome.Pass or CheckOutcome.NotApplicable));
    }

    /// <summary>
    /// Elsewhere than in a mine a baseline counts where somebody took it, a strength where somebody tested it, turns where somebody counted
    /// them.
    /// </summary>
    [Fact]
    public void What_nobody_measured_is_asked_in_mines_alone()
    {
        var checks = GoodInspection.Inspect(GoodInspection.Input with { SocketedOn = null }).Result.Checks.ToDictionary(check => check.Id);
        Assert.All(["diameter-baseline", "strength", "drum-turns", "resocketing", "attachment"],
            id => Assert.Equal((CheckOutcome.NotApplicable, Severity.Note), (checks[id].Outcome, checks[id].Severity)));
    }

    /// <summary>
    /// Edges belong to what is allowed: the sheet's warmest service, the remembered +115 °C where it has none, and +70 °C of BS 7035 where
    /// nobody names the resin.
    /// </summary>
    [Fact]
    public void Temperature_at_its_limit_passes()
    {
        Assert.Empty(GoodInspection.Inspect(GoodInspection.Input with { HighestTemperatureK = 60 + GoodInspection.Zero }).Findings);
        var unknown =
            GoodInspection.Inspect(GoodInspection.Input with { Compound = null, Chemicals = [],
            HighestTemperatureK = 70 + GoodInspection.Zero });
        Assert.Equal(["compound-not-known"], unknown.Findings.Select(finding => finding.Definition.Code));
    }

    /// <summary>Without a sheet nobody knows what a substance does.</summary>
    [Fact]
    public void Substance_is_unlisted_where_there_is_no_sheet() =>
        Assert.Contains(GoodInspection.Inspect(GoodInspection.Input with { Compound = null }).Findings,
        finding => finding is { Severity: Severity.Unknown, Definition.Code: "met-unlisted-chemical" });

    /// <summary>
    /// 30 CFR 57.19025 and 75.1435: 80 % hold; what fails fails whatever else is missing, and each missing member is named.
    /// </summary>
    [Theory]
    [InlineData(.8, true, CheckOutcome.Pass, "")]
    [InlineData(.79, null, CheckOutcome.Fail, "/attachment/resinByDesign")]
    [InlineData(null, false, CheckOutcome.Fail, "/attachment/efficiency")]
    [InlineData(null, null, CheckOutcome.Undetermined, "/attachment/resinByDesign /attachment/efficiency")]
    public void Attachment_in_a_mine_fails_by_what_is_there_and_names_what_is_missing(double? efficiency, bool? byDesign,
        CheckOutcome outcome, string missing)
    {
        var check = GoodInspection.Inspect(GoodInspection.Under(Mine) with { Attachment = new(efficiency, byDesign) })
            .Result.Checks.Single(check => check.Id == "attachment");
        Assert.Equal((outcome, missing), (check.Outcome, string.Join(' ', check.Missing)));
    }

    /// <summary>Months that are full: 13 March to 12 March lacks a day; 31 December and 14 months is the last day of February.</summary>
    [Theory]
    [InlineData("2025-03-13", "2026-03-12", 11)]
    [InlineData("2025-03-12", "2026-03-12", 12)]
    [InlineData("2024-12-31", "2026-02-28", 14)]
    public void Age_of_a_socketing_counts_full_months(string made, string assessed, double months)
    {
        static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var checks = GoodInspection.Inspect(GoodInspection.Under(Platform) with { SocketedOn = Day(made), AssessedOn = Day(assessed) })
            .Result.Checks;
        Assert.Equal(months, checks.Single(check => check.Id == "resocketing").Measured!.Value.Si);
    }

    /// <summary>docs/service-inspections.md: the own limit of a set, then the one that holds for all.</summary>
    [Theory]
    [InlineData(Crane, "end-cracked", "29 CFR 1926.1413")]
    [InlineData(Mine, "end-cracked", OurOwn)]
    [InlineData(Mine, "end-corroded", "30 CFR 56.19027, 57.19027, 75.1437, 77.1437")]
    [InlineData(Mine, "end-slipped", "30 CFR 56.19027, 57.19027, 75.1437, 77.1437")]
    [InlineData(Crane, "end-slipped", "an end that lets go of its rope is none")]
    [InlineData(Naval, "end-corroded", OurOwn)]
    [InlineData(PouringRules.General, "end-corroded", OurOwn)]
    [InlineData(null, "end-worn", OurOwn)]
    public void Condition_is_held_against_the_rule_that_stands_nearest(string? ruleSet, string id, string document)
    {
        var bad = GoodInspection.Under(ruleSet) with { Cracks = true, Corrosion = Degree.Heavy, Wear = Degree.Heavy, ConeMovement = true };
        var check = GoodInspection.Inspect(bad).Result.Checks.Single(check => check.Id == id);
        Assert.Equal((CheckOutcome.Fail, document, Severity.Stop), (check.Outcome, check.Limit.Source.Document, check.Severity));
    }

    /// <summary>
    /// 29 CFR 1926.1413(a)(4)(i): a competent person determines at once; the law itself takes nothing out, our own rule does until then.
    /// </summary>
    [Fact]
    public void Stop_for_what_a_competent_person_has_to_decide_is_our_own_and_says_so() => Assert.All(
        Editions.Known.Current.Inspection.Conditions.Where(rule => rule.Limit.RuleSet == Crane),
        rule =>
        {
            Assert.Equal(CalcService.Engine.Provenance.Basis.Derived, rule.Limit.Source.Basis);
            Assert.Contains("our own rule", rule.Limit.Text, StringComparison.Ordinal);
            Assert.EndsWith("(a)(4)(i)", rule.Limit.Source.Clause, StringComparison.Ordinal);
        });

    /// <summary>
    /// docs/service-inspections.md: what is exceeded, then what is open, the limit of another set among it, then what leaves least.
    /// </summary>
    [Fact]
    public void Strictest_follows_the_order_of_stop_open_and_least_left()
    {
        static string Strictest(InspectionInput input) => GoodInspection.Inspect(input).Result.Strictest!.Id;
        var passes = GoodInspection.Input with { SocketedOn = null };
        Assert.Equal("diameter-nominal", Strictest(passes));
        // 12 of 24 months, 3 of 5 turns, 80 of 90 %.
        Assert.Equal("resocketing", Strictest(GoodInspection.Input with { RuleSet = Platform }));
        Assert.Equal("drum-turns", Strictest(GoodInspection.Under(Platform) with { Attachment = new(null, null) }));
        Assert.Equal("attachment", Strictest(GoodInspection.Under(Mine)));
        var missing = passes with { Wear = Degree.Unknown };
        Assert.Equal("end-worn", Strictest(missing));
        // One at the fitting, where the Navy's summary rejects one.
        var elsewhere = missing with { BrokenWires = [new(1, WirePlace.Mouth, null, 1)] };
        Assert.Equal("broken-wires-naval-fitting", Strictest(elsewhere));
        Assert.Equal("end-cracked", Strictest(elsewhere with { Cracks = true }));
        // Six of six in the lay, three of three in the strand: the smaller number is the stricter row.
        Assert.Equal("broken-wires-running-strand", Strictest(passes with { BrokenWires = [new(6, WirePlace.Lay, 4, 3)] }));
        // Alike in all: by name, so that the answer hangs on no order.
        Assert.Equal("end-bent", Strictest(passes with { Cracks = true, BendAtMouth = true }));
    }

    /// <summary>Each member that would settle the count, and none that wouldn't.</summary>
    public static TheoryData<RopeFunction, bool, BrokenWires[], string, string> Unplaced => new()
    {
        // At an end connection all of the lay at it counts: place and distance tell, and the length of the lay.
        { RopeFunction.Standing, false, [new(2, WirePlace.Unknown, null, 1)], "standing-end",
            "/inspection/brokenWires/0/place /inspection/brokenWires/0/fromMouth /rope/layLength" },
        { RopeFunction.Standing, false, [new(1, WirePlace.Mouth, null, 1), new(1, WirePlace.Lay, .06, 1)], "standing-end",
        "/rope/layLength" },
        { RopeFunction.Pendant, true, [new(1, WirePlace.Mouth, null, 1), new(1, WirePlace.Lay, null, 1)], "standing-end",
        "/inspection/brokenWires/1/fromMouth" },
        // Three and three lie in one lay if the lay is long enough.
        { RopeFunction.Running, false, [new(3, WirePlace.Lay, 4, 1), new(3, WirePlace.Lay, 4.5, 1)], "running-lay", "/rope/layLength" },
        // Six and thirty diameters need no lay.
        { RopeFunction.RotationResistant, false, [new(1, WirePlace.Lay, 4, 1), new(1, WirePlace.Lay, null, 1)],
            "rotation-resistant-six-diameters", "/inspection/brokenWires/1/fromMouth" },
        { RopeFunction.RotationResistant, false,
        [new(1, WirePlace.Lay, 4, 1), new(1, WirePlace.Lay, 4.2, 1), new(1, WirePlace.Lay, 4.4, 1), new(1, WirePlace.Lay, null, 1)],
        "rotation-resistant-thirty-diameters", "/inspection/brokenWires/3/fromMouth" },
        // What is known to lie farther apart is not counted as certain.
        { RopeFunction.RotationResistant, true, [new(1, WirePlace.Lay, 4, 1), new(1, WirePlace.Lay, 6, 1), new(1, WirePlace.Lay, null, 1)],
            "rotation-resistant-six-diameters", "/inspection/brokenWires/2/fromMouth" },
        { RopeFunction.RotationResistant, true,
        [new(1, WirePlace.Lay, 4, 1), new(1, WirePlace.Lay, 4.2, 1), new(1, WirePlace.Lay, 4.4, 1), new(1, WirePlace.Lay, 6, 1),
        new(1, WirePlace.Lay, null, 1)], "rotation-resistant-thirty-diameters", "/inspection/brokenWires/4/fromMouth" },
        // Of unknown place it may be at the end and not beyond it.
        { RopeFunction.Standing, true, [new(2, WirePlace.Lay, 4, 1), new(1, WirePlace.Unknown, 4.05, 1)], "standing-lay",
            "/inspection/brokenWires/1/place" },
        { RopeFunction.Standing, true, [new(2, WirePlace.Unknown, null, 1), new(1, WirePlace.Lay, 4, 1)], "standing-lay",
        "/inspection/brokenWires/0/place /inspection/brokenWires/0/fromMouth" },
        { RopeFunction.Running, true, [new(2, WirePlace.Lay, 4, null), new(1, WirePlace.Lay, 4.1, 1)], "running-strand",
        "/inspection/brokenWires/0/inOneStrand" },
        // Two strands with two each may be one strand: nothing is missing but another look.
        { RopeFunction.Running, true, [new(2, WirePlace.Lay, 4, 2), new(2, WirePlace.Lay, 4.1, 2)], "running-strand",
            "/inspection/brokenWires" },
        { RopeFunction.Standing, true, [new(1, WirePlace.Valley, 4, 1), new(1, WirePlace.Unknown, 4.1, 1)], "mine-valley",
        "/inspection/brokenWires/1/place" },
    };

    [Theory]
    [MemberData(nameof(Unplaced))]
    public void Count_that_may_reject_names_what_would_settle_it(RopeFunction function, bool laid, BrokenWires[] wires, string row,
        string missing)
    {
        var good = GoodInspection.With(function, wires);
        var inspection = GoodInspection.Inspect(good with { Rope = good.Rope with { LayLengthM = laid ? .13 : null } });
        var check = inspection.Result.Checks.Single(check => check.Id == "broken-wires-" + row);
        Assert.Equal((CheckOutcome.Undetermined, missing), (check.Outcome, string.Join(' ', check.Missing)));
        // One finding for all rows names them all.
        var found = Assert.Single(inspection.Findings, finding => finding.Definition.Code == "broken-wires-not-placed");
        Assert.Superset(check.Missing.ToHashSet(), found.Related.Append(found.Pointer).ToHashSet());
    }

    /// <summary>29 CFR 1926.1413: up to two wires in a lay of a standing rope pass; rows for running ropes say nothing of it.</summary>
    [Fact]
    public void Row_of_another_function_is_no_stricter_rule() =>
        Assert.Empty(GoodInspection.Inspect(GoodInspection.With(RopeFunction.Standing, new BrokenWires(2, WirePlace.Lay, 4, 2))).Findings);

    /// <summary>
    /// docs/service-inspections.md: beyond the farthest broken wire of known place where wires reject, else beyond the socket.
    /// </summary>
    [Fact]
    public void Cut_reaches_as_far_as_the_damage_that_rejects()
    {
        static double? Cut(InspectionInput input) => GoodInspection.Inspect(input).Result.CutFromM;
        var one = GoodInspection.With(RopeFunction.Running, new BrokenWires(1, WirePlace.Lay, 5, 1));
        Assert.Null(Cut(one));
        Printed.Matches(.9144, Cut(one with { Cracks = true })!.Value);
        var six = GoodInspection.With(RopeFunction.Running, new BrokenWires(6, WirePlace.Lay, 5, 1));
        Printed.Matches(5.9144, Cut(six with { Cracks = true })!.Value);
        // Nobody knows where.
        var unplaced = GoodInspection.With(RopeFunction.Running, new BrokenWires(6, WirePlace.Lay, null, 1));
        Assert.Null(Cut(unplaced));
        Printed.Matches(.9144, Cut(unplaced with { Cracks = true })!.Value);
        // What was looked at lightly, or not at all, is not cut off.
        Assert.Null(Cut(GoodInspection.Input with { Corrosion = Degree.Light, Cracks = null }));
    }

    /// <summary>One bad thing is enough for a cut, and a second one doesn't take it back.</summary>
    [Fact]
    public void Two_bad_things_at_the_end_are_cut_off_as_one_is()
    {
        var cracked = GoodInspection.Input with { Cracks = true };
        Assert.All(
            [
                cracked with { Corrosion = Degree.Heavy }, cracked with { Wear = Degree.Heavy }, cracked with { BendAtMouth = true },
                cracked with { ImproperlyApplied = true }, cracked with { ConeMovement = true },
            ],
            input => Printed.Matches(.9144, GoodInspection.Inspect(input).Result.CutFromM!.Value));
    }

    /// <summary>
    /// Enough rope is left where what is known is enough and nothing that is known says no: what can be spared against the
    /// cut of 3 ft = 0.9144 m, turns after the cut against three (30 CFR 77.1436(b)), which a crane's rule set doesn't have: nobody knows.
    /// A turn of a drum of 0.5 m takes 1.5708 m, so that the cut takes 0.5821 turns.
    /// </summary>
    [Theory]
    [InlineData(Crane, false, null, null, null, null, "")]
    [InlineData(Crane, false, null, 3.0, null, true, "")]
    [InlineData(Crane, false, null, 2.9, null, null, "limit-of-another-rule-set")]
    [InlineData(Crane, true, null, null, null, null, "rope-left-unknown")]
    [InlineData(Crane, true, .9144, null, null, true, "")]
    [InlineData(Crane, true, .914, null, null, false, "rope-left-short")]
    [InlineData(Crane, true, null, 3.583, .5, true, "")]
    [InlineData(Crane, true, null, 3.582, .5, null, "limit-of-another-rule-set")]
    [InlineData(Crane, true, .9144, 3.582, .5, null, "limit-of-another-rule-set")]
    [InlineData(Crane, true, .914, 3.583, .5, false, "rope-left-short")]
    [InlineData(Crane, true, .9144, 3.583, .5, true, "")]
    [InlineData(Crane, true, .9144, 3.583, null, null, "drum-turns-missing")]
    [InlineData(Crane, true, .914, 3.583, null, false, "rope-left-short drum-turns-missing")]
    [InlineData(Crane, true, null, 3.583, null, null, "drum-turns-missing")]
    [InlineData(Crane, true, .9144, 2.9, null, null, "limit-of-another-rule-set")]
    [InlineData(Mine, false, null, 2.9, null, false, "drum-turns-few")]
    [InlineData(Mine, true, null, 3.582, .5, false, "drum-turns-few")]
    [InlineData(Mine, true, .9144, 3.582, .5, false, "drum-turns-few")]
    [InlineData(Mine, true, .9144, 2.9, null, false, "drum-turns-few")]
    public void Rope_left_is_enough_where_nothing_known_says_no(string ruleSet, bool isCut, double? spareM, double? turns, double? drumM,
        bool? enough, string codes)
    {
        var inspection =
            GoodInspection.Inspect(GoodInspection.Under(ruleSet) with { Cracks = isCut, LengthLeftM = spareM, DrumTurnsLeft = turns,
            DrumDiameterM = drumM });
        Assert.Equal(enough, inspection.Result.Left.Enough);
        Assert.Equal(codes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(),
            inspection.Findings.Select(finding => finding.Definition.Code)
            .Where(code => code.StartsWith("drum", StringComparison.Ordinal) || code.StartsWith("rope-left", StringComparison.Ordinal)
            || code.StartsWith("limit", StringComparison.Ordinal)).Order());
    }

    /// <summary>A mine asks for turns whatever else is known, and so needs no word about the length that is left.</summary>
    [Fact]
    public void Mine_asks_for_turns_and_not_for_length()
    {
        var findings = GoodInspection.Inspect(GoodInspection.Under(Mine) with { Cracks = true, DrumTurnsLeft = null })
            .Findings.Select(finding => finding.Definition.Code).ToArray();
        Assert.Contains("drum-turns-missing", findings);
        Assert.DoesNotContain("rope-left-unknown", findings);
    }

    /// <summary>
    /// 29 CFR 1926.1413(a)(2)(ii)(A)(3): three in a lay beyond the ends, or two at one: three of unknown place reject in any; two may pass,
    /// far from the end.
    /// </summary>
    [Theory]
    [InlineData(3, ServiceDisposition.Withdraw, "broken-wires-reject")]
    [InlineData(200, ServiceDisposition.Withdraw, "broken-wires-reject")]
    [InlineData(2, ServiceDisposition.Hold, "broken-wires-not-placed")]
    public void Wires_that_reject_in_every_place_reject_without_one(int count, ServiceDisposition disposition, string code)
    {
        var inspection =
            GoodInspection.Inspect(GoodInspection.With(RopeFunction.Pendant,
            new BrokenWires(count, WirePlace.Unknown, null, 1)) with { LengthLeftM = 50 });
        Assert.Equal(disposition, inspection.Result.Disposition);
        Assert.Equal(code, Assert.Single(inspection.Findings, finding => finding.Severity >= Severity.Unknown).Definition.Code);
        Assert.Equal((null, null), (inspection.Result.CutFromM, inspection.Result.Left.Enough));
    }

    /// <summary>
    /// 29 CFR 1926.1413(a)(2)(ii)(A)(2): two in six diameters, four in thirty, whatever else the rope does, and by its class where nobody
    /// says so.
    /// </summary>
    [Theory]
    [InlineData(Crane, RopeFunction.Running, ServiceDisposition.Withdraw)]
    [InlineData(Crane, RopeFunction.Standing, ServiceDisposition.Withdraw)]
    [InlineData(Crane, RopeFunction.Unknown, ServiceDisposition.Withdraw)]
    [InlineData(PouringRules.General, RopeFunction.Running, ServiceDisposition.Withdraw)]
    [InlineData(Naval, RopeFunction.Running, ServiceDisposition.Hold)]
    [InlineData(Mine, RopeFunction.Running, ServiceDisposition.Hold)]
    public void Class_of_many_strands_is_held_against_the_rows_of_rotation_resistant_rope(string ruleSet, RopeFunction function,
        ServiceDisposition disposition)
    {
        var good = GoodInspection.Under(ruleSet);
        foreach (var construction in new[] { "18x7", "19x7", "34x7" })
        {
            var rope = good.Rope with { Construction = construction, Function = function };
            Assert.Equal(disposition,
                GoodInspection.Inspect(good with { Rope = rope, BrokenWires = [new(2, WirePlace.Lay, 3, 1)] }).Result.Disposition);
            Assert.Equal(disposition,
                GoodInspection.Inspect(good with { Rope = rope,
                BrokenWires = [new(2, WirePlace.Lay, 3, 1), new(2, WirePlace.Lay, 3.3, 1)] }).Result.Disposition);
        }
    }

    /// <summary>Where a stop says that something goes, or nobody knows what, nobody says that enough is left.</summary>
    [Fact]
    public void Enough_rope_is_left_only_where_it_is_known_what_has_to_go()
    {
        static (double? Cut, bool? Enough) Left(InspectionInput input) =>
            GoodInspection.Inspect(input with { LengthLeftM = 50, DrumTurnsLeft = null }).Result is var result
            ? (result.CutFromM, result.Left.Enough) : default;
        var good = GoodInspection.Input;
        Assert.Equal((.9144, true), Left(good with { HighestTemperatureK = 90 + GoodInspection.Zero }));
        Assert.Equal((null, null), Left(GoodInspection.With(RopeFunction.Running, new BrokenWires(9, WirePlace.Unknown, null, 1))));
        Assert.Equal((.9144, null),
            Left(GoodInspection.With(RopeFunction.Running, new BrokenWires(9, WirePlace.Unknown, null, 1)) with { Cracks = true }));
        Assert.Equal((null, null), Left(good with { Rope = good.Rope with { MeasuredDiameterM = .018 } }));
        Assert.Equal((.9144, null), Left(good with { Cracks = true, Wear = Degree.Unknown }));
        Assert.Equal((null, null), Left(good with { RuleSet = Platform, SocketedOn = null }));
        // Ten millimetres are too little for any cut.
        Assert.False(GoodInspection.Inspect(good with { Cracks = true, Wear = Degree.Unknown, LengthLeftM = .01 }).Result.Left.Enough);
        // A held end with turns on the drum.
        Assert.Null(GoodInspection.Inspect(GoodInspection.Under(Mine) with { Wear = Degree.Unknown }).Result.Left.Enough);
        Assert.True(GoodInspection.Inspect(GoodInspection.Under(Mine)).Result.Left.Enough);
    }

    /// <summary>One rope that is too thin is one fact; a limit that holds says it before one of another set.</summary>
    [Theory]
    [InlineData(Naval, Severity.Unknown, "limit-of-another-rule-set")]
    [InlineData(PouringRules.General, Severity.Stop, "diameter-reduced")]
    [InlineData(Crane, Severity.Stop, "diameter-reduced")]
    public void Thin_rope_is_said_once(string ruleSet, Severity severity, string code)
    {
        var good = GoodInspection.Under(ruleSet);
        var found = Assert.Single(GoodInspection.Inspect(good with { Rope = good.Rope with { MeasuredDiameterM = .0187 } }).Findings);
        Assert.Equal((severity, code, "/rope/measuredDiameter"), (found.Severity, found.Definition.Code, found.Pointer));
        Assert.Equal(["/inspection/baselineDiameter", "/rope/diameter"], found.Related.Order(StringComparer.Ordinal));
    }

    /// <summary>30 CFR 56.19024(g) counts the loss from the baseline: one that no rope of this size had hides it.</summary>
    [Theory]
    [InlineData(.0190, .0195, 0)]
    [InlineData(.0190, .0191, 0)]
    [InlineData(.0101, .0102, 1)]
    [InlineData(.0188, .0189, 1)]
    [InlineData(.0215, .0215, 0)]
    [InlineData(.0229, .0229, 2)]
    public void Diameter_of_another_rope_leaves_it_open(double measured, double baseline, int said)
    {
        var good = GoodInspection.Under(Mine);
        var inspection =
            GoodInspection.Inspect(good with { BaselineDiameterM = baseline, Rope = good.Rope with { MeasuredDiameterM = measured } });
        Assert.Equal(new[] { "diameter-implausible", "rope-thick" }.Take(said),
            inspection.Findings.Select(finding => finding.Definition.Code));
        Assert.Equal(said > 0 ? ServiceDisposition.Hold : ServiceDisposition.Serve, inspection.Result.Disposition);
    }

    /// <summary>Limits of a mine's and a platform's law, exceeded elsewhere, are for a person to read; not exceeded, silent.</summary>
    [Theory]
    [InlineData(Crane)]
    [InlineData(Naval)]
    [InlineData(PouringRules.General)]
    public void Borrowed_limit_of_an_attachment_never_passes_and_an_age_is_no_damage(string ruleSet)
    {
        var good = GoodInspection.Under(ruleSet);
        ServiceDisposition Of(InspectionInput input) => GoodInspection.Inspect(input).Result.Disposition;
        Assert.Equal(ServiceDisposition.Serve, Of(good));
        Assert.Equal(ServiceDisposition.Hold, Of(good with { Attachment = new(.1, null) }));
        Assert.Equal(ServiceDisposition.Hold, Of(good with { Attachment = new(null, false) }));
        // An interval of another machine's law: whoever tells the day is not to fare worse than who hides it.
        Assert.Equal(ServiceDisposition.Serve, Of(good with { SocketedOn = new(1990, 1, 1) }));
        Assert.Equal(ServiceDisposition.Serve, Of(GoodInspection.Under(Mine) with { SocketedOn = new(1990, 1, 1) }));
    }

    /// <summary>More broken wires than a rope of any kind may have reject whatever it does; the row that says so fails.</summary>
    [Fact]
    public void Wires_that_reject_in_every_function_reject_where_nobody_tells_it()
    {
        var good = GoodInspection.Input;
        InspectionInput With(int count) =>
            good with { Rope = good.Rope with { Function = RopeFunction.Unknown }, BrokenWires = [new(count, WirePlace.Lay, 5, 2)] };
        var (few, many) = (GoodInspection.Inspect(With(4)), GoodInspection.Inspect(With(20)));
        Assert.Equal((Decision.Undetermined, Decision.DoNotProceed), (few.Decision, many.Decision));
        Assert.Single(many.Findings, finding => finding.Definition.Code == "broken-wires-reject");
        Assert.Equal(CheckOutcome.Fail, many.Result.Checks.Single(check => check.Id == "broken-wires-running-lay").Outcome);
        Assert.NotNull(many.Result.CutFromM);
    }

    /// <summary>A lay of 13 mm on a rope of 20 mm or more was meant in centimetres: it tells no more than none.</summary>
    [Theory]
    [InlineData(.13, Decision.DoNotProceed)]
    [InlineData(null, Decision.Undetermined)]
    [InlineData(.013, Decision.Undetermined)]
    [InlineData(1.3, Decision.Undetermined)]
    public void Lay_length_that_can_not_be_one_tells_nothing(double? layM, Decision decision)
    {
        var good = GoodInspection.Input;
        var end = good with { Rope = good.Rope with { LayLengthM = layM },
            BrokenWires = [new(3, WirePlace.Lay, 5, 1), new(3, WirePlace.Lay, 5.1, 1)] };
        Assert.Equal(decision, GoodInspection.Inspect(end).Decision);
    }
}
