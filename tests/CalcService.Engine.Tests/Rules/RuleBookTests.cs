using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Rules;

public sealed class RuleBookTests
{
    private static readonly PouringRules Pouring = Editions.Known.Find("2026-12")!.Pouring;
    private static readonly MatchingRules Matching = Editions.Known.Find("2026-12")!.Matching;
    private static readonly InspectionRules Inspection = Editions.Known.Find("2026-12")!.Inspection;
    private static readonly ProofRules Proof = Editions.Known.Find("2026-12")!.Proof;
    private static readonly CuringRules Curing = Editions.Known.Find("2026-12")!.Curing;
    private static readonly AuditRules Audits = Editions.Known.Find("2026-12")!.Audits;
    private static readonly ReuseRules Reuse = Editions.Known.Find("2026-12")!.Reuse;

    /// <summary>Each limit beside what its source says.</summary>
    public static TheoryData<string, double, double> Limits => new()
    {
        // ISO 8502-4 and ISO 12944-7, from memory: 3 K above the dew point.
        { "dew margin, K", 3, Si(Pouring.DewMargin) },
        // BS 7035:1989 §1, note 2: special precautions above 1960 N/mm².
        { "grade", 1960, Si(Pouring.HighestOrdinaryGrade) },
        // DIN 3092 and EN 13411-4 tradition, from memory: five diameters, 5 to 18 degrees.
        { "basket length, d", 5, Si(Pouring.BasketLengthInDiameters) },
        { "cone angle least, degrees", 5, Si(Pouring.ConeAngleLeast) * 180 / Math.PI },
        { "cone angle most, degrees", 18, Si(Pouring.ConeAngleMost) * 180 / Math.PI },
        // Common practice, no source.
        { "allowance", .10, Si(Pouring.Allowance) },
        // J. Appl. Polym. Sci. 102:1870: 40 to 60 kJ/mol, redox-cured polyester.
        { "activation energy low, J/mol", 40e3, Si(Pouring.AssumedActivationEnergy.Low) },
        { "activation energy expected, J/mol", 50e3, Si(Pouring.AssumedActivationEnergy.Expected) },
        { "activation energy high, J/mol", 60e3, Si(Pouring.AssumedActivationEnergy.High) },
        // US EPA worst case, from memory: mixing factor 0.1; 100 ft/min.
        { "mixing factor", 1 / .1, Si(Pouring.MixingFactor) },
        { "air speed, m/s", 100 * .3048 / 60, Si(Pouring.AirSpeed) },
        // ISO 17558 §4.5: at most 45° from the vertical, on both sides.
        { "broom angle, degrees", 2 * 45, Si(Pouring.BroomAngle) * 180 / Math.PI },
        // Common practice, no source.
        { "age of the sheet, months", 24, Si(Pouring.SheetAge) },
        { "vent up to, m", .016, Si(Pouring.VentUpTo) },
        { "readings hold, s", 3600, Si(Pouring.ReadingsValidFor) },
        // Decided here, no source: bounds far outside of what is made.
        { "least cone, degrees", 2, Si(Pouring.Fit.LeastCone) * 180 / Math.PI },
        { "shortest basket, rope diameters", 2, Si(Pouring.Fit.ShortestBasket) },
        { "least lay, rope diameters", 3, Si(Pouring.Fit.LeastLay) },
        { "most lay, rope diameters", 15, Si(Pouring.Fit.MostLay) },
        { "short basket, rope diameters", 4, Si(Pouring.Fit.ShortBasket) },
        { "widest small end, rope diameters", 3, Si(Pouring.Fit.WidestSmallEnd) },
        { "loose small end, rope diameters", 2, Si(Pouring.Fit.LooseSmallEnd) },
        { "certificate off its class", .40, Si(Pouring.Fit.StrengthSpread) },
        { "tilt that can be read, degrees", 1, Si(Pouring.Fit.ReadTilt) * 180 / Math.PI },
        { "most tilt, degrees", 5, Si(Pouring.Fit.MostTilt) * 180 / Math.PI },
        { "thinning", .05, Si(Pouring.Fit.Thinning) },
        // Our own bound; EN 12385-4, from memory, lets a new rope be 5 to 8 % thicker.
        { "thickening", .08, Si(Pouring.Fit.Thickening) },
        { "straight rope, rope diameters", 2, Si(Pouring.Fit.StraightRope) },
        { "broom dried for, h", 12, Si(Pouring.Fit.DriedFor) / 3600 },
        { "narrow broom, degrees", 20, Si(Pouring.Fit.NarrowBroom) * 180 / Math.PI },
        // 29 CFR 1910.1000 Table Z-2: ceiling 200 ppm, eight hours 100 ppm.
        { "styrene ceiling", 200e-6, Si(Law("US general industry").Ceiling!) },
        { "styrene eight hours", 100e-6, Si(Law("US general industry").TimeWeighted!) },
        // 29 CFR 1926.55 Appendix A, as listed by OSHA with CH_268200: 100 ppm, a ceiling. 29 CFR 1915.1000 Table Z: 100 ppm, a mean.
        { "styrene ceiling, construction", 100e-6, Si(Law("US construction").Ceiling!) },
        { "styrene eight hours, shipyards", 100e-6, Si(Law("US shipyards").TimeWeighted!) },
        // California's limits of 2012, as listed by OSHA with CH_268200: 50 ppm, 100 short term, ceiling 500.
        { "styrene eight hours, California", 50e-6, Si(Law("California").TimeWeighted!) },
        { "styrene short term, California", 100e-6, Si(Law("California").ShortTerm!) },
        { "styrene ceiling, California", 500e-6, Si(Law("California").Ceiling!) },
        // NIOSH Pocket Guide: short term 100 ppm, working day 50 ppm.
        { "styrene short term", 100e-6, Si(Pouring.Air[0].RecommendedShortTerm) },
        { "styrene working day", 50e-6, Si(Pouring.Air[0].RecommendedTimeWeighted) },
        // NIOSH Pocket Guide, styrene: flash point 31 °C.
        { "styrene flash point, degC", 31, Si(Pouring.Air[0].FlashPoint) - 273.15 },
        // C₈H₈ with the standard atomic weights 12.011 and 1.008.
        { "molar mass of styrene, g/mol", 104.15, Math.Round(8 * (12.011 + 1.008), 2) },
        { "molar mass of styrene in the rules, g/mol", 104.15, Pouring.Air[0].MolarMassGPerMol },
        // Yang and Lee, Polymer 29 (1988), from memory: a few per cent at gel.
        { "gel conversion", .05, Si(Curing.GelConversion) },
        // Marks of our own: 90 % stands for the sheet's full strength; two weeks ahead.
        { "full-strength conversion", .90, Si(Curing.FullStrengthConversion) },
        { "horizon, s", 14 * 86400, Si(Curing.Horizon) },
        // Common practice, no source.
        { "spread of lots", .10, Si(Curing.LotSpread) },
        { "error of an observed gel", .05, Si(Curing.ObservationSpread) },
        // NIST/SEMATECH 6.3.2: three sigma.
        { "out of family, sigma", 3, Si(Curing.OutOfFamily) },
        // Handbook range 5 to 10 for still air with radiation, from memory.
        { "delay worth saying, min", 15, Si(Curing.DelayWorthSaying) / 60 },
        { "film coefficient, W/(m2.K)", 8, Si(Curing.FilmCoefficient) },
        // NAVEDTRA 14081, seizing of wire rope: three times the diameter in inches, 1 to 1 1/2 diameters wide, 2 apart.
        { "seizings for each inch", 3, Si(Pouring.Seizing.CountPerInch) },
        { "seizing width least, d", 1, Si(Pouring.Seizing.WidthLeast) },
        { "seizing width most, d", 1.5, Si(Pouring.Seizing.WidthMost) },
        { "seizing spacing, d", 2, Si(Pouring.Seizing.Spacing) },
        // TM 5-3810-305-10, seizing of wire rope: 6 diameters apart.
        { "seizing spacing of the wider practice, d", 6, Si(Pouring.Seizing.SpacingWide) },
        // Common practice, no source.
        { "fewest seizings", 2, Si(Pouring.Seizing.CountLeast) },
    };

    /// <summary>The same for the match of rope and socket.</summary>
    public static TheoryData<string, double, double> MatchLimits => new()
    {
        // Derived: twice the working load is a proof load.
        { "design factor where no rule is known", 2, Si(Matching.FactorLeast) },
        // From memory of ASME B30.9, B30.5, EN 81-20 (three ropes), API RP 2SK (intact); 30 CFR 57.19021 for no length of rope.
        { "design factor of a sling", 5, Si(Duty(DutyUse.Sling).DesignFactor!) },
        { "design factor of a pendant", 3, Si(Duty(DutyUse.Pendant).DesignFactor!) },
        { "design factor of a hoist rope", 3.5, Si(Duty(DutyUse.HoistRope).DesignFactor!) },
        { "design factor in a mine", 7, Si(Duty(DutyUse.MineHoist).DesignFactor!) },
        { "design factor in a lift", 12, Si(Duty(DutyUse.Lift).DesignFactor!) },
        { "design factor of a mooring", 1.67, Si(Duty(DutyUse.Mooring).DesignFactor!) },
        // 29 CFR 1926.1414(e)(2): never below 3.5, else 5. 29 CFR 1926.1431(g)(3): five times, rotation resistant ten times.
        { "rotation resistant, never below", 3.5, Si(Matching.RotationResistantLeast) },
        { "rotation resistant", 5, Si(Matching.RotationResistant) },
        { "hanging persons", 5, Si(Matching.Persons) },
        { "hanging persons by rotation resistant rope", 10, Si(Matching.PersonsRotationResistant) },
        // Derived from the same clause, which names a platform's rigging alone.
        { "hanging persons elsewhere", 5, Si(Matching.PersonsElsewhere) },
        { "hanging persons elsewhere by rotation resistant rope", 10, Si(Matching.PersonsElsewhereRotationResistant) },
        // NAVEDTRA 14080, chapter 3: twice the vertical rated load.
        { "proof factor of a sling", 2, Si(Duty(DutyUse.Sling).ProofFactor!) },
        // EN 13411-4:2021: K_T = 1.0.
        { "efficiency", 1, Si(Matching.Efficiency) },
        // 30 CFR 56.19025, 57.19025, 75.1435, 77.1435, each (a): 80 percent of the nominal strength.
        { "attachment in a mine", .8, Si(Matching.MineAttachment) },
        // From memory of ASME A17.1 2.20.9.4: 4 3/4 diameters, 2 1/4 to 3 diameters, 3/32 in.
        { "taper of a lift, d", 4.75, Si(Matching.LiftTaperLength) },
        { "small end of a lift, mm over the rope", 2.38125, Si(Matching.LiftSmallEndExcess) * 1e3 },
        { "mouth of a lift, least, d", 2.25, Si(Matching.LiftMouthLeast) },
        { "mouth of a lift, most, d", 3, Si(Matching.LiftMouthMost) },
        // DIN 3092 and EN 13411-4 tradition, from memory: fifty outer wires.
        { "spiral strand, wires", 50, Si(Matching.SpiralLengthInWires) },
        // From memory: half of the breaking force.
        { "proof share", .5, Si(Matching.ProofShare) },
        // BS 7035:1989: -20 to +70 °C.
        { "coldest service, degC", -20, Si(Matching.ServiceLowest) - 273.15 },
        { "warmest service, degC", 70, Si(Matching.ServiceHighest) - 273.15 },
        // Common practice, no source.
        { "friction low", .1, Si(Matching.Friction.Low) },
        { "friction", .2, Si(Matching.Friction.Expected) },
        { "friction high", .3, Si(Matching.Friction.High) },
        { "wall ratio", 1.6, Si(Matching.WallRatio) },
        // (1 − ε)³ is 1 − 3·ε for small ε.
        { "shrinkage share", 1.0 / 3, Si(Matching.ShrinkageShare) },
        // Axisymmetric finite elements, CalculiX 2.20.
        { "radial stiffening", 1.5, Si(Matching.RadialStiffening) },
        { "lip factor", 1.4, Si(Matching.LipFactor) },
    };

    /// <summary>The same for used sockets.</summary>
    public static TheoryData<string, double, double> ReuseLimits => new()
    {
        // Common practice, no source.
        // From memory of ASME B30.26 (a tenth of a dimension) and of the tempering of socket steel.
        { "most wear that a limit may allow", .10, Si(Reuse.MostAllowed) },
        { "hottest removal that a limit may allow, degC", 600, Si(Reuse.HottestAllowed) - 273.15 },
        { "warm removal, degC", 200, Si(Reuse.RemovalWarm) - 273.15 },
        { "age of a search for cracks, months", 12, Si(Reuse.InspectionAge) },
        // Derived: forgings of carbon and low-alloy steel are tempered from about 400 °C (from memory of tempering tables).
        { "hot removal, degC", 400, Si(Reuse.RemovalHot) - 273.15 },
        // From memory of ASME BTH-1, category B.
        { "design factor of a used socket", 3, Si(Reuse.DesignFactor) },
        // Derived: below half of the drawing's metal nothing that its maker said of it holds.
        { "metal left", .5, Si(Reuse.LeastLeft) },
        // Common practice, no source.
        { "metal beyond the drawing", .05, Si(Reuse.FarOffDrawing) },
        // ISO 2768-1, linear sizes, class m, from memory: 0.1, 0.2, 0.3, 0.5, 0.8 and 1.2 mm.
        { "tolerance up to 6 mm", .1e-3, Si(Reuse.GeneralTolerance(.006)) },
        { "tolerance up to 30 mm", .2e-3, Si(Reuse.GeneralTolerance(.030)) },
        { "tolerance up to 120 mm", .3e-3, Si(Reuse.GeneralTolerance(.120)) },
        { "tolerance up to 400 mm", .5e-3, Si(Reuse.GeneralTolerance(.400)) },
        { "tolerance up to 1000 mm", .8e-3, Si(Reuse.GeneralTolerance(1.000)) },
        { "tolerance above 1000 mm", 1.2e-3, Si(Reuse.GeneralTolerance(3)) },
        // Common practice, no source: a filled polyester, and a rope of 20 mm in a bore of 23 mm, 184 of 415 mm².
        { "modulus of the compound, GPa", 6, Si(Reuse.Compound.Modulus) / 1e9 },
        { "Poisson's ratio of the compound", .25, Si(Reuse.Compound.Poisson) },
        { "volumetric shrinkage of the compound", .02, Si(Reuse.Compound.Shrinkage) },
        { "share of the wires", .44, Si(Reuse.WireShare) },
    };

    [Theory]
    [MemberData(nameof(ReuseLimits))]
    public void Limit_of_a_used_socket_is_the_one_of_its_source(string limit, double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= expected * 1e-12, $"{limit}: {actual} is not {expected}");

    /// <summary>The same for ends in service; conditions have no number, and a table of their own beside RuleRowTests.</summary>
    public static TheoryData<string, double, double> InspectionLimits => new()
    {
        // 29 CFR 1926.1413(a)(2)(ii)(A): 6 in a lay or 3 in a strand; 2 in 6 d or 4 in 30 d; more than 2 in a lay, more than 1 at an end.
        { "running, in a lay", 6, Wires("running-lay") },
        { "running, in a strand", 3, Wires("running-strand") },
        { "rotation resistant, in 6 d", 2, Wires("rotation-resistant-six-diameters") },
        { "rotation resistant, in 30 d", 4, Wires("rotation-resistant-thirty-diameters") },
        { "standing, in a lay", 2 + 1, Wires("standing-lay") },
        { "standing, at an end", 1 + 1, Wires("standing-end") },
        // 30 CFR 77.1437(a), 77.1434(b): more than one.
        { "mine, at the attachment", 1 + 1, Wires("mine-end") },
        { "mine, in the valleys", 1 + 1, Wires("mine-valley") },
        // US Navy Towing Manual, appendix B: six in a lay, three in a strand, one within one lay of a fitting.
        { "naval, in a lay", 6, Wires("naval-lay") },
        { "naval, in a strand", 3, Wires("naval-strand") },
        { "naval, at a fitting", 1, Wires("naval-fitting") },
        // 29 CFR 1926.1413: 5 %; 30 CFR 77.1434(g), (h): 6 % and 10 %; 77.1436(b): three turns.
        { "loss of nominal diameter", .05, Si(Inspection.NominalDiameterLoss) },
        { "loss of baseline diameter", .06, Si(Inspection.BaselineDiameterLoss) },
        { "loss of strength", .10, Si(Inspection.StrengthLoss) },
        { "turns on the drum", 3, Si(Inspection.DrumTurns) },
        // WAC 296-870-30025(1): 24 months. TM 5-3810-288-12, NAVFAC MO-118: 3 ft of 0.3048 m.
        { "resocketing, months", 24, Si(Inspection.ResocketAfter) },
        { "cut beyond the damage, m", 3 * .3048, Si(Inspection.CutBeyond) },
        // EN 13411-4 Annex E, from memory: 115 °C.
        { "warmest service of resin, degC", 115, Si(Inspection.RememberedHighest) - 273.15 },
        // DOE-STD-1090-96 11.3.4.2, 11.3.5.2, 15.4.7: -5 %, +0 %.
        { "test load below", .05, Si(Proof.Under) },
        { "test load above", 0, Si(Proof.Over) },
        // Common practice, no source: quarter steps; half of the shrinkage either way, which for 0.4 % is the band .002 to .006.
        { "first step", .25, Si(Proof.Steps[0]) },
        { "second step", .5, Si(Proof.Steps[1]) },
        { "third step", .75, Si(Proof.Steps[2]) },
        { "last step", 1, Si(Proof.Steps[3]) },
        { "spread of shrinkage", .5, Si(Proof.ShrinkageSpread) },
    };

    [Theory]
    [MemberData(nameof(InspectionLimits))]
    public void Limit_of_an_inspection_is_the_one_of_its_source(string limit, double expected, double actual) =>
        Limit_is_the_one_of_its_source(limit, expected, actual);

    /// <summary>The same for records.</summary>
    public static TheoryData<string, double, double> AuditLimits => new()
    {
        // NIST/SEMATECH 6.3.2.2 and 6.3.2.4: three sigma, λ 0.3.
        { "control limit, sigma", 3, Si(Audits.ControlLimit) },
        { "weight of the newest value", .3, Si(Audits.EwmaWeight) },
        // Common practice, no source.
        // Derived.
        { "recorded volume that tells of no cone", .5, Si(Audits.VolumeFar) },
        { "spread of a recorded volume", .10, Si(Audits.VolumeSpread) },
        { "coverage", .95, Si(Audits.Coverage) },
        { "confidence", .95, Si(Audits.Confidence) },
        { "records of a chart", 20, Si(Audits.FirmFrom) },
    };

    [Theory]
    [MemberData(nameof(AuditLimits))]
    public void Limit_of_an_audit_is_the_one_of_its_source(string limit, double expected, double actual) =>
        Limit_is_the_one_of_its_source(limit, expected, actual);

    [Theory]
    [MemberData(nameof(MatchLimits))]
    public void Limit_of_a_match_is_the_one_of_its_source(string limit, double expected, double actual) =>
        Limit_is_the_one_of_its_source(limit, expected, actual);

    [Fact]
    public void Duty_has_one_rule_and_none_where_only_the_request_can_say()
    {
        Assert.Distinct(Matching.Duties.Select(duty => duty.Use));
        Assert.Equal([DutyUse.Unknown, DutyUse.Other], Enum.GetValues<DutyUse>().Except(Matching.Duties.Select(duty => duty.Use)));
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void Limit_is_the_one_of_its_source(string limit, double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= Math.Abs(expected) * 1e-12, $"{limit}: {actual} is not {expected}");

    [Fact]
    public void Edition_lists_every_limit_that_was_compared() =>
        Assert.Equal(54 + MatchLimits.Count + ReuseLimits.Count + InspectionLimits.Count + Inspection.Conditions.Count + AuditLimits.Count,
            Editions.Known.Current.Limits.Distinct().Count());

    [Fact]
    public void Limit_names_its_source_in_words() =>
        Assert.All(Editions.Known.All.SelectMany(book => book.Limits), limit =>
        {
            Assert.False(string.IsNullOrWhiteSpace(limit.Text));
            Assert.False(string.IsNullOrWhiteSpace(limit.Source.Document));
            Assert.True(limit.Source.Basis is not (Basis.Published or Basis.Law) || limit.Source.Clause.Length > 0, limit.Text);
        });

    [Fact]
    public void Editions_are_found_by_name_newest_first()
    {
        Assert.Same(Editions.Known.All[0], Editions.Known.Current);
        Assert.Equal(Editions.Known.All.Select(book => book.Edition).OrderDescending(StringComparer.Ordinal),
            Editions.Known.All.Select(book => book.Edition));
        Assert.All(Editions.Known.All, book => Assert.Same(book, Editions.Known.Find(book.Edition)));
        Assert.Null(Editions.Known.Find("2026-1"));
    }

    [Fact]
    public void Edition_2026_12_is_the_data_that_was_compared() =>
        // A guard against a silent change of dated data, no check of its truth: the rows above are that.
        Assert.True(Editions.Known.Find("2026-12")!.Digest() == "sha256:df4325385abd12002ea73c941c52358939029d97cbcb37f0a537209d6399d5a4",
            Editions.Known.Find("2026-12")!.Digest());

    [Fact]
    public void Digest_shows_a_change_of_any_limit()
    {
        var book = Editions.Known.Current;
        Measure More(Rule rule) => ((Measure?)rule)!.Value with { Si = 1.001 * Si(rule) };
        RuleLimit Changed(RuleLimit limit) => new(limit.RuleSet, limit.Text, More(limit), limit.Source);
        RuleNumber Other(RuleNumber number) => number with { Value = More(number) };
        var rules = book.Pouring;
        PouringRules[] changed =
        [
            rules with { DewMargin = Changed(rules.DewMargin) },
            rules with { HighestOrdinaryGrade = Changed(rules.HighestOrdinaryGrade) },
            rules with { AssumedActivationEnergy =
            rules.AssumedActivationEnergy with { High = Other(rules.AssumedActivationEnergy.High) } },
            rules with { Air = [rules.Air[0] with { RecommendedTimeWeighted = Changed(rules.Air[0].RecommendedTimeWeighted) }] },
            rules with { Allowance = rules.Allowance with { Source = new("another document", "", Basis.Published) } },
            rules with { Air = [rules.Air[0] with { MolarMassGPerMol = 104.2 }] },
            rules with { Seizing = rules.Seizing with { Spacing = Other(rules.Seizing.Spacing) } },
            rules with { Air = [rules.Air[0] with { Substance = "other" }] },
        ];
        var match = book.Matching;
        MatchingRules[] changedMatch =
        [
            match with { LipFactor = Other(match.LipFactor) },
            match with { Friction = match.Friction with { High = Other(match.Friction.High) } },
            match with { Duties = [match.Duties[0] with { ProofFactor = Other(match.Duties[0].ProofFactor!) }, .. match.Duties.Skip(1)] },
        ];
        Assert.NotEqual(book.Digest(),
            (book with { Reuse = book.Reuse with { DesignFactor = Changed(book.Reuse.DesignFactor) } }).Digest());
        Assert.All(changedMatch, one => Assert.NotEqual(book.Digest(), (book with { Matching = one }).Digest()));
        var curing = book.Curing;
        Assert.All(new[] { curing with { GelConversion = Other(curing.GelConversion) },
            curing with { OutOfFamily = Other(curing.OutOfFamily) } },
            one => Assert.NotEqual(book.Digest(), (book with { Curing = one }).Digest()));
        Assert.NotEqual(book.Digest(),
            (book with { Inspection = book.Inspection with { CutBeyond = Other(book.Inspection.CutBeyond) } }).Digest());
        Assert.NotEqual(book.Digest(),
            (book with { Audits = book.Audits with { VolumeSpread = Changed(book.Audits.VolumeSpread) } }).Digest());
        Assert.NotEqual(book.Digest(), (book with { Proof = book.Proof with { Under = Changed(book.Proof.Under) } }).Digest());
        Assert.All(changed, one => Assert.NotEqual(book.Digest(), (book with { Pouring = one }).Digest()));
    }

    private static AirLaw Law(string name) => Pouring.Air[0].Laws.Single(law => law.Name == name);

    private static double Wires(string row) => Si(Inspection.BrokenWires.Single(rule => rule.Id == "broken-wires-" + row).Limit);

    private static DutyRule Duty(DutyUse use) => Matching.Duties.Single(duty => duty.Use == use);

    private static double Si(Rule rule) => ((Measure?)rule)!.Value.Si;
}
