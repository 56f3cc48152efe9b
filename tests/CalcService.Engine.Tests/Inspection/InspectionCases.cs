using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CalcService.Engine.Tests.Findings;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>An end with one thing wrong, and the finding that has to say so.</summary>
/// <param name="Code">The finding.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Pointer">The member it points to.</param>
/// <param name="Open">Every check that isn't passed: with its weight where it fails; elsewhere where another set's limit is exceeded, sheet
/// where a sheet would tell; else open.</param>
/// <param name="Change">What is wrong with the end.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record InspectionCase(
    string Code, Severity Severity, string Pointer, string Open, Func<InspectionInput, InspectionInput> Change,
    params IReadOnlyList<string> Besides) : IFindingCase
{
    public Outcome<InspectionResult> Inspect() => GoodInspection.Inspect(Change(GoodInspection.Input));
}

/// <summary>At least one end for each finding and severity.</summary>
public static class InspectionCases
{
    private const string Wires = "/inspection/brokenWires";
    private const string Cut = "cut-beyond-damage";
    private const string Left = "rope-left-unknown";
    private const string Naval = InspectionRules.Naval;
    private const string Elsewhere = "limit-of-another-rule-set";

    public static IReadOnlyList<InspectionCase> All { get; } = [.. Broken, .. Ends, .. Sizes, .. History, .. Rest];

    private static IEnumerable<InspectionCase> Broken =>
    [
        new("rule-set-missing", Severity.Unknown, "/ruleSet", "", input => input with { RuleSet = null }),
        new("not-looked-at", Severity.Unknown, Wires, "broken-wires-running-lay open, broken-wires-running-strand open, broken-wires-mine-end open, broken-wires-naval-fitting open, broken-wires-mine-valley open", input => input with { BrokenWires = null }),
        new("broken-wires-reject", Severity.Stop, Wires, "broken-wires-running-lay Stop", At(6, WirePlace.Lay, 5, 2), Cut, Left),
        new("broken-wires-not-placed", Severity.Unknown, Wires + "/0/inOneStrand", "broken-wires-running-strand open",
        At(3, WirePlace.Lay, 5, null)),
        new("broken-wires-not-placed", Severity.Unknown, Wires + "/0/fromMouth", "broken-wires-naval-fitting open",
        At(1, WirePlace.Lay, null, 1)),
        new("broken-wires-not-placed", Severity.Unknown, "/rope/function", "broken-wires-rotation-resistant-six-diameters open, broken-wires-rotation-resistant-thirty-diameters open, broken-wires-standing-lay open", input => Rope(r => r with { Function = RopeFunction.Unknown })(At(4, WirePlace.Lay, 5, 2)(input))),
        // Two in six diameters reject a rotation resistant rope, and nobody can tell that this is none.
        new("broken-wires-not-placed", Severity.Unknown, "/rope/construction", "broken-wires-rotation-resistant-six-diameters open",
            input => Rope(r => r with { Construction = "nonrotating" })(At(2, WirePlace.Lay, 5, 1)(input))),
        new(Elsewhere, Severity.Unknown, Wires, "broken-wires-naval-fitting elsewhere", At(1, WirePlace.Mouth, null, 1)),
        new(Elsewhere, Severity.Unknown, Wires, "broken-wires-mine-end elsewhere, broken-wires-naval-fitting elsewhere",
        At(5, WirePlace.Mouth, null, 2)),
        new(Elsewhere, Severity.Unknown, Wires, "broken-wires-running-lay elsewhere, broken-wires-naval-lay elsewhere",
        input => At(200, WirePlace.Lay, 5, 2)(GoodInspection.Under(MatchingRules.MineHoist))),
        new(Elsewhere, Severity.Unknown, Wires, "broken-wires-running-lay elsewhere, broken-wires-naval-lay elsewhere",
        input => At(200, WirePlace.Lay, 5, 2)(GoodInspection.Under(InspectionRules.Platform))),
        new("core-wires-broken", Severity.Caution, Wires, "", At(1, WirePlace.Core, 5, 1)),
    ];

    private static IEnumerable<InspectionCase> Ends =>
    [
        new("end-cracked", Severity.Stop, "/inspection/cracks", "end-cracked Stop", input => input with { Cracks = true }, Cut, Left),
        new("end-corroded", Severity.Stop, "/inspection/corrosion", "end-corroded Stop", input => input with { Corrosion = Degree.Heavy },
        Cut, Left),
        new("end-corroded", Severity.Stop, "/inspection/corrosion", "end-corroded Stop",
        input => input with { RuleSet = Naval, Corrosion = Degree.Heavy }, Cut, Left),
        new("end-corroded-on-the-surface", Severity.Caution, "/inspection/corrosion", "", input => input with { Corrosion = Degree.Light }),
        new("end-worn", Severity.Stop, "/inspection/wear", "end-worn Stop", input => input with { Wear = Degree.Heavy }, Cut, Left),
        new("end-worn-lightly", Severity.Caution, "/inspection/wear", "", input => input with { Wear = Degree.Light }),
        new("end-bent", Severity.Stop, "/inspection/bendAtMouth", "end-bent Stop", input => input with { BendAtMouth = true }, Cut, Left),
        new("end-bent", Severity.Stop, "/inspection/bendAtMouth", "end-bent Stop",
        input => input with { RuleSet = Naval, BendAtMouth = true }, Cut, Left),
        new("end-improperly-applied", Severity.Stop, "/inspection/improperlyApplied", "end-improperly-applied Stop",
        input => input with { ImproperlyApplied = true }, Cut, Left),
        new("end-improperly-applied", Severity.Stop, "/inspection/improperlyApplied", "end-improperly-applied Stop",
        input => input with { RuleSet = Naval, ImproperlyApplied = true }, Cut, Left),
        new("cone-moved", Severity.Stop, "/inspection/coneMovement", "end-slipped Stop", input => input with { ConeMovement = true }, Cut,
        Left),
        new("not-looked-at", Severity.Unknown, "/inspection/cracks", "end-cracked open", input => input with { Cracks = null }),
        new("not-looked-at", Severity.Unknown, "/inspection/rustBleed", "", input => input with { RustBleed = null }),
        new("rust-bleeds", Severity.Caution, "/inspection/rustBleed", "", input => input with { RustBleed = true }),
        new("lubricant-poor", Severity.Caution, "/inspection/lubricant", "", input => input with { Lubricant = LubricantState.Dry }),
        new("lubricant-poor", Severity.Caution, "/inspection/lubricant", "", input => input with { Lubricant = LubricantState.Unknown }),
    ];

    private static IEnumerable<InspectionCase> Sizes =>
    [
        new("diameter-reduced", Severity.Stop, "/rope/measuredDiameter", "diameter-nominal Stop",
            Rope(r => r with { MeasuredDiameterM = .0189 })),
        new(Elsewhere, Severity.Unknown, "/rope/measuredDiameter", "diameter-nominal elsewhere",
        input => Rope(r => r with { MeasuredDiameterM = .0189 })(input with { RuleSet = Naval })),
        new("rope-thick", Severity.Unknown, "/rope/measuredDiameter", "", Rope(r => r with { MeasuredDiameterM = .0217 })),
        new("diameter-implausible", Severity.Unknown, "/inspection/baselineDiameter", "",
        Mine(input => input with { BaselineDiameterM = .0102, Rope = input.Rope with { MeasuredDiameterM = .0101 } })),
        new("diameter-not-measured", Severity.Unknown, "/rope/measuredDiameter", "diameter-nominal open",
        Rope(r => r with { MeasuredDiameterM = null })),
        new("diameter-not-measured", Severity.Unknown, "/inspection/baselineDiameter", "diameter-baseline open",
        Mine(input => input with { BaselineDiameterM = null })),
        new("strength-lost", Severity.Stop, "/inspection/strengthLoss", "strength Stop", Mine(input => input with { StrengthLoss = .11 })),
        new(Elsewhere, Severity.Unknown, "/inspection/strengthLoss", "strength elsewhere", input => input with { StrengthLoss = .11 }),
    ];

    private static IEnumerable<InspectionCase> History =>
    [
        new("compound-demonstration", Severity.Caution, "/compound", "",
            input => input with { Compound = input.Compound! with { Demonstration = true } }),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/service", "",
        input => input with { Compound = input.Compound! with { Service = null } }),
        new("compound-not-known", Severity.Caution, "/compound", "", input => input with { Compound = null, Chemicals = [] }),
        new("highest-temperature-missing", Severity.Unknown, "/inspection/highestTemperature", "heat open",
        input => input with { HighestTemperatureK = null }),
        new("overheated", Severity.Stop, "/inspection/highestTemperature", "heat Stop",
        input => input with { HighestTemperatureK = 60.1 + GoodInspection.Zero }, Cut, Left),
        new("perhaps-overheated", Severity.Unknown, "/inspection/highestTemperature", "heat sheet",
            input => input with { Compound = null, Chemicals = [], HighestTemperatureK = 115.1 + GoodInspection.Zero },
            "compound-not-known"),
        new("chemicals-not-told", Severity.Caution, "/inspection/chemicals", "", input => input with { Chemicals = null }),
        new("met-unlisted-chemical", Severity.Unknown, "/inspection/chemicals/1", "",
        input => input with { Chemicals = ["sea water", "brine"] }),
        new("met-limited-chemical", Severity.Caution, "/inspection/chemicals/0", "", input => input with { Chemicals = ["Diesel"] }),
        new("met-attacking-chemical", Severity.Stop, "/inspection/chemicals/0", "", input => input with { Chemicals = ["acetone"] }, Cut,
        Left),
        new("socketing-date-missing", Severity.Unknown, "/inspection/socketedOn", "resocketing open",
        input => input with { RuleSet = InspectionRules.Platform, SocketedOn = null }),
        new("resocketing-overdue", Severity.Stop, "/inspection/socketedOn", "resocketing Stop",
        input => input with { RuleSet = InspectionRules.Platform, SocketedOn = new(2024, 3, 11) }, Cut, Left),
        new("mine-evidence-missing", Severity.Unknown, "/attachment/efficiency", "attachment open",
        Mine(input => input with { Attachment = new(null, true) })),
        new("mine-evidence-missing", Severity.Unknown, "/attachment/resinByDesign", "attachment open",
        Mine(input => input with { Attachment = new(.8, null) })),
        new("mine-medium-not-by-design", Severity.Stop, "/attachment/resinByDesign", "attachment Stop",
        Mine(input => input with { Attachment = new(.8, false) }), Cut),
        new("mine-medium-not-by-design", Severity.Unknown, "/attachment/resinByDesign", "attachment elsewhere",
        input => input with { Attachment = new(null, false) }),
        new(Elsewhere, Severity.Unknown, "/attachment/efficiency", "attachment elsewhere",
        input => input with { Attachment = new(.1, null) }),
        new("mine-attachment-weak", Severity.Stop, "/attachment/efficiency", "attachment Stop",
        Mine(input => input with { Attachment = new(.79, true) }), Cut),
    ];

    private static IEnumerable<InspectionCase> Rest =>
    [
        new(Cut, Severity.Caution, Wires, "broken-wires-running-lay Stop", At(6, WirePlace.Lay, 5, 2), "broken-wires-reject", Left),
        new(Left, Severity.Caution, "/inspection/lengthLeft", "broken-wires-running-lay Stop", At(6, WirePlace.Lay, 5, 2),
        "broken-wires-reject", Cut),
        new("drum-turns-few", Severity.Stop, "/inspection/drumTurnsLeft", "drum-turns Stop",
        Mine(input => input with { DrumTurnsLeft = 2.9 })),
        new(Elsewhere, Severity.Unknown, "/inspection/drumTurnsLeft", "drum-turns elsewhere", input => input with { DrumTurnsLeft = 2.9 }),
        new("drum-turns-missing", Severity.Unknown, "/inspection/drumTurnsLeft", "drum-turns open",
        Mine(input => input with { DrumTurnsLeft = null })),
        new("drum-turns-missing", Severity.Unknown, "/inspection/drumTurnsLeft", "drum-turns open",
        input => input with { RuleSet = "general", IsAtDrum = true, DrumTurnsLeft = null }),
        new("drum-turns-missing", Severity.Unknown, "/inspection/drumDiameter", "broken-wires-running-lay Stop, drum-turns open",
        input => At(6, WirePlace.Lay, 5, 2)(input with { DrumTurnsLeft = 9 }), "broken-wires-reject", Cut),
        new("rope-left-short", Severity.Stop, "/inspection/lengthLeft", "broken-wires-running-lay Stop",
        input => At(6, WirePlace.Lay, 5, 2)(input with { LengthLeftM = 5.9 }), "broken-wires-reject", Cut),
    ];

    private static Func<InspectionInput, InspectionInput> At(int count, WirePlace place, double? fromMouthM, int? inOneStrand) =>
        input => input with { BrokenWires = [new(count, place, fromMouthM, inOneStrand)] };

    private static Func<InspectionInput, InspectionInput> Rope(Func<Rope, Rope> change) => input =>
        input with { Rope = change(input.Rope) };

    private static Func<InspectionInput, InspectionInput> Mine(Func<InspectionInput, InspectionInput> change) => _ =>
        change(GoodInspection.Under(MatchingRules.MineHoist));
}
