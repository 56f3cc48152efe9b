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
/// <param name="Change">What is wrong with the end.</param>
/// <param name="Besides">Codes that follow from the same fault.</param>
public sealed record InspectionCase(string Code, Severity Severity, string Pointer, Func<InspectionInput, InspectionInput> Change, params IReadOnlyList<string> Besides) : IFindingCase
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

    public static IReadOnlyList<InspectionCase> All { get; } = [.. Broken, .. Ends, .. Sizes, .. History, .. Rest];

    private static IEnumerable<InspectionCase> Broken =>
    [
        new("rule-set-missing", Severity.Unknown, "/ruleSet", input => input with { RuleSet = null }),
        new("not-looked-at", Severity.Unknown, Wires, input => input with { BrokenWires = null }),
        new("broken-wires-reject", Severity.Stop, Wires, At(6, WirePlace.Lay, 5, 2), Cut, Left),
        new("broken-wires-reject", Severity.Caution, Wires, At(1, WirePlace.Mouth, null, 1), Cut, Left),
        new("broken-wires-not-placed", Severity.Unknown, Wires + "/0/inOneStrand", At(3, WirePlace.Lay, 5, null)),
        new("broken-wires-not-placed", Severity.Caution, Wires + "/0/fromMouth", At(1, WirePlace.Lay, null, 1)),
        new("broken-wires-not-placed", Severity.Unknown, "/rope/function", input => Rope(r => r with { Function = RopeFunction.Unknown })(At(6, WirePlace.Lay, 5, 2)(input))),
        new("stricter-rule-elsewhere", Severity.Note, Wires, input => Rope(r => r with { Function = RopeFunction.Standing })(At(1, WirePlace.Mouth, null, 1)(input))),
        new("core-wires-broken", Severity.Caution, Wires, At(1, WirePlace.Core, 5, 1)),
    ];

    private static IEnumerable<InspectionCase> Ends =>
    [
        new("end-cracked", Severity.Stop, "/inspection/cracks", input => input with { Cracks = true }, Cut, Left),
        new("end-corroded", Severity.Stop, "/inspection/corrosion", input => input with { Corrosion = Degree.Heavy }, Cut, Left),
        new("end-corroded", Severity.Caution, "/inspection/corrosion", input => input with { Corrosion = Degree.Light }),
        new("end-corroded", Severity.Caution, "/inspection/corrosion", input => input with { RuleSet = Naval, Corrosion = Degree.Heavy }, Cut, Left),
        new("end-worn", Severity.Stop, "/inspection/wear", input => input with { Wear = Degree.Heavy }, Cut, Left),
        new("end-worn", Severity.Caution, "/inspection/wear", input => input with { Wear = Degree.Light }),
        new("end-bent", Severity.Stop, "/inspection/bendAtMouth", input => input with { BendAtMouth = true }, Cut, Left),
        new("end-bent", Severity.Caution, "/inspection/bendAtMouth", input => input with { RuleSet = Naval, BendAtMouth = true }, Cut, Left),
        new("end-improperly-applied", Severity.Stop, "/inspection/improperlyApplied", input => input with { ImproperlyApplied = true }, Cut, Left),
        new("end-improperly-applied", Severity.Caution, "/inspection/improperlyApplied", input => input with { RuleSet = Naval, ImproperlyApplied = true }, Cut, Left),
        new("cone-moved", Severity.Stop, "/inspection/coneMovement", input => input with { ConeMovement = true }, Cut, Left),
        new("not-looked-at", Severity.Unknown, "/inspection/cracks", input => input with { Cracks = null }),
        new("not-looked-at", Severity.Unknown, "/inspection/rustBleed", input => input with { RustBleed = null }),
        new("rust-bleeds", Severity.Caution, "/inspection/rustBleed", input => input with { RustBleed = true }),
        new("lubricant-poor", Severity.Caution, "/inspection/lubricant", input => input with { Lubricant = LubricantState.Dry }),
        new("lubricant-poor", Severity.Caution, "/inspection/lubricant", input => input with { Lubricant = LubricantState.Unknown }),
    ];

    private static IEnumerable<InspectionCase> Sizes =>
    [
        new("diameter-reduced", Severity.Stop, "/rope/measuredDiameter", Rope(r => r with { MeasuredDiameterM = .0189 })),
        new("diameter-reduced", Severity.Caution, "/rope/measuredDiameter", input => Rope(r => r with { MeasuredDiameterM = .0189 })(input with { RuleSet = Naval })),
        new("diameter-not-measured", Severity.Unknown, "/rope/measuredDiameter", Rope(r => r with { MeasuredDiameterM = null })),
        new("diameter-not-measured", Severity.Unknown, "/inspection/baselineDiameter", Mine(input => input with { BaselineDiameterM = null })),
        new("strength-lost", Severity.Stop, "/inspection/strengthLoss", Mine(input => input with { StrengthLoss = .11 })),
        new("strength-lost", Severity.Caution, "/inspection/strengthLoss", input => input with { StrengthLoss = .11 }),
    ];

    private static IEnumerable<InspectionCase> History =>
    [
        new("compound-demonstration", Severity.Caution, "/compound", input => input with { Compound = input.Compound! with { Demonstration = true } }),
        new("sheet-silent", Severity.Unknown, "/compound/sheet/service", input => input with { Compound = input.Compound! with { Service = null } }),
        new("compound-not-known", Severity.Caution, "/compound", input => input with { Compound = null, Chemicals = [] }),
        new("highest-temperature-missing", Severity.Unknown, "/inspection/highestTemperature", input => input with { HighestTemperatureK = null }),
        new("overheated", Severity.Stop, "/inspection/highestTemperature", input => input with { HighestTemperatureK = 60.1 + GoodInspection.Zero }),
        new("perhaps-overheated", Severity.Caution, "/inspection/highestTemperature",
            input => input with { Compound = null, Chemicals = [], HighestTemperatureK = 115.1 + GoodInspection.Zero }, "compound-not-known"),
        new("chemicals-not-told", Severity.Caution, "/inspection/chemicals", input => input with { Chemicals = null }),
        new("met-unlisted-chemical", Severity.Unknown, "/inspection/chemicals/1", input => input with { Chemicals = ["sea water", "brine"] }),
        new("met-limited-chemical", Severity.Caution, "/inspection/chemicals/0", input => input with { Chemicals = ["Diesel"] }),
        new("met-attacking-chemical", Severity.Stop, "/inspection/chemicals/0", input => input with { Chemicals = ["acetone"] }),
        new("socketing-date-missing", Severity.Unknown, "/inspection/socketedOn", input => input with { RuleSet = InspectionRules.Platform, SocketedOn = null }),
        new("resocketing-overdue", Severity.Stop, "/inspection/socketedOn", input => input with { RuleSet = InspectionRules.Platform, SocketedOn = new(2024, 3, 11) }, Cut, Left),
        new("mine-evidence-missing", Severity.Unknown, "/attachment/efficiency", Mine(input => input with { Attachment = new(null, true) })),
        new("mine-evidence-missing", Severity.Unknown, "/attachment/resinByDesign", Mine(input => input with { Attachment = new(.8, null) })),
        new("mine-medium-not-by-design", Severity.Stop, "/attachment/resinByDesign", Mine(input => input with { Attachment = new(.8, false) })),
        new("mine-attachment-weak", Severity.Stop, "/attachment/efficiency", Mine(input => input with { Attachment = new(.79, true) })),
    ];

    private static IEnumerable<InspectionCase> Rest =>
    [
        new(Cut, Severity.Caution, Wires, At(6, WirePlace.Lay, 5, 2), "broken-wires-reject", Left),
        new(Left, Severity.Caution, "/inspection/lengthLeft", At(6, WirePlace.Lay, 5, 2), "broken-wires-reject", Cut),
        new("drum-turns-few", Severity.Stop, "/inspection/drumTurnsLeft", Mine(input => input with { DrumTurnsLeft = 2.9 })),
        new("drum-turns-few", Severity.Caution, "/inspection/drumTurnsLeft", input => input with { DrumTurnsLeft = 2.9 }),
        new("drum-turns-missing", Severity.Unknown, "/inspection/drumTurnsLeft", Mine(input => input with { DrumTurnsLeft = null })),
        new("drum-turns-missing", Severity.Unknown, "/inspection/drumDiameter", input => At(6, WirePlace.Lay, 5, 2)(input with { DrumTurnsLeft = 9 }), "broken-wires-reject", Cut),
        new("rope-left-short", Severity.Stop, "/inspection/lengthLeft", input => At(6, WirePlace.Lay, 5, 2)(input with { LengthLeftM = 5.9 }), "broken-wires-reject", Cut),
    ];

    private static Func<InspectionInput, InspectionInput> At(int count, WirePlace place, double? fromMouthM, int? inOneStrand) =>
        input => input with { BrokenWires = [new(count, place, fromMouthM, inOneStrand)] };

    private static Func<InspectionInput, InspectionInput> Rope(Func<Rope, Rope> change) => input => input with { Rope = change(input.Rope) };

    private static Func<InspectionInput, InspectionInput> Mine(Func<InspectionInput, InspectionInput> change) => _ => change(GoodInspection.Under(MatchingRules.MineHoist));
}
