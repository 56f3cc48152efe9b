namespace CalcService.Engine.Inspection;

/// <summary>Names of the members that findings of an inspection point to.</summary>
internal static class InspectionPointers
{
    public const string RuleSet = "/ruleSet";
    public const string Compound = "/compound";
    public const string SheetService = "/compound/sheet/service";
    public const string Diameter = "/rope/diameter";
    public const string MeasuredDiameter = "/rope/measuredDiameter";
    public const string Function = "/rope/function";
    public const string Construction = "/rope/construction";
    public const string LayLength = "/rope/layLength";
    public const string Wires = "/inspection/brokenWires";
    public const string Cracks = "/inspection/cracks";
    public const string Corrosion = "/inspection/corrosion";
    public const string Wear = "/inspection/wear";
    public const string Bend = "/inspection/bendAtMouth";
    public const string Improper = "/inspection/improperlyApplied";
    public const string Movement = "/inspection/coneMovement";
    public const string RustBleed = "/inspection/rustBleed";
    public const string Lubricant = "/inspection/lubricant";
    public const string Highest = "/inspection/highestTemperature";
    public const string Chemicals = "/inspection/chemicals";
    public const string SocketedOn = "/inspection/socketedOn";
    public const string Baseline = "/inspection/baselineDiameter";
    public const string StrengthLoss = "/inspection/strengthLoss";
    public const string LengthLeft = "/inspection/lengthLeft";
    public const string DrumTurns = "/inspection/drumTurnsLeft";
    public const string DrumDiameter = "/inspection/drumDiameter";
    public const string Efficiency = "/attachment/efficiency";
    public const string ByDesign = "/attachment/resinByDesign";
}
