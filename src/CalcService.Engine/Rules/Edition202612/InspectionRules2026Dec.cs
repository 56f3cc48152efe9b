using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of ends in service in the edition of November 2026.</summary>
public static class InspectionRules2026Dec
{
    private const string Crane = InspectionRules.ConstructionCrane;
    private const string Mine = MatchingRules.MineHoist;
    private const string CraneLaw = "29 CFR 1926.1413";
    private const string CraneEnds = "(a)(2)(i), end connections";
    private const string MineLaw = "30 CFR 77.1437";

    private static readonly RopeFunction[] Every =
        [RopeFunction.Running, RopeFunction.Standing, RopeFunction.Pendant, RopeFunction.Sling, RopeFunction.RotationResistant];

    /// <summary>A sling doesn't run: it is held against the rows of standing ropes, which are the stricter ones at its ends.</summary>
    private static readonly RopeFunction[] Standing = [RopeFunction.Standing, RopeFunction.Pendant, RopeFunction.Sling];

    private static readonly RopeFunction[] Running = [RopeFunction.Running, RopeFunction.RotationResistant];

    private static readonly RopeFunction[] RotationResistant = [RopeFunction.RotationResistant];

    private static readonly Source Moved = new("an end that lets go of its rope is none", "docs/service-inspections.md", Basis.Derived);

    public static InspectionRules Rules { get; } = new()
    {
        BrokenWires =
        [
            Wires("running-lay", WireWindow.Lay, Running, Crane, "broken wires in one lay of a running rope", 6, Law(CraneLaw, "(a)(2)(ii)(A)(1)")),
            Wires("running-strand", WireWindow.Strand, Running, Crane, "broken wires in one strand in one lay of a running rope", 3, Law(CraneLaw, "(a)(2)(ii)(A)(1)")),
            Wires("rotation-resistant-six-diameters", WireWindow.SixDiameters, RotationResistant, Crane, "broken wires in six diameters of a rotation resistant rope", 2, Law(CraneLaw, "(a)(2)(ii)(A)(2)")),
            Wires("rotation-resistant-thirty-diameters", WireWindow.ThirtyDiameters, RotationResistant, Crane, "broken wires in thirty diameters of a rotation resistant rope", 4, Law(CraneLaw, "(a)(2)(ii)(A)(2)")),
            Wires("standing-lay", WireWindow.LayBeyondEnds, Standing, Crane, "broken wires in one lay of a standing rope or pendant, beyond its end connections", 3, Law(CraneLaw, "(a)(2)(ii)(A)(3)")),
            Wires("standing-end", WireWindow.End, Standing, Crane, "broken wires at an end connection of a standing rope or pendant", 2, Law(CraneLaw, "(a)(2)(ii)(A)(3)")),
            Wires("mine-end", WireWindow.End, Every, Mine, "broken wires at an attachment", 2, Law(MineLaw, "(a)")),
            Wires("mine-valley", WireWindow.Valley, Every, Mine, "broken wires in the valleys of a regular lay rope in one lay", 2, Law("30 CFR 77.1434", "(b)")),
            Wires("naval-fitting", WireWindow.FittingLay, Every, InspectionRules.Naval, "broken wires within one lay of a fitting", 1,
                new("US Navy, Naval Ships' Technical Manual, chapter 613", "inspection of wire rope: broken wires at a fitting", Basis.Published)),
        ],
        Conditions =
        [
            new(EndCondition.ImproperlyApplied, Limit(Crane, "improperly applied end connections are taken out", null, Law(CraneLaw, CraneEnds))),
            new(EndCondition.Corroded, Limit(Crane, "corroded end connections are taken out", null, Law(CraneLaw, CraneEnds))),
            new(EndCondition.Cracked, Limit(Crane, "cracked end connections are taken out", null, Law(CraneLaw, CraneEnds))),
            new(EndCondition.Bent, Limit(Crane, "bent end connections are taken out", null, Law(CraneLaw, CraneEnds))),
            new(EndCondition.Worn, Limit(Crane, "worn end connections are taken out", null, Law(CraneLaw, CraneEnds))),
            new(EndCondition.ImproperlyApplied, Limit(Mine, "an attachment that is improperly installed is cut off and made again", null, Law(MineLaw, "(b)"))),
            new(EndCondition.Slipped, Limit(Mine, "an attachment that slipped is cut off and made again", null, Law(MineLaw, "(c)"))),
            new(EndCondition.Corroded, Limit(Mine, "an attachment that corrosion deteriorates is cut off and made again", null, Law(MineLaw, "(d)"))),
            new(EndCondition.Cracked, Limit(PouringRules.General, "a cracked socket carries nothing", null,
                new("a crack grows under load", "docs/service-inspections.md", Basis.Derived))),
            new(EndCondition.Slipped, Limit(PouringRules.General, "a cone or wire that goes on moving is taken out", null, Moved)),
        ],
        NominalDiameterLoss = Limit(Crane, "loss of diameter from the nominal one, at most", Measure.Fraction(.05), Law(CraneLaw, "(a)(2)(ii)(B)")),
        BaselineDiameterLoss = Limit(Mine, "loss of diameter from the baseline, at most", Measure.Fraction(.06), Law("30 CFR 77.1434", "(g)")),
        StrengthLoss = Limit(Mine, "loss of rope strength by nondestructive test, at most", Measure.Fraction(.10), Law("30 CFR 77.1434", "(h)")),
        DrumTurns = Limit(Mine, "full turns left on the drum at the longest working length, at least", Measure.Count(3), Law("30 CFR 77.1436", "(b)")),
        ResocketAfter = Limit(InspectionRules.Platform, "ends are socketed again within", Measure.Months(24), Law("WAC", "296-870-30025")),
        CutBeyond = Limit(PouringRules.General, "a rope is cut this far beyond the damage", Measure.Length(.91),
            new("TM 5-3810-288-12", "re-termination", Basis.Published)),
        RememberedHighest = Limit(PouringRules.General, "warmest service of resin where no sheet says otherwise", Measure.Temperature(115 + 273.15),
            new("EN 13411-4, Annex E", "", Basis.FromMemory)),
    };

    private static BrokenWireRule Wires(string id, WireWindow window, RopeFunction[] functions, string ruleSet, string text, int from, Source source) =>
        new("broken-wires-" + id, window, functions, Limit(ruleSet, text + ", rejected from this number on", Measure.Count(from), source));

    private static Source Law(string document, string clause) => new(document, clause, Basis.Law);

    private static RuleLimit Limit(string ruleSet, string text, Measure? value, Source source) => new(ruleSet, text, value, source);
}
