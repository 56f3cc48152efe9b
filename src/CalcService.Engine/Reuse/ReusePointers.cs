namespace CalcService.Engine.Reuse;

/// <summary>Names of the members that findings of an assessment point to.</summary>
internal static class ReusePointers
{
    public const string Id = "/socket/id";
    public const string Type = "/socket/type";
    public const string SteelKnown = "/socket/material/known";
    public const string Metal = "/socket/material/kind";
    public const string Yield = "/socket/material/yieldStrength";
    public const string Tensile = "/socket/material/tensileStrength";
    public const string PinYield = "/socket/pin/yieldStrength";
    public const string RatedLoad = "/socket/ratedLoad";
    public const string ProofRating = "/socket/proofRating";
    public const string BreakingForce = "/socket/breakingForce";
    public const string Pours = "/socket/history/pours";
    public const string LastMedium = "/socket/history/lastMedium";
    public const string Overloaded = "/socket/history/overloaded";
    public const string Welded = "/socket/history/welded";
    public const string Straightened = "/socket/history/straightened";
    public const string ArcStruck = "/socket/history/arcStruck";
    public const string Method = "/coneRemoval/method";
    public const string Temperature = "/coneRemoval/maximumTemperature";
    public const string InspectedOn = "/inspection/inspectedOn";
    public const string SurfaceMethod = "/inspection/surfaceMethod";
    public const string Places = "/inspection/places";
    public const string Indications = "/inspection/indications";
    public const string Cracks = "/inspection/visual/cracks";
    public const string Corrosion = "/inspection/visual/corrosion";
    public const string Surface = "/inspection/visual/surface";
    public const string LimitsSource = "/limits/source";
    public const string RemovalLimit = "/limits/removalTemperature";
    public const string DesignFactor = "/limits/designFactor";
    public const string IntendedLoad = "/intended/ratedLoad";
    public const string IntendedProof = "/intended/proofLoad";
    public const string IntendedRope = "/intended/rope";
    public const string RopeStrength = IntendedRope + "/certificate/breakingForce";

    public static string Nominal(string member) => "/socket/nominal/" + member;

    public static string Measured(string member) => "/socket/measured/" + member;

    public static string Limit(string member) => "/limits/" + member;
}
