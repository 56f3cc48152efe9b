namespace CalcService.Engine.Matching;

/// <summary>Names of the members that findings of a match point to.</summary>
internal static class MatchPointers
{
    public const string Sheet = "/compound";
    public const string Cured = "/compound/sheet/cured";
    public const string Strength = "/compound/sheet/cured/compressiveStrength";
    public const string SheetService = "/compound/sheet/service";
    public const string SheetChemicals = "/compound/sheet/chemicals";
    public const string Rope = "/rope";
    public const string Diameter = "/rope/diameter";
    public const string Function = "/rope/function";
    public const string Construction = "/rope/construction";
    public const string BreakingForce = "/rope/certificate/breakingForce";
    public const string Basket = "/socket/basket";
    public const string SocketStrength = "/socket/breakingForce";
    public const string SocketRating = "/socket/ratedLoad";
    public const string ProofRating = "/socket/proofRating";
    public const string RopeRange = "/socket/ropeRange";
    public const string Standard = "/socket/standard";
    public const string OuterAtSmallEnd = "/socket/outerAtSmallEnd";
    public const string OuterAtMouth = "/socket/outerAtMouth";
    public const string Use = "/duty/use";
    public const string Load = "/duty/load";
    public const string DesignFactor = "/duty/designFactor";
    public const string ProofLoad = "/duty/proofLoad";
    public const string Efficiency = "/duty/efficiency";
    public const string TypeTested = "/duty/typeTested";
    public const string ResinByDesign = "/duty/resinByDesign";
    public const string RotationResistance = "/duty/rotationResistance";
    public const string MakersApproval = "/duty/makersApproval";
    public const string LiftsPersons = "/duty/liftsPersons";
    public const string Lowest = "/service/lowest";
    public const string Highest = "/service/highest";
    public const string Chemicals = "/service/chemicals";
    public const string Core = "/preparation/core";
    public const string Cleaner = "/preparation/cleaner";
    public const string Plastic = "/preparation/plasticLeftIn";
    public const string Friction = "/cone/friction";
    public const string Cooling = "/cone/cooling";
}
