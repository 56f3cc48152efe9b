using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;
using CalcService.Engine.Tests.Numerics;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>
/// What the checks of an assessment hold as evidence, worked by hand from the sizes of the sound socket; rules by
/// docs/reuse-assessments.md.
/// </summary>
public sealed class ReuseEvidenceTests
{
    /// <summary>
    /// Bores 23.1 and 23.2 of 23 mm; 34.2 and 45.1 mm are 0.1 mm less apart than 11; hole 36.8 and 36.6 of 36.5; pin 34.9 of 35; gap 40.3
    /// of 40; ears 15.9 of 16.
    /// </summary>
    [Theory]
    [InlineData("bore-growth", .2 / 23, .02)]
    [InlineData("bore-ovality", .1 / 23, .02)]
    [InlineData("taper", .1 / 11, .10)]
    [InlineData("pin-hole-growth", .3 / 36.5, .05)]
    [InlineData("pin-hole-ovality", .2 / 36.5, .02)]
    [InlineData("pin-wear", .1 / 35, .02)]
    [InlineData("ear-spread", .3 / 40, .03)]
    [InlineData("ear-thickness", .1 / 16, .05)]
    [InlineData("pits", 0, .0008)]
    [InlineData("removal-heat", 20 + Zero, 400 + Zero)]
    [InlineData("removal-warmth", 20 + Zero, 200 + Zero)]
    // Twelve months from the day of the search are 365 days.
    [InlineData("crack-search-age", 86400, 365 * 86400)]
    [InlineData("rated-load", 50e3, 50e3)]
    [InlineData("proof-load", 100e3, 120e3)]
    [InlineData("rope-entry", .020, .023)]
    [InlineData("rope-strength", 320e3 * 15.9 * 21.45 / (16 * 21.75), 252e3)]
    public void Check_shows_what_was_found_and_what_is_allowed(string id, double measured, double limit)
    {
        var check = Of(Input, id);
        Assert.Equal(CheckOutcome.Pass, check.Outcome);
        Printed.Matches(measured, check.Measured!.Value.Si, 1e-9);
        Printed.Matches(limit, check.Limit!.Value.Si, 1e-9);
    }

    /// <summary>
    /// By hand, as measured: ears 15.9, hole 36.8, pin 34.9, gap 40.3 mm; the end is 40 − 0.15 from the hole's centre. Of all parts the
    /// shear-out loses most, (16·21.75)/(15.9·21.45).
    /// </summary>
    [Fact]
    public void Socket_as_measured_has_the_stresses_worked_out_by_hand()
    {
        var result = Assess(Input).Result;
        Holds(result, "ear-bearing", 50000 / (2 * 34.9 * 15.9));
        Holds(result, "ear-net-section", 50000 / (2 * 15.9 * 43.2));
        Holds(result, "ear-shear-out", 50000 / (4 * 15.9 * 21.45));
        Holds(result, "ear-block", 50000 / (2 * 15.9 * ((1.13 * 21.45) + (.92 * 21.6 / (1 + (21.6 / 36.8))))));
        Holds(result, "pin-shear", 2 * 50000 / (Math.PI * 34.9 * 34.9));
        Holds(result, "pin-bending", 16 * 50000 * (8 + 10.075) / (Math.PI * 34.9 * 34.9 * 34.9));
        Printed.Matches(16 * 50000 * 18.075 / (Math.PI * 34.9 * 34.9 * 34.9) * 3 / 600,
            Of(Input, "strength-pin-bending").Measured!.Value.Si, 1e-9);
        Printed.Matches(320e3 * 15.9 * 21.45 / (16 * 21.75), result.RemainingStrengthN!.Value, 1e-9);
    }

    /// <summary>By hand: the worse of drawing and measurement, pits of half a millimetre off both faces.</summary>
    [Fact]
    public void Strength_takes_the_worse_of_drawing_and_measurement()
    {
        var narrow = Found(found => found with { EarWidthM = .078, EarEndDistanceM = .039, PitDepthM = .0005 })(Input);
        Holds(Assess(narrow).Result, "ear-net-section", 50000 / (2 * 14.9 * 41.2));
        Holds(Assess(narrow).Result, "ear-shear-out", 50000 / (4 * 14.9 * 20.45));
        var thick = Found(found => found with
        {
            EarWidthM = .082, EarEndDistanceM = .041, EarThicknessM = .017, PinDiameterM = .036, EarGapM = .0395,
                PinHoleDiametersM = [.0364, .0364],
            OuterAtSmallEndM = .072, OuterAtMouthM = .072,
                Stations = [new(0, [.0229, .0229]), new(.050, [.0339, .0339]), new(.100, [.0449, .0449])],
        })(Input);
        var result = Assess(thick).Result;
        Assert.All(result.AsMade!.Parts.Zip(result.AsMeasured!.Parts),
            pair => Printed.Matches(pair.First.StressPa, pair.Second.StressPa, 1e-12));
        Assert.Equal(320e3, result.RemainingStrengthN);
    }

    /// <summary>A section without a diameter, and a hole with one, is not measured.</summary>
    [Fact]
    public void Measurement_that_is_none_holds_the_socket()
    {
        Assert.Equal(Disposition.Hold, Assess(Station(1, [])(Input)).Result.Disposition);
        Assert.Contains(Measured + "stations",
            Of(Found(found => found with { Stations = [new(0, [])] })(Input), "strength-basket-hoop").Missing);
        var hole = Found(found => found with { PinHoleDiametersM = [.0366] })(Input);
        Assert.Null(Assess(hole).Result.Wear.PinHoleOvality);
        Assert.Null(Of(hole, "pin-hole-ovality").Measured);
    }

    /// <summary>
    /// A socket of which a part can't be computed has no utilisation and no remaining strength, and is asked for that part alone.
    /// </summary>
    [Fact]
    public void Part_that_cannot_be_computed_leaves_the_whole_open()
    {
        var input = For(use =>
            use with { RatedLoadN = null })(Limits(limits =>
            limits with { Source = null })(Drawn(drawn => drawn with { EarWidthM = null })(Input)));
        var result = Assess(input).Result;
        Assert.Equal((null, null, null), (result.AsMade, result.AsMeasured, result.RemainingStrengthN));
        Assert.All(["strength-ear-net-section", "rope-strength"], id => Assert.Equal(["/socket/nominal/earWidth"], Of(input, id).Missing));
    }

    /// <summary>
    /// Edges belong to what is allowed: 400 °C are warm and no more, 200 °C are not warm, a search is twelve months old on the same day of
    /// the month.
    /// </summary>
    [Fact]
    public void Edges_are_allowed()
    {
        Assert.Equal(["socket-warmed"], Codes(Removed(RemovalMethod.PressedWarm, 400)(Input)));
        Assert.Empty(Codes(Removed(RemovalMethod.PressedWarm, 200)(Input)));
        Assert.Empty(Codes(Seen(seen => seen with { InspectedOn = new(2025, 3, 12) })(Input)));
        Assert.Empty(Codes(For(use => use with { ProofLoadN = 120e3 })(Input)));
    }

    /// <summary>The maker knows his steel; what he allows leaves no question of warmth.</summary>
    [Theory]
    [InlineData(300, 300, CheckOutcome.Pass, "operator's rule 7", "")]
    [InlineData(300, 301, CheckOutcome.Fail, "operator's rule 7", "socket-overheated")]
    [InlineData(500, 401, CheckOutcome.Pass, "operator's rule 7", "")]
    [InlineData(500, 501, CheckOutcome.Fail, "operator's rule 7", "socket-overheated")]
    public void Heat_is_held_against_what_the_maker_says(double makerC, double reachedC, CheckOutcome outcome, string document,
        string codes)
    {
        var input = Removed(RemovalMethod.PressedWarm,
            reachedC)(Limits(limits => limits with { RemovalTemperatureK = makerC + Zero })(Input));
        var check = Of(input, "removal-heat");
        Assert.Equal((outcome, document), (check.Outcome, check.Source.Document));
        Assert.Equal(CheckOutcome.NotApplicable, Of(input, "removal-warmth").Outcome);
        Assert.Equal(codes, string.Join(' ', Codes(input)));
    }

    [Fact]
    public void Socket_that_is_too_hot_is_not_called_warm_besides() =>
        Assert.Equal(CheckOutcome.NotApplicable, Of(Removed(RemovalMethod.PressedWarm, 401)(Input), "removal-warmth").Outcome);

    /// <summary>What was pressed out cold needs no thermometer.</summary>
    [Fact]
    public void Cone_pressed_out_cold_needs_no_temperature() => Assert.Empty(Codes(Removed(RemovalMethod.PressedCold, null)(Input)));

    /// <summary>A crack whose place nobody says is held against every part that the socket has.</summary>
    [Theory]
    [InlineData(SocketType.Open, SocketPlace.Unknown, "crack-basket crack-ears crack-pin-holes crack-pin")]
    [InlineData(SocketType.Closed, SocketPlace.Unknown, "crack-basket crack-bail")]
    [InlineData(SocketType.Unknown, SocketPlace.Unknown, "crack-basket crack-ears crack-pin-holes crack-pin")]
    [InlineData(SocketType.Open, SocketPlace.Bail, "crack-bail")]
    [InlineData(SocketType.Closed, SocketPlace.Ears, "crack-ears")]
    public void Crack_fails_every_part_that_it_may_be_in(SocketType type, SocketPlace place, string parts)
    {
        var input = Socket(socket =>
            socket with { Type = type })(Seen(seen =>
            seen with { Indications = [new(SocketPlace.Basket, IndicationKind.Rounded, null), new(place, IndicationKind.Crack, .003)] })(
            Input));
        var outcome = Assess(input);
        Assert.Equal(parts,
            string.Join(' ',
            outcome.Result.Checks.Where(check => check.Outcome == CheckOutcome.Fail && check.Id != "indications")
            .Select(check => check.Id)));
        var finding = Assert.Single(outcome.Findings, finding => finding.Definition.Code == "socket-cracked");
        Assert.Equal(("/inspection/indications/1", .003), (finding.Pointer, finding.Measured!.Value.Si));
    }

    /// <summary>A closed socket has a bail in place of ears and pin.</summary>
    [Fact]
    public void Closed_socket_is_asked_for_its_bail_and_not_for_ears()
    {
        string[] ears =
        [
            "crack-ears", "crack-pin-holes", "crack-pin", "pin-hole-growth", "pin-hole-ovality", "pin-in-hole", "pin-wear", "ear-spread",
                "ear-thickness",
                "ear-width", "ear-end-distance",
            "strength-ear-bearing", "strength-ear-net-section", "strength-ear-shear-out", "strength-ear-block", "strength-pin-shear",
            "strength-pin-bending",
        ];
        var outcome =
            Assess(Socket(socket =>
            socket with { Type = SocketType.Closed, PinYieldStrengthPa = null,
            Measured = new() { Stations = socket.Measured.Stations, OuterAtSmallEndM = .0698, OuterAtMouthM = .0698, PitDepthM = 0 } })(
            Input));
        Assert.Equal(["bail-not-computed"], outcome.Findings.Select(finding => finding.Definition.Code));
        Assert.Equal(ears.Order(StringComparer.Ordinal),
            outcome.Result.Checks.Where(check => check.Outcome == CheckOutcome.NotApplicable).Select(check => check.Id)
            .Order(StringComparer.Ordinal));
        Assert.Equal(["basket-hoop"], outcome.Result.AsMeasured!.Parts.Select(part => part.Id));
        // By hand: hoop of 70/23 as made over 69.8/23.2 as measured, 320 kN in that proportion.
        static double Hoop(double ratio) => ((ratio * ratio) + 1) / ((ratio * ratio) - 1);
        Printed.Matches(320e3 * Hoop(70.0 / 23) / Hoop(69.8 / 23.2), outcome.Result.RemainingStrengthN!.Value, 1e-9);
        Assert.Contains(
            Of(Socket(socket => socket with { Type = SocketType.Closed })(Seen(seen => seen with { Places = [SocketPlace.Basket] })(Input)),
            "crack-bail").Missing, pointer => pointer == "/inspection/places");
    }

    /// <summary>Each third of the basket needs a section; one at a third of the length lies in the middle.</summary>
    [Theory]
    [InlineData(new[] { 0, .050 }, "the bore near the mouth")]
    [InlineData(new[] { .100 }, "the bore near the small end, in the middle")]
    [InlineData(new[] { .033, .034, .067 }, null)]
    [InlineData(new[] { .033, .066, .066 }, "the bore near the mouth")]
    [InlineData(new[] { .034, .050, .100 }, "the bore near the small end")]
    public void Third_without_a_section_is_named(double[] places, string? what)
    {
        var basket = Input.Socket.Nominal.Basket;
        var input = Found(found =>
            found with { Stations =
            [.. places.Distinct()
            .Select(at => new BoreStation(at, [basket.DiameterAtM(at / basket.LengthM), basket.DiameterAtM(at / basket.LengthM)]))] })(
            Input);
        var words = Assess(input).Findings.Where(finding => finding.Definition.Code == "wear-measurement-missing")
            .SelectMany(finding => finding.Words).Select(word => word.Text);
        Assert.Equal(what is null ? [] : [what], words);
    }

    /// <summary>In whatever order sections are written, neighbours are compared.</summary>
    [Fact]
    public void Order_of_the_sections_is_of_no_matter()
    {
        var turned = Found(found => found with { Stations = [.. found.Stations.Reverse()] })(Input);
        Assert.Equal(Of(Input, "taper").Measured, Of(turned, "taper").Measured);
        Assert.Equal(Assess(Input).Result.RemainingStrengthN, Assess(turned).Result.RemainingStrengthN);
        Assert.Equal([0, .050, .100], Assess(turned).Result.Wear.Stations.Select(station => station.FromSmallEndM));
    }

    /// <summary>
    /// Without limits of their own pin and ears have to be measured all the same, and 0.1 mm is what ISO 2768-1, class m, grants a
    /// drawing; the bore only has to widen.
    /// </summary>
    [Fact]
    public void Optional_limits_may_be_left_out()
    {
        var free = Limits(limits => limits with { PinWear = null, EarThicknessLoss = null, TaperLoss = null });
        Assert.Empty(Codes(free(Input)));
        Assert.All(["pin-wear", "ear-thickness"], id => Assert.Equal(CheckOutcome.Pass, Of(free(Input), id).Outcome));
        Printed.Matches(.1 / 35, Of(free(Input), "pin-wear").Measured!.Value.Si, 1e-9);
        var unmeasured = free(Found(found => found with { PinDiameterM = null, EarThicknessM = null })(Input));
        Assert.Equal([Measured + "pinDiameter"], Of(unmeasured, "pin-wear").Missing);
        Assert.Equal([Measured + "earThickness"], Of(unmeasured, "ear-thickness").Missing);
        var taper = Of(Limits(limits => limits with { TaperLoss = null, Source = null })(Input), "taper");
        Assert.Equal((CheckOutcome.Pass, Basis.Derived), (taper.Outcome, taper.Source.Basis));
        Assert.Equal("operator's rule 7", Of(Input, "taper").Source.Document);
        Assert.Equal([Limit + "source"], Of(Limits(limits => limits with { Source = null })(Input), "taper").Missing);
    }

    /// <summary>A bore that opens by a thousandth of its taper still widens.</summary>
    [Fact]
    public void Bore_that_hardly_widens_still_widens()
    {
        var input = Limits(limits => limits with { TaperLoss = null, BoreGrowth = 1 })(Station(0, .034189, .034189)(Input));
        Assert.Equal(CheckOutcome.Pass, Of(input, "taper").Outcome);
    }

    /// <summary>
    /// The load that is meant, else the rated one; the proof load that is given, else twice the rated load (DOE-STD-1090-96).
    /// </summary>
    [Fact]
    public void Loads_that_are_not_given_follow_from_the_rated_load()
    {
        var silent = Assess(For(use => use with { RatedLoadN = null, ProofLoadN = null })(Input));
        Assert.Empty(silent.Findings);
        Assert.Equal((50e3, 100e3, 3.0), (silent.Result.RatedLoadN, silent.Result.ProofLoadN, silent.Result.DesignFactor));
        Assert.Contains(silent.Assumptions, assumption => assumption.Pointer == "/intended/proofLoad"
            && assumption.Value!.Value.Si == 100e3);
        Assert.Contains(silent.Assumptions, assumption => assumption.Pointer == "/limits/designFactor");
        // The cone that presses on the wall is the one that a match expects: μ 0.2.
        Assert.Contains(silent.Assumptions, assumption => assumption.Pointer == "/socket/nominal/basket"
            && assumption.Value!.Value.Si == .2);
        Assert.Equal((50e3, 100e3),
            (Of(For(use => use with { RatedLoadN = null })(Input), "rated-load").Measured!.Value.Si,
            Of(For(use => use with { ProofLoadN = null })(Input), "proof-load").Measured!.Value.Si));
        Assert.DoesNotContain(silent.Assumptions, assumption => assumption.Pointer == "/socket/pin/yieldStrength");
        var told =
            Assess(Limits(limits =>
            limits with { DesignFactor = 2 })(For(use => use with { RatedLoadN = 40e3, ProofLoadN = 90e3 })(Input)));
        Assert.Equal((40e3, 90e3, 2.0), (told.Result.RatedLoadN, told.Result.ProofLoadN, told.Result.DesignFactor));
        Assert.DoesNotContain(told.Assumptions, assumption => assumption.Pointer is "/intended/proofLoad" or "/limits/designFactor");
        // By hand: 40 kN on 2·34.9·15.9 mm², factor 2, over 1.25·355 N/mm²; at proof 90 kN without factor, which is more.
        Printed.Matches(90000 / (2 * 34.9 * 15.9) / (1.25 * 355),
            Of(For(use => use with { RatedLoadN = 40e3, ProofLoadN = 90e3 })(Limits(limits => limits with { DesignFactor = 2 })(Input)),
            "strength-ear-bearing").Measured!.Value.Si, 1e-9);
    }

    /// <summary>Without the pin's steel it is taken as strong as the socket's: f = min(355, 570/1.2) = 355 N/mm².</summary>
    [Fact]
    public void Pin_of_unknown_steel_is_as_strong_as_the_socket()
    {
        var outcome = Assess(Socket(socket => socket with { PinYieldStrengthPa = null })(Input));
        Assert.Equal(355e6, outcome.Assumptions.Single(assumption => assumption.Pointer == "/socket/pin/yieldStrength").Value!.Value.Si);
        Printed.Matches(50000 / (Math.PI * 35 * 35 / 2) * 3 * Math.Sqrt(3) / 355,
            outcome.Result.AsMade!.Parts.Single(part => part.Id == "pin-shear").AtRated, 1e-9);
    }

    /// <summary>
    /// A given proof load is held against the rating though the strength can't be computed; without one nothing is known of it.
    /// </summary>
    [Fact]
    public void Proof_load_is_held_against_the_rating_whatever_else_is_missing()
    {
        var soft = Socket(socket => socket with { YieldStrengthPa = null });
        Assert.Equal(CheckOutcome.Fail, Of(soft(For(use => use with { ProofLoadN = 121e3 })(Input)), "proof-load").Outcome);
        Assert.Equal(CheckOutcome.Pass, Of(soft(Input), "proof-load").Outcome);
        Assert.Equal(CheckOutcome.Pass, Of(soft(For(use => use with { ProofLoadN = null })(Input)), "proof-load").Outcome);
        var open =
            Of(For(use => use with { RatedLoadN = null, ProofLoadN = null })(Socket(socket => socket with { RatedLoadN = null })(Input)),
            "proof-load");
        Assert.Equal((CheckOutcome.Undetermined, "/socket/ratedLoad"), (open.Outcome, string.Join(' ', open.Missing)));
        var unrated = Of(Socket(socket => socket with { ProofRatingN = null })(Input), "proof-load");
        Assert.Equal((CheckOutcome.NotApplicable, 100e3), (unrated.Outcome, unrated.Measured!.Value.Si));
    }

    /// <summary>
    /// ISO 17558, scope: the socket has to be stronger than the rope, and what is left of it is at most what the maker made.
    /// </summary>
    [Theory]
    [InlineData(252e3, CheckOutcome.Fail, "")]
    [InlineData(253e3, CheckOutcome.Undetermined, "/socket/material/yieldStrength")]
    public void Socket_too_weak_when_new_fails_whatever_is_missing(double breakingN, CheckOutcome outcome, string missing)
    {
        var check = Of(Socket(socket => socket with { YieldStrengthPa = null, BreakingForceN = breakingN })(Input), "rope-strength");
        Assert.Equal((outcome, 252e3, breakingN), (check.Outcome, check.Limit!.Value.Si, check.Measured!.Value.Si));
        Assert.Equal(outcome == CheckOutcome.Fail ? "/socket/material/yieldStrength" : missing, string.Join(' ', check.Missing));
    }

    [Fact]
    public void Rope_is_compared_where_rope_and_strength_of_the_socket_are_known()
    {
        var ropeless = For(use => use with { Rope = null })(Input);
        Assert.All(["rope-entry", "rope-strength"], id => Assert.Equal(CheckOutcome.NotApplicable, Of(ropeless, id).Outcome));
        var unknown = Socket(socket => socket with { BreakingForceN = null })(Input);
        Assert.Equal((CheckOutcome.Pass, CheckOutcome.Undetermined),
            (Of(unknown, "rope-entry").Outcome, Of(unknown, "rope-strength").Outcome));
        Assert.Null(Assess(unknown).Result.RemainingStrengthN);
        Assert.Empty(Codes(ropeless));
        Assert.Equal(["socket-breaking-force-missing"], Codes(unknown));
    }

    /// <summary>Whatever it was cast in before, zinc or another metal, is worth a note.</summary>
    [Theory]
    [InlineData(SocketMedium.Zinc)]
    [InlineData(SocketMedium.WhiteMetal)]
    public void Metal_before_resin_is_noted(SocketMedium medium) =>
        Assert.Equal(["socket-medium-changed"], Codes(Past(past => past with { LastMedium = medium })(Input)));

    /// <summary>Every indication is judged by itself.</summary>
    [Fact]
    public void Each_round_indication_is_named()
    {
        var input = Seen(seen =>
            seen with { Indications = [new(SocketPlace.Ears, IndicationKind.Rounded, .001),
            new(SocketPlace.Pin, IndicationKind.Rounded, null), new(SocketPlace.Pin, IndicationKind.Unknown, null)] })(Input);
        var findings = Assess(input).Findings;
        Assert.Equal(["indication-unclear /inspection/indications/2", "rounded-indication /inspection/indications/0",
            "rounded-indication /inspection/indications/1"],
            findings.Select(finding => $"{finding.Definition.Code} {finding.Pointer}"));
        Assert.Equal(.001, findings[1].Measured!.Value.Si);
        Assert.Equal(["/inspection/indications/2"], Of(input, "indications").Missing);
    }

    private const string Measured = "/socket/measured/";
    private const string Limit = "/limits/";

    private static CheckRow Of(ReuseInput input, string id) => Assess(input).Result.Checks.Single(check => check.Id == id);

    private static string[] Codes(ReuseInput input) => [.. Assess(input).Findings.Select(finding => finding.Definition.Code)];

    private static void Holds(ReuseResult result, string id, double stressMpa) =>
        Printed.Matches(stressMpa * 1e6, result.AsMeasured!.Parts.Single(part => part.Id == id).StressPa, 1e-9);
}
