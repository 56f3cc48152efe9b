using CalcService.Engine.Compounds;
using CalcService.Engine.Inspection;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>An end with which nothing is wrong, for tests that change one thing. The compound is invented.</summary>
public static class GoodInspection
{
    public const double Zero = 273.15;

    public static CompoundSheet Sheet { get; } = new()
    {
        Name = "invented for tests",
        Kits = [new("small", 300e-6, 19)],
        Service = new(-15 + Zero, 60 + Zero),
        Chemicals = [new("sea water", ChemicalEffect.Resists), new("diesel", ChemicalEffect.Limited),
        new("acetone", ChemicalEffect.Attacked)],
    };

    public static InspectionInput Input { get; } = new()
    {
        AssessedOn = new(2026, 3, 12),
        RuleSet = InspectionRules.ConstructionCrane,
        Rope = new() { DiameterM = .020, Construction = "6x36", Core = RopeCore.Iwrc, MeasuredDiameterM = .0198,
        Function = RopeFunction.Running, LayLengthM = .130 },
        Compound = Sheet,
        BrokenWires = [],
        Cracks = false,
        Corrosion = Degree.None,
        Wear = Degree.None,
        BendAtMouth = false,
        ImproperlyApplied = false,
        ConeMovement = false,
        RustBleed = false,
        Lubricant = LubricantState.Good,
        HighestTemperatureK = 45 + Zero,
        Chemicals = ["Sea water"],
        SocketedOn = new(2025, 3, 12),
    };

    /// <summary>The same under each rule set, with what that one asks for besides.</summary>
    public static InspectionInput Under(string? ruleSet) => Input with
    {
        RuleSet = ruleSet,
        BaselineDiameterM = .0200,
        DrumTurnsLeft = 5,
        DrumDiameterM = .5,
        Attachment = new(.9, ResinByDesign: true),
    };

    public static InspectionInput With(RopeFunction function, params IReadOnlyList<BrokenWires> wires) =>
        Input with { Rope = Input.Rope with { Function = function }, BrokenWires = wires };

    public static Outcome<InspectionResult> Inspect(InspectionInput input, bool trace = false) =>
        ServiceInspection.Calculate(input, Editions.Known.Current, new Budget(Budget.DefaultSteps, trace),
            TestContext.Current.CancellationToken);
}
