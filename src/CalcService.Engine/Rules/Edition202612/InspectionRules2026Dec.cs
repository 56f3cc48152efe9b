using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of ends in service in the edition of November 2026.</summary>
public static class InspectionRules2026Dec
{
    private const string Crane = InspectionRules.ConstructionCrane;
    private const string Mine = MatchingRules.MineHoist;
    private const string Naval = InspectionRules.Naval;
    private const string CraneLaw = "29 CFR 1926.1413";
    private const string MineRopes = "30 CFR 56.19024, 57.19024, 75.1434, 77.1434";
    private const string MineEnds = "30 CFR 56.19027, 57.19027, 75.1437, 77.1437";

    private static readonly RopeFunction[] Every =
        [RopeFunction.Running, RopeFunction.Standing, RopeFunction.Pendant, RopeFunction.Sling, RopeFunction.RotationResistant];

    /// <summary>A sling doesn't run: it is held against the rows of standing ropes, which are the stricter ones at its ends.</summary>
    private static readonly RopeFunction[] Standing = [RopeFunction.Standing, RopeFunction.Pendant, RopeFunction.Sling];

    private static readonly RopeFunction[] Running = [RopeFunction.Running, RopeFunction.RotationResistant];

    private static readonly RopeFunction[] RotationResistant = [RopeFunction.RotationResistant];

    private static readonly Source Moved = Own("an end that lets go of its rope is none");

    private static readonly Source Towing = new("US Navy Towing Manual, appendix B", "removal of wire rope, as summarized in public",
        Basis.Published);

    public static InspectionRules Rules { get; } = new()
    {
        BrokenWires =
        [
            Wires("running-lay", WireWindow.Lay, Running, Crane,
                "broken wires in one lay of a running rope", 6, Law(CraneLaw, "(a)(2)(ii)(A)(1)")),
            Wires("running-strand", WireWindow.Strand, Running, Crane,
                "broken wires in one strand in one lay of a running rope", 3, Law(CraneLaw, "(a)(2)(ii)(A)(1)")),
            Wires("rotation-resistant-six-diameters", WireWindow.SixDiameters, RotationResistant, Crane,
                "broken wires in six diameters of a rotation resistant rope", 2, Law(CraneLaw, "(a)(2)(ii)(A)(2)")),
            Wires("rotation-resistant-thirty-diameters", WireWindow.ThirtyDiameters, RotationResistant, Crane,
                "broken wires in thirty diameters of a rotation resistant rope", 4, Law(CraneLaw, "(a)(2)(ii)(A)(2)")),
            Wires("standing-lay", WireWindow.LayBeyondEnds, Standing, Crane,
                "broken wires in one lay of a standing rope or pendant, beyond its end connections", 3, Law(CraneLaw, "(a)(2)(ii)(A)(3)")),
            Wires("standing-end", WireWindow.EndLay, Standing, Crane,
                "broken wires in the lay at an end connection of a standing rope or pendant", 2, Law(CraneLaw, "(a)(2)(ii)(A)(3)")),
            Wires("mine-end", WireWindow.EndLay, Every, Mine,
                "broken wires at an attachment, counted over the lay at it", 2, Law(MineEnds, "(a)")),
            Wires("mine-valley", WireWindow.Valley, Every, Mine,
                "broken wires in the valleys of a regular lay rope in one lay, unless cut off", 2, Law(MineRopes, "(b)")),
            Wires("naval-lay", WireWindow.Lay, Every, Naval, "broken wires in any one lay of a towing rope", 6, Towing),
            Wires("naval-strand", WireWindow.Strand, Every, Naval, "broken wires in one strand in one lay of a towing rope", 3, Towing),
            Wires("naval-fitting", WireWindow.EndLay, Every, Naval, "broken wires within one lay of a fitting", 1, Towing),
        ],
        Conditions =
        [
            .. Determined(EndCondition.ImproperlyApplied, "improperly applied end connections", "(a)(2)(i)(D), (a)(4)(i)"),
            .. Determined(EndCondition.Corroded, "significantly corroded end connections", "(a)(2)(i)(E), (a)(4)(i)"),
            .. Determined(EndCondition.Cracked, "cracked end connections", "(a)(2)(i)(E), (a)(4)(i)"),
            .. Determined(EndCondition.Bent, "bent end connections", "(a)(2)(i)(E), (a)(4)(i)"),
            .. Determined(EndCondition.Worn, "worn end connections", "(a)(2)(i)(E), (a)(4)(i)"),
            new(EndCondition.ImproperlyApplied,
                new(Mine, "an attachment that is improperly installed is cut off and made again", null, Law(MineEnds, "(b)"))),
            new(EndCondition.Slipped, new(Mine, "an attachment that slipped is cut off and made again", null, Law(MineEnds, "(c)"))),
            new(EndCondition.Corroded,
                new(Mine, "an attachment that corrosion deteriorates is cut off and made again", null, Law(MineEnds, "(d)"))),
            new(EndCondition.Slipped, new("a cone or wire that goes on moving is taken out", null, Moved)),
        ],
        NominalDiameterLoss = new(Crane, "loss of diameter from the nominal one, at most",
            Measure.Fraction(.05), Law(CraneLaw, "(a)(2)(ii)(B)")),
        BaselineDiameterLoss = new(Mine, "loss of diameter from the baseline, at most", Measure.Fraction(.06), Law(MineRopes, "(g)")),
        StrengthLoss = new(Mine, "loss of rope strength by nondestructive test, at most", Measure.Fraction(.10), Law(MineRopes, "(h)")),
        DrumTurns = new(Mine, "full turns left on the drum at the longest working length, at least",
            Measure.Count(3), Law("30 CFR 56.19026, 57.19026, 75.1436, 77.1436", "(b)")),
        ResocketAfter = new(InspectionRules.Platform,
            "age at which ends of a powered platform's hoisting ropes, other than those at a drum, are socketed again, at the latest",
            Measure.Months(24), Law("WAC", "296-870-30025(1)")),
        CutBeyond = new("a rope is cut at least this far beyond its broken wires, 3 ft", Measure.Length(.9144),
            new("TM 5-3810-288-12; NAVFAC MO-118", "cable conditions, broken wires at the dead end; 16.3.6", Basis.Published)),
        RememberedHighest = new("warmest service of resin where no sheet says otherwise",
            Measure.Temperature(115 + 273.15),
            new("EN 13411-4:2021, annex E", "", Basis.FromMemory)),
    };

    private static BrokenWireRule Wires(string id, WireWindow window, RopeFunction[] functions, string ruleSet, string text, int from,
        Source source) =>
        new("broken-wires-" + id, window, functions, new(ruleSet, text + ", rejected from this number on", Measure.Count(from), source));

    /// <summary>
    /// A condition that a crane's law has a competent person decide on at once. Until somebody has, the end carries nothing: that part is
    /// our own, for the crane and for every other end.
    /// </summary>
    private static EndConditionRule[] Determined(EndCondition condition, string what, string clause) =>
    [
        new(condition, new(Crane,
            what + ": the law has a competent person decide at once whether they are a hazard; "
                + "that they carry nothing until then is our own rule", null,
            new(CraneLaw, clause, Basis.Derived))),
        new(condition, new(what + " carry nothing until a competent person has decided", null,
            Own("what has lost section or shape has lost strength that nobody knows"))),
    ];

    private static Source Own(string why) => new(why, "/docs/service-inspections", Basis.Derived);

    private static Source Law(string document, string clause) => new(document, clause, Basis.Law);
}
